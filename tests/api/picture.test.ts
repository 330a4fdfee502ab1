/**
 * The picture in the README is the one the server draws.
 */
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { ask, serve } from './server.ts';

test('the picture of the round is up to date', async () => {
  const served = await serve();
  const { text } = await ask(served.origin, '/v1/rounds/harmonic-minor/A.svg?columns=4');
  await served.close();
  const kept = await readFile(new URL('../../apps/site/public/pictures/round.svg', import.meta.url), 'utf8');
  expect(kept, 'draw it anew with `pnpm picture`').toBe(text);
});
