/**
 * The parameters of a request, checked against the contract.
 */
import { CommonQuery } from '@stillroot/contract';
import type { Problem } from '@stillroot/core';
import type * as z from 'zod';
import type { Address, Form } from './address.ts';
import { ProblemReply, shortened } from './problem-reply.ts';

/** Parameters that are as they should be. */
export interface Parameters {
  readonly params: unknown;
  readonly query: unknown;
  /** The version of the data that the address names. */
  readonly version: string | undefined;
  /** The fields that are wanted; all of them where absent. */
  readonly fields: readonly string[] | undefined;
}

const COMMON_IN: Readonly<Record<'json' | 'other', z.ZodObject>> = {
  json: CommonQuery,
  other: CommonQuery.omit({ fields: true }),
};

/**
 * The parameters of an address in one of its forms.
 * @throws ProblemReply that names every one that is wrong
 */
export function checkParameters({ endpoint, params, query }: Address, form: Form): Parameters {
  const schema = COMMON_IN[form === 'json' ? 'json' : 'other'];
  const [own, common] = endpoint.isLive ? [query, {}] : parted(query, schema);
  const inPath = endpoint.params.safeParse(params);
  const inQuery = endpoint.query.safeParse(own);
  const beside = schema.safeParse(common);
  if (inPath.success && inQuery.success && beside.success) {
    const { v, fields } = beside.data as z.output<typeof CommonQuery>;
    return { params: inPath.data, query: inQuery.data, version: v, fields };
  }
  const known = [...Object.keys(endpoint.query.shape), ...(endpoint.isLive ? [] : Object.keys(schema.shape))];
  throw new ProblemReply('badInput', [
    ...problemsOf(inPath, params, []),
    ...problemsOf(inQuery, own, known),
    ...problemsOf(beside, common, known),
  ]);
}

type Given = Readonly<Record<string, unknown>>;

/** An endpoint's own parameters, and those that every one takes. */
function parted(query: Given, schema: z.ZodObject): [Given, Given] {
  const names = Object.keys(schema.shape);
  if (!names.some((name) => query[name] !== undefined)) return [query, {}];
  const entries = Object.entries(query);
  return [
    Object.fromEntries(entries.filter(([name]) => !names.includes(name))),
    Object.fromEntries(entries.filter(([name]) => names.includes(name))),
  ];
}

function problemsOf(
  result: z.ZodSafeParseResult<unknown>,
  given: Given,
  known: readonly string[],
): readonly Problem[] {
  if (result.success) return [];
  const values = new Map(Object.entries(given));
  return result.error.issues.flatMap((issue): readonly Problem[] => {
    if (issue.code === 'unrecognized_keys') {
      const expected =
        known.length === 0 ? 'no parameters here' : `one of the parameters ${known.join(', ')}`;
      return issue.keys.slice(0, 20).map((field) => ({
        // A parameter may have no name at all.
        field: shortened(field) || 'query',
        value: shortened(String(values.get(field))),
        expected,
      }));
    }
    const field = String(issue.path[0] ?? 'request');
    const value = values.get(field) ?? '';
    const expected = Array.isArray(value) ? `${issue.message}; given once` : issue.message;
    return [{ field, value: shortened(String(value)), expected }];
  });
}
