/**
 * The fields of an answer, for the reference: what each is called, what it is, and what it holds.
 */
import { escapeXml } from '@stillroot/notation';

/** A schema of the OpenAPI document (JSON Schema 2020-12), as far as answers use it. */
export interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly enum?: readonly unknown[];
}

/** The fields of an answer; of a schema that has a name of its own, a link to it. */
export function fieldsHtml(schema: Schema): string {
  const { properties, required = [] } = schema;
  if (!properties) return `<p>${kindHtml(schema)}</p>`;
  const fields = Object.entries(properties).map(([name, part]) => {
    const facts = [kindHtml(part), ...(required.includes(name) ? [] : ['not always'])];
    const said = escapeXml(part.description ?? '');
    return `<dt><code>${escapeXml(name)}</code> <small>${facts.join('; ')}</small></dt><dd>${said}${insideHtml(part)}</dd>`;
  });
  return `<dl>${fields.join('')}</dl>`;
}

/** The schemas that have a name, each to be linked to. */
export function namedSchemasHtml(schemas: Readonly<Record<string, Schema>>): string {
  return Object.entries(schemas)
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(
      ([name, schema]) =>
        `<h3 id="${anchorOf(name)}">${escapeXml(name)}</h3><p>${escapeXml(schema.description ?? '')}</p>${fieldsHtml(schema)}`,
    )
    .join('');
}

/** The fields within a field, where it holds things without a name. */
function insideHtml(schema: Schema): string {
  const within = withoutNull(schema);
  const { properties, items } = within;
  if (properties) return fieldsHtml(within);
  return items ? insideHtml(items) : '';
}

/** What a field is, in words. */
function kindHtml(schema: Schema): string {
  const { $ref, type, items, anyOf, enum: choices } = schema;
  if ($ref !== undefined) {
    const name = $ref.slice($ref.lastIndexOf('/') + 1);
    return `<a href="#${anchorOf(name)}">${escapeXml(name)}</a>`;
  }
  if (anyOf) return anyOf.map(kindHtml).join(' or ');
  if (choices) return `one of ${escapeXml(choices.join(', '))}`;
  if (items) return `list of ${pluralHtml(items)}`;
  return escapeXml([type ?? 'anything'].flat().join(' or '));
}

function pluralHtml(items: Schema): string {
  const kind = kindHtml(items);
  return items.type !== undefined && items.items === undefined && items.enum === undefined
    ? `${kind}s`
    : kind;
}

function withoutNull(schema: Schema): Schema {
  return schema.anyOf?.find(({ type }) => type !== 'null') ?? schema;
}

function anchorOf(name: string): string {
  return `schema-${name}`;
}
