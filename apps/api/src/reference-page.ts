/**
 * The reference for people: one page, written from the OpenAPI document, that needs no script and nothing
 * from elsewhere.
 */
import { createHash } from 'node:crypto';
import { type CodeSample, openApiDocument, PROBLEM_KINDS, problemType } from '@stillroot/contract';
import { escapeXml, withCode } from '@stillroot/notation';
import { fieldsHtml, namedSchemasHtml, type Schema } from './reference-fields.ts';
import { REFERENCE_STYLE } from './reference-style.ts';

/** A page, and what a browser may do with it. */
export interface ReferencePage {
  readonly html: string;
  /** Its Content-Security-Policy. */
  readonly policy: string;
}

interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly required: boolean;
  readonly description?: string;
  readonly schema: Readonly<Record<string, unknown>>;
}

interface Answer {
  readonly description: string;
  readonly content?: Readonly<Record<string, { readonly schema: Schema }>>;
}

interface Operation {
  readonly operationId: string;
  readonly summary: string;
  readonly tags: readonly string[];
  readonly parameters?: readonly Parameter[];
  readonly responses: Readonly<Record<string, Answer>>;
  readonly 'x-codeSamples': readonly CodeSample[];
}

interface Document {
  readonly info: Readonly<Record<'title' | 'version' | 'summary' | 'description', string>>;
  readonly tags: readonly { readonly name: string; readonly description: string }[];
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
}

