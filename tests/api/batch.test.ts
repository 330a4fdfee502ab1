/**
 * Many answers at once are the answers that each address has alone.
 */
import { answers } from '@stillroot/contract';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { ask, type Served, serve } from './server.ts';

type Batch = z.infer<typeof answers.BatchAnswer>;
type Problem = z.infer<typeof answers.Problem>;

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

function send<T>(body: unknown, type = 'application/json') {
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  return ask<T>(served.origin, '/v1/batch', {
    method: 'POST',
    body: text,
    headers: { 'content-type': type },
  });
}

test('each answer is what its address answers, problems too', async () => {
  const paths = [
    '/v1/modes/dorian/A',
    '/v1/modes/dorain/A',
    '/v1/rounds/major/D?instrument=bass-4&fields=name,modes.name',
    '/v1/rounds/major/D.svg',
    '/v1/rounds/major/D.mid',
    '/v1/modes/dorian/A',
  ];
  const { status, body } = await send<Batch>({ paths: [...paths.slice(0, 2), ...paths.slice(3)] });
  expect(status).toBe(200);
  expect(answers.BatchAnswer.parse(body).answers.map((one) => one.status)).toEqual([200, 404, 200, 200, 200]);
  for (const { path, status: own, type, body: held } of body.answers) {
    const response = await fetch(served.origin + path);
    const bytes = Buffer.from(await response.arrayBuffer());
    expect([own, type]).toEqual([response.status, response.headers.get('content-type')]);
    if (type.includes('json')) expect(held).toEqual(JSON.parse(bytes.toString('utf8')));
    else expect(held).toBe(bytes.toString(type === 'audio/midi' ? 'base64' : 'utf8'));
  }
});

test('fifty are answered, in their order', async () => {
  const paths = Array.from({ length: 50 }, (_, at) => `/v1/modes?limit=1&offset=${at}`);
  const { body } = await send<Batch>({ paths });
  expect(body.answers.map(({ path }) => path)).toEqual(paths);
});

test('an address elsewhere has its own problem, and the others their answers', async () => {
  const elsewhere = ['https://example.org/v1/modes', '/../etc/passwd', '/v1/../../etc/passwd', '/health', ''];
  const { status, body } = await send<Batch>({ paths: ['/v1/modes/dorian', ...elsewhere] });
  expect(status).toBe(200);
  const [dorian, ...others] = body.answers;
  expect(dorian?.status).toBe(200);
  expect(others.map((one) => one.status)).toEqual(elsewhere.map(() => 404));
  const problem = answers.Problem.parse(others[0]?.body);
  expect(problem.errors).toEqual([
    { field: 'paths[1]', value: 'https://example.org/v1/modes', expected: 'an address below /v1/' },
  ]);
});

describe('what is no batch is refused', () => {
  const dorian = '/v1/modes/dorian';
  test.each([
    ['without paths', {}, 400, 'paths'],
    ['with none', { paths: [] }, 400, 'paths'],
    ['with fifty-one', { paths: Array(51).fill(dorian) }, 400, 'paths'],
    ['with a path that is no text', { paths: [dorian, 7] }, 400, 'paths[1]'],
    ['with something else beside', { paths: [dorian], colour: 'red' }, 400, 'body'],
    ['that is a list', [dorian], 400, 'body'],
    ['that is no JSON', '{"paths": [', 400, 'body'],
    ['that is nothing', '', 400, 'body'],
    ['that would change every object', '{"paths": ["/v1/modes"], "__proto__": {"admin": true}}', 400, 'body'],
    ['that is deep', `${'['.repeat(20_000)}${']'.repeat(20_000)}`, 400, 'body'],
    ['that is too much', { paths: Array(50).fill(`/v1/modes?name=${'a'.repeat(5000)}`) }, 413, 'body'],
  ])('%s', async (_how, sent, status, field) => {
    const answer = await send<Problem>(sent);
    expect(answer.status).toBe(status);
    expect(answer.type).toContain('application/problem+json');
    expect(answer.body.errors[0]?.field).toBe(field);
    expect(answer.body.errors[0]?.expected).toContain('/v1/');
  });

  test.each(['application/x-www-form-urlencoded', 'text/plain'])('that is sent as %s', async (type) => {
    expect((await send<Problem>('paths=/v1/modes', type)).status).toBe(415);
  });

  test('with what it held', async () => {
    const held = async (body: unknown) => (await send<Problem>(body)).body.errors[0];
    expect(await held({ paths: [dorian, 7] })).toMatchObject({ field: 'paths[1]', value: '7' });
    expect(await held([dorian])).toMatchObject({ field: 'body', value: 'a list of 1' });
    expect(await held({ paths: Array(51).fill(dorian) })).toMatchObject({ value: 'a list of 51' });
  });

  test.each(['PUT', 'DELETE'])('that comes by %s', async (method) => {
    const { status, headers } = await fetch(`${served.origin}/v1/batch`, { method });
    expect([status, headers.get('allow')]).toEqual([405, 'POST, OPTIONS']);
  });

  test('that is asked for', async () => {
    const { status, headers } = await ask(served.origin, '/v1/batch');
    expect([status, headers.get('allow')]).toEqual([405, 'POST, OPTIONS']);
  });
});
