/**
 * Requests, right and wrong, for any operation of the OpenAPI document.
 */
import fc from 'fast-check';

/** A request. */
export interface Asked {
  readonly method: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
}

interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly required: boolean;
  readonly schema: {
    readonly type?: string;
    readonly enum?: readonly string[];
    readonly minimum?: number;
    readonly maximum?: number;
    readonly default?: unknown;
  };
}

interface Operation {
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly example: unknown }>> };
}

/** What has broken other servers: code in names, odd numbers, half signs, long and deep things. */
const HOSTILE: readonly string[] = [
  '',
  ' ',
  '0',
  '-1',
  '1e309',
  'NaN',
  '0x10',
  '٣',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '../../../../etc/passwd',
  '..%2f..%2fetc%2fpasswd',
  '%00',
  '\u0000',
  '\uFEFFA',
  '𝄫7',
  '♯'.repeat(60),
  '"><script>alert(1)</script>',
  ']]><!ENTITY x SYSTEM "file:///etc/passwd">',
  '{{7*7}}',
  "' OR 1=1 --",
  'a'.repeat(199),
  'E2-'.repeat(60),
  'b'.repeat(150),
  `${'('.repeat(90)}${')'.repeat(90)}`,
  'A,'.repeat(90),
  '1,'.repeat(90),
  'x.y.'.repeat(40),
];

/** Values that are right, by parameter. */
const RIGHT: Readonly<Record<string, readonly string[]>> = {
  mode: ['dorian', 'Phrygian dominant', '2131212', '6111111', 'altered'],
  a: ['dorian', '1111116'],
  b: ['phrygian', 'lydian'],
  from: ['dorian', '6111111'],
  to: ['phrygian-dominant', '1111116'],
  family: ['major', 'harmonic-minor', 'melodic-minor', '2212221'],
  root: ['A', 'Fs', 'Cb', 'E#', 'Bb'],
  instrument: ['bass-4', 'guitar-7', 'dulcimer-mountain', 'banjo-5', 'ukulele-soprano', 'mandolin'],
  tuning: ['B1-E2-A2-D3-G3-B3-E4', 'DADGAD', "E A d g b e'"],
  capoStrings: ['1,2,3', '1'],
  scaleLength: ['648', '686-648'],
  meter: ['3/4', '7/8', '12/16'],
  vamp: ['true', '1,4'],
  notes: ['A,C,E', 'A,B,C,D,E,F,G#'],
  contains: ['b3', 'b2,#4'],
  name: ['dominant'],
  q: ['five string', 'low B'],
  fields: ['name', 'name,notes', 'root'],
  v: ['000000000000'],
};
const NAMES: readonly string[] = Object.values(RIGHT).flat();

/** Any request for any of the operations, by their paths. */
export function anyRequest(operations: readonly (readonly [string, object])[]): fc.Arbitrary<Asked> {
  return fc.oneof(
    ...operations.flatMap(([path, methods]) =>
      Object.entries(methods as Record<string, Operation>).map(([method, operation]) =>
        anyOf(method.toUpperCase(), path, operation),
      ),
    ),
  );
}

function anyOf(
  method: string,
  path: string,
  { parameters = [], requestBody }: Operation,
): fc.Arbitrary<Asked> {
  const own = parameters.map((parameter) => anyValue(parameter).map((value) => ({ parameter, value })));
  const stray = fc.oneof(
    { weight: 12, arbitrary: fc.constant(null) },
    { weight: 1, arbitrary: fc.tuple(fc.constantFrom(...HOSTILE, 'limit[]', 'tuning'), text) },
  );
  const wrongMethod = fc.constantFrom('POST', 'PUT', 'DELETE', 'PATCH', 'HEAD', 'OPTIONS');
  const verb = fc.oneof(
    { weight: 30, arbitrary: fc.constant(method) },
    { weight: 1, arbitrary: wrongMethod },
  );
  const body = requestBody === undefined ? fc.constant(undefined) : anyBody(requestBody);
  return fc.record({ verb, own: fc.tuple(...own), stray, headers: anyHeaders, body }).map((made) => {
    const query: string[] = [];
    let filled = path;
    for (const { parameter, value } of made.own) {
      if (parameter.in === 'path')
        filled = filled.replace(`{${parameter.name}}`, () => encoded(value ?? 'A'));
      else if (value !== undefined) query.push(`${parameter.name}=${encoded(value)}`);
    }
    if (made.stray !== null) query.push(`${encoded(made.stray[0])}=${encoded(made.stray[1])}`);
    const sendsBody = made.body !== undefined && made.verb === 'POST';
    return {
      method: made.verb,
      path: query.length === 0 ? filled : `${filled}?${query.join('&')}`,
      headers: { ...made.headers, ...(sendsBody && { 'content-type': 'application/json' }) },
      ...(sendsBody && made.body !== undefined && { body: made.body }),
    };
  });
}

const text = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.constantFrom(...NAMES),
  fc.string({ maxLength: 20 }),
  fc.string({ unit: 'binary', maxLength: 10 }),
);

/** A value of a parameter: absent, right, or anything. */
function anyValue({ name, in: place, required, schema }: Parameter): fc.Arbitrary<string | undefined> {
  const right = rightOf(name, schema);
  const isNeeded = required || place === 'path';
  return fc.oneof(
    { weight: isNeeded ? 0 : 70, arbitrary: fc.constant(undefined) },
    { weight: isNeeded ? 40 : 12, arbitrary: right },
    { weight: 1, arbitrary: text },
  );
}

function rightOf(
  name: string,
  { enum: choices, minimum, maximum, type }: Parameter['schema'],
): fc.Arbitrary<string> {
  if (choices) return fc.constantFrom(...choices);
  if (minimum !== undefined && maximum !== undefined) {
    const whole = fc.integer({ min: minimum, max: Math.min(maximum, 2 ** 31 - 1) }).map(String);
    return type === 'integer'
      ? whole
      : fc.oneof(
          whole,
          whole.map((value) => `${value}.5`),
        );
  }
  return fc.constantFrom(...(RIGHT[name] ?? NAMES));
}

const anyHeaders: fc.Arbitrary<Record<string, string>> = fc.oneof(
  { weight: 15, arbitrary: fc.constant({}) },
  {
    weight: 1,
    arbitrary: fc.record({
      accept: fc.constantFrom('*/*', 'image/svg+xml', 'text/html', '', ';;;', 'a/b;q=9', ','.repeat(500)),
      'accept-encoding': fc.constantFrom('br', 'gzip', 'br;q=0', '*;q=x', 'zip'),
      'if-none-match': fc.constantFrom('*', '""', 'W/"x"', '"', ','.repeat(300)),
      'x-request-id': fc.constantFrom('a', 'b c', 'x'.repeat(300)),
    }),
  },
);

function anyBody(requestBody: NonNullable<Operation['requestBody']>): fc.Arbitrary<string> {
  const example = requestBody.content['application/json']?.example;
  const paths = fc.array(
    fc.oneof(
      text,
      fc.constantFrom(...NAMES).map((name) => `/v1/modes/${name}/A`),
    ),
    { maxLength: 8 },
  );
  return fc.oneof(
    fc.constant(JSON.stringify(example)),
    paths.map((some) => JSON.stringify({ paths: some })),
    fc.jsonValue().map((value) => JSON.stringify(value)),
    fc.string({ maxLength: 50 }),
  );
}

function encoded(value: string): string {
  return encodeURIComponent(value.toWellFormed());
}
