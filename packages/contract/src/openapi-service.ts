/**
 * What the API answers beside its endpoints: many at once, its own description, and its figures.
 */
import type * as z from 'zod';
import * as answers from './answers.ts';
import { type Json, problems } from './openapi-parts.ts';
import { codeSamples, type SampleRequest } from './samples.ts';

const BATCH = { paths: ['/v1/modes/dorian/A', '/v1/families/harmonic-minor?fields=name,steps'] };

/** Operations by their paths. */
export function serviceOperations(schemaOf: (schema: z.ZodType) => Json, origin: string): Json {
  const samples = (path: string, reads: SampleRequest['reads'], body?: unknown) =>
    codeSamples(
      { path, address: path, params: {}, query: {}, reads, ...(body !== undefined && { body }) },
      origin,
    );
  const read = (operationId: string, summary: string, path: string, type: string): Json => {
    const isJson = type === 'application/json';
    return {
      get: {
        operationId,
        summary,
        tags: ['service'],
        responses: {
          200: {
            description: summary,
            content: { [type]: { schema: isJson ? { type: 'object' } : { type: 'string' } } },
          },
          ...problems(['notAcceptable']),
        },
        'x-codeSamples': samples(path, isJson ? 'json' : 'text'),
      },
    };
  };
  return {
    '/v1/batch': {
      post: {
        operationId: 'batch',
        summary: 'Up to 50 answers at once',
        tags: ['service'],
        requestBody: {
          required: true,
          content: { 'application/json': { schema: schemaOf(answers.BatchRequest), example: BATCH } },
        },
        responses: {
          200: {
            description: 'An answer for each path, in their order',
            content: { 'application/json': { schema: schemaOf(answers.BatchAnswer) } },
          },
          ...problems(['badInput', 'tooMuch', 'wrongMedia', 'tooMany']),
        },
        'x-codeSamples': samples('/v1/batch', 'json', BATCH),
      },
    },
    '/v1/docs': read('reference', 'The reference, for people', '/v1/docs', 'text/html'),
    '/v1/openapi.json': read('openapi', 'This document', '/v1/openapi.json', 'application/json'),
    '/metrics': read('metrics', 'Figures of the server, as Prometheus reads them', '/metrics', 'text/plain'),
  };
}
