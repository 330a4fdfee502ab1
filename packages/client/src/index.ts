/**
 * A client of the API whose paths, parameters and answers are typed from its OpenAPI document. Runs wherever
 * there is `fetch`.
 */
import createClient, { type Client, type ClientOptions } from 'openapi-fetch';
import type { components, paths } from './schema.d.ts';

export type { components, operations, paths } from './schema.d.ts';

/** What a request that cannot be answered gets (RFC 9457). */
export type Problem = components['schemas']['Problem'];

export type StillrootClient = Client<paths>;

/**
 * A client of the API at an origin.
 * @example
 * const client = createStillrootClient({ baseUrl: 'http://127.0.0.1:8080' });
 * const { data, error } = await client.GET('/v1/modes/{mode}/{root}', {
 *   params: { path: { mode: 'phrygian-dominant', root: 'A' } },
 * });
 */
export function createStillrootClient(options: ClientOptions): StillrootClient {
  return createClient<paths>(options);
}
