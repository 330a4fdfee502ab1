/**
 * Draws the picture of the round that the README shows.
 */
import { writeFile } from 'node:fs/promises';
import { buildApp } from '@stillroot/api';

const app = await buildApp();
const { body } = await app.inject('/v1/rounds/harmonic-minor/A.svg?columns=4');
await writeFile(new URL('../apps/site/public/pictures/round.svg', import.meta.url), body);
