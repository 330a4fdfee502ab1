/**
 * Checks the direction of imports: data → catalog, core ← catalog ← notation ← contract ← api, site; core
 * knows nobody and touches no input or output; nothing is imported past a package's door; no circles.
 */
import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser';

const ROOT = fileURLToPath(new URL('..', import.meta.url)).replace(/[\\/]$/, '');

/** Each package and the packages it may import. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  'packages/core': [],
  'packages/catalog': ['packages/core'],
  'packages/notation': ['packages/core', 'packages/catalog'],
  'packages/contract': ['packages/core', 'packages/catalog', 'packages/notation'],
  // What others install speaks to the API alone.
  'packages/client': [],
  'apps/api': ['packages/core', 'packages/catalog', 'packages/notation', 'packages/contract'],
  'apps/site': ['packages/core', 'packages/catalog', 'packages/notation', 'packages/contract'],
};

const TESTS = '\\.test\\.ts$';
const DOORS = '^packages/[^/]+/src/(index|plain-browser)\\.ts$';

const rules: IForbiddenRuleType[] = [
  { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
  {
    name: 'nothing-unresolved',
    severity: 'error',
    from: {},
    to: { couldNotResolve: true, pathNot: '^(astro:|vitest)' },
  },
  {
    name: 'core-is-pure',
    severity: 'error',
    from: { path: '^packages/core/src', pathNot: TESTS },
    to: { dependencyTypes: ['core', 'npm', 'npm-dev'] },
  },
  {
    name: 'pages-do-not-read-files',
    comment: 'what runs in the browser takes the plain door of the catalogue',
    severity: 'error',
    from: { path: '^apps/site/src/islands', pathNot: TESTS },
    to: { path: '^packages/(catalog/src/(?!plain)|contract)' },
  },
  ...Object.entries(MAY_IMPORT).flatMap(([from, allowed]): IForbiddenRuleType[] => [
    {
      name: `direction-of-${from.replace('/', '-')}`,
      severity: 'error',
      from: { path: `^${from}/src` },
      to: { path: '^(packages|apps)/', pathNot: [from, ...allowed].map((one) => `^${one}/`) },
    },
    {
      name: `doors-from-${from.replace('/', '-')}`,
      severity: 'error',
      from: { path: `^${from}/src` },
      to: { path: '^packages/[^/]+/src/', pathNot: [`^${from}/`, DOORS] },
    },
  ]),
];

/** The broken rules, one line each, and how many files were looked at. */
export async function checkImports(): Promise<{ readonly lines: readonly string[]; readonly files: number }> {
  const { output } = await cruise(
    Object.keys(MAY_IMPORT).map((folder) => `${folder}/src`),
    {
      baseDir: ROOT,
      validate: true,
      ruleSet: { forbidden: rules },
      doNotFollow: { path: 'node_modules' },
      exclude: { path: '\\.astro$' },
      tsPreCompilationDeps: true,
      combinedDependencies: true,
      enhancedResolveOptions: {
        exportsFields: ['exports'],
        conditionNames: ['import', 'default'],
        extensions: ['.ts', '.js'],
      },
    },
  );
  const { summary, modules } = output as ICruiseResult;
  const lines = summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} imports ${to}`);
  return { lines, files: modules.filter(({ source }) => /^(packages|apps)\//.test(source)).length };
}

if (import.meta.main) {
  const { lines, files } = await checkImports();
  for (const line of lines) console.error(line);
  console.log(`imports: ${files} files looked at, ${lines.length} in the wrong direction`);
  process.exitCode = lines.length > 0 || files < 50 ? 1 : 0;
}
