/**
 * Writes the client's types from the OpenAPI document: `pnpm --filter @stillroot/client generate`.
 */
import { writeFile } from 'node:fs/promises';
import { openApiDocument } from '@stillroot/contract';
import openapiTypescript, { astToString, type OpenAPI3 } from 'openapi-typescript';

const HEAD = `// biome-ignore-all lint: written by generate.ts
// biome-ignore-all format: written by generate.ts
`;

/** The types of every path, as they stand in `src/schema.d.ts`. */
export async function generateTypes(): Promise<string> {
  const nodes = await openapiTypescript(openApiDocument() as unknown as OpenAPI3, { alphabetize: false });
  return HEAD + astToString(nodes);
}

if (import.meta.main) {
  await writeFile(new URL('src/schema.d.ts', import.meta.url), await generateTypes());
}
