/**
 * How an address is asked for from a shell, from TypeScript and from Python.
 */

/** A piece of code that asks for an address. */
export interface CodeSample {
  readonly lang: 'Shell' | 'TypeScript' | 'Python';
  readonly label: string;
  readonly source: string;
}

/** What a sample asks for. */
export interface SampleRequest {
  readonly path: string;
  /** The address, with its query. */
  readonly address: string;
  readonly params: Readonly<Record<string, string>>;
  readonly query: Readonly<Record<string, string | number>>;
  /** Whether the answer is JSON, text or bytes. */
  readonly reads: 'json' | 'text' | 'arrayBuffer';
  /** What is sent, of a POST. */
  readonly body?: unknown;
}

/** Where a server that was started by `npm start` is, unless it is told otherwise. */
export const SAMPLE_ORIGIN = 'http://127.0.0.1:8080';

/** The same request three times. The TypeScript one takes a `client` that was made for the origin. */
export function codeSamples(request: SampleRequest, origin: string): readonly CodeSample[] {
  return [
    { lang: 'Shell', label: 'curl', source: shell(request, origin) },
    { lang: 'TypeScript', label: '@stillroot/client', source: typescript(request) },
    { lang: 'Python', label: 'Python 3', source: python(request, origin) },
  ];
}

function shell({ address, reads, body }: SampleRequest, origin: string): string {
  const sent = body === undefined ? '' : ` --json '${JSON.stringify(body)}'`;
  const name = reads === 'arrayBuffer' ? ' --remote-name --remote-header-name' : '';
  return `curl --silent --show-error --fail${name}${sent} '${origin}${address}'`;
}

function typescript({ path, params, query, reads, body }: SampleRequest): string {
  const parts = [
    ...(isEmpty(params) ? [] : [`path: ${literal(params)}`]),
    ...(isEmpty(query) ? [] : [`query: ${literal(query)}`]),
  ];
  const options = [
    ...(parts.length === 0 ? [] : [`params: { ${parts.join(', ')} }`]),
    ...(body === undefined ? [] : [`body: ${literal(body)}`]),
    ...(reads === 'json' ? [] : [`parseAs: '${reads}'`]),
  ];
  const second = options.length === 0 ? '' : `, {\n  ${options.join(',\n  ')},\n}`;
  return `const { data, error } = await client.${body === undefined ? 'GET' : 'POST'}('${path}'${second});`;
}

function python({ address, reads, body }: SampleRequest, origin: string): string {
  const request = `"${origin}${address}"`;
  const read = reads === 'json' ? 'json.load(answer)' : 'answer.read()';
  if (body === undefined) {
    return `import json, urllib.request\n\nwith urllib.request.urlopen(${request}) as answer:\n    data = ${read}`;
  }
  return [
    'import json, urllib.request',
    '',
    'request = urllib.request.Request(',
    `    ${request},`,
    `    data=json.dumps(${JSON.stringify(body)}).encode(),`,
    '    headers={"Content-Type": "application/json"},',
    ')',
    'with urllib.request.urlopen(request) as answer:',
    '    data = json.load(answer)',
  ].join('\n');
}

function isEmpty(value: object): boolean {
  return Object.keys(value).length === 0;
}

/** A value as TypeScript writes it. */
function literal(value: unknown): string {
  if (typeof value === 'string') return `'${value.replaceAll("'", "\\'")}'`;
  if (Array.isArray(value)) return `[${value.map(literal).join(', ')}]`;
  if (value === null || typeof value !== 'object') return String(value);
  const entries = Object.entries(value).map(([key, part]) => `${key}: ${literal(part)}`);
  return `{ ${entries.join(', ')} }`;
}
