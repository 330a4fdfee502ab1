/**
 * Parts that the operations of the OpenAPI document are made of: parameters, and the problems there can be.
 */
import * as z from 'zod';
import type { Endpoint, Format } from './endpoints.ts';
import { PROBLEM_KINDS, type ProblemName } from './problems.ts';

export type Json = Readonly<Record<string, unknown>>;

/** A parameter as OpenAPI describes it. */
export interface Parameter {
  readonly name: string;
  readonly in: 'path' | 'query';
  readonly required: boolean;
  readonly description?: unknown;
  readonly example?: unknown;
  readonly schema: Readonly<Record<string, unknown>>;
}

/** The parameters of a schema, with an example where there is one. */
export function parametersOf(
  schema: z.ZodType,
  place: 'path' | 'query',
  examples: Json,
): readonly Parameter[] {
  const { properties = {}, required = [] } = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  // What a number is by default is only told of the output: the input is text.
  const output = z.toJSONSchema(schema, { io: 'output', unrepresentable: 'any' }).properties ?? {};
  return Object.entries(properties).map(([name, property]) => {
    const { description, example, ...rest } = property as Record<string, unknown>;
    const shown = examples[name] ?? example;
    return {
      name,
      in: place,
      required: place === 'path' || required.includes(name),
      ...(description !== undefined && { description }),
      ...(shown !== undefined && { example: shown }),
      schema: isNumeric(rest)
        ? {
            type: rest['type'],
            minimum: rest['minimum'],
            maximum: rest['maximum'],
            ...defaultOf(output[name] as Json),
          }
        : rest,
    };
  });
}

/** A number arrives as text, but is described as the number it stands for. */
function isNumeric({ type }: Readonly<Record<string, unknown>>): boolean {
  return type === 'integer' || type === 'number';
}

function defaultOf(schema: Readonly<Record<string, unknown>>): Json {
  return schema['default'] === undefined ? {} : { default: schema['default'] };
}

/** The problems that an endpoint's answer can be, in one of its forms. */
export function problemResponses({ params, query, isLive }: Endpoint, form: Format | undefined): Json {
  const takesNames = Object.keys(params.shape).length + Object.keys(query.shape).length > 0;
  return problems([
    'badInput',
    ...(takesNames ? (['unknownName'] as const) : []),
    'notAcceptable',
    ...(form === 'mid' || form === 'musicxml' ? (['cannotBePlayed'] as const) : []),
    ...(isLive ? [] : (['tooMany'] as const)),
  ]);
}

/** Problems by their status. */
export function problems(names: readonly ProblemName[]): Json {
  return Object.fromEntries(
    names.map((name) => {
      const { status, title } = PROBLEM_KINDS[name];
      return [
        status,
        {
          description: title,
          content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
        },
      ];
    }),
  );
}