/** The path and the query at the end of a sample for a shell. */
const PATH_IN_SAMPLE = /'https?:\/\/[^/']+(\/[^']*)'$/;

const SCHEMAS = 'What answers are made of';
const PROBLEMS = 'Problems';

/** Writes the page, its samples for a server at an origin. */
export function referencePage(origin?: string): ReferencePage {
  const { info, tags, paths, components } = openApiDocument(origin) as unknown as Document;
  const operations = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  );
  const sections = tags.map(({ name, description }) => {
    const own = operations.filter(({ operation }) => operation.tags.includes(name));
    const parts = own.map(({ path, method, operation }) => operationHtml(path, method, operation));
    return `<section><h2 id="about-${name}">${escapeXml(description)}</h2>${parts.join('')}</section>`;
  });
  const digest = createHash('sha256').update(REFERENCE_STYLE).digest('base64');
  return {
    policy: `default-src 'none'; style-src 'sha256-${digest}'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`,
    html: [
      '<!doctype html><html lang="en"><head><meta charset="utf-8">',
      '<meta name="viewport" content="width=device-width, initial-scale=1">',
      `<title>${escapeXml(info.title)} API</title><style>${REFERENCE_STYLE}</style></head><body>`,
      `<header><h1>${escapeXml(info.title)} API</h1><p>${escapeXml(info.summary)}</p>`,
      `<p>${withCode(info.description)}</p>`,
      '<p>The same in OpenAPI 3.1: <a href="/v1/openapi.json">/v1/openapi.json</a></p></header>',
      contents(tags, operations),
      `<main>${MANNERS}${sections.join('')}${schemasHtml(components.schemas)}${problemsHtml()}</main></body></html>`,
    ].join('\n'),
  };
}

const MANNERS = `<section><h2 id="manners">What holds for every address</h2><ul>
<li>A form is asked for by its extension (<code>.svg</code>, <code>.txt</code>, <code>.mid</code>, <code>.musicxml</code>) or by the header <code>Accept</code>; without either it is JSON.</li>
<li>Every answer has an <code>ETag</code>; <code>If-None-Match</code> gets 304 as long as nothing changed. With <code>v=</code> and the version in the header <code>Data-Version</code> an answer may be kept for ever.</li>
<li><code>fields=name,chords.triads</code> leaves out everything else of an answer in JSON.</li>
<li>Long lists come in pages of <code>limit</code>; <code>next</code> and <code>previous</code>, and the header <code>Link</code>, lead on.</li>
<li>A <code>#</code> is written <code>%23</code> in an address, or <code>s</code>: <code>F%23</code>, <code>Fs</code>.</li>
<li>Answers are packed with brotli or gzip, and may be read from pages of any origin.</li>
</ul></section>`;

interface Placed {
  readonly path: string;
  readonly method: string;
  readonly operation: Operation;
}

function contents(tags: Document['tags'], operations: readonly Placed[]): string {
  const groups = tags.map(({ name, description }) => {
    const items = operations
      .filter(({ operation }) => operation.tags.includes(name))
      .map(({ path, operation }) => `<li><a href="#${operation.operationId}">${escapeXml(path)}</a></li>`);
    return `<li><a href="#about-${name}">${escapeXml(description)}</a><ul>${items.join('')}</ul></li>`;
  });
  return `<nav aria-label="Contents"><ul>${groups.join('')}<li><a href="#schemas">${SCHEMAS}</a></li><li><a href="#problems">${PROBLEMS}</a></li></ul></nav>`;
}

function operationHtml(path: string, method: string, operation: Operation): string {
  const { operationId, summary, parameters = [], responses } = operation;
  const samples = operation['x-codeSamples'];
  return [
    `<article id="${operationId}"><h3><b>${method.toUpperCase()}</b> <code>${escapeXml(path)}</code></h3>`,
    `<p>${escapeXml(summary)}.</p>`,
    method === 'get' ? tryHtml(samples) : '',
    parameters.length === 0
      ? ''
      : `<details><summary>${parameters.length} parameters</summary><dl>${parameters.map(parameterHtml).join('')}</dl></details>`,
    answerHtml(responses['200']),
    `<details><summary>Statuses</summary><dl>${Object.entries(responses).map(responseHtml).join('')}</dl></details>`,
    `<details><summary>Code</summary>${samples.map(sampleHtml).join('')}</details></article>`,
  ].join('');
}

/** A link to the example, which the server that shows the page answers. */
function tryHtml(samples: readonly CodeSample[]): string {
  const shell = samples.find(({ lang }) => lang === 'Shell')?.source ?? '';
  const address = PATH_IN_SAMPLE.exec(shell)?.[1];
  if (address === undefined) return '';
  return `<p>Try: <a href="${escapeXml(address)}">${escapeXml(address)}</a></p>`;
}

function parameterHtml({ name, in: place, required, description = '', schema }: Parameter): string {
  const { type, minimum, maximum, default: usual, enum: choices } = schema;
  const facts = [
    place === 'path' ? 'in the path' : required ? 'needed' : '',
    Array.isArray(choices) ? `one of ${choices.join(', ')}` : String(type ?? ''),
    minimum === undefined ? '' : `${minimum} to ${maximum}`,
    usual === undefined ? '' : `${usual} where absent`,
  ].filter((fact) => fact !== '');
  return `<dt><code>${escapeXml(name)}</code></dt><dd>${escapeXml(description)}<br><small>${escapeXml(facts.join('; '))}</small></dd>`;
}

/** The fields of an answer in JSON; nothing of another. */
function answerHtml(answer: Answer | undefined): string {
  const schema = answer?.content?.['application/json']?.schema;
  if (!schema || (!schema.properties && !schema.$ref)) return '';
  return `<details><summary>Fields of the answer</summary>${fieldsHtml(schema)}</details>`;
}

function schemasHtml(schemas: Readonly<Record<string, Schema>>): string {
  return `<section><h2 id="schemas">${SCHEMAS}</h2>${namedSchemasHtml(schemas)}</section>`;
}

function responseHtml([status, { description, content }]: readonly [string, Answer]): string {
  const types = Object.keys(content ?? {}).join(', ');
  return `<dt><code>${status}</code></dt><dd>${escapeXml(description)}<br><small>${escapeXml(types)}</small></dd>`;
}

function sampleHtml({ label, source }: CodeSample): string {
  return `<h4>${escapeXml(label)}</h4><pre tabindex="0"><code>${escapeXml(source)}</code></pre>`;
}

function problemsHtml(): string {
  const rows = Object.values(PROBLEM_KINDS).map(
    (kind) =>
      `<dt><code>${kind.status}</code> <a href="${problemType(kind)}">${escapeXml(kind.title)}</a></dt><dd>${withCode(kind.meaning)}</dd>`,
  );
  return `<section><h2 id="problems">${PROBLEMS}</h2><p>As <code>application/problem+json</code> (RFC 9457).</p><dl>${rows.join('')}</dl></section>`;
}
