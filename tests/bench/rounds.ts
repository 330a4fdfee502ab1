/**
 * Rounds and fingerings on six instruments.
 */
import { fingeringsOf, roundOf, spell } from '@stillroot/core';
import { median } from './figures.ts';
import { modeOf, neckOf, twelveRoots } from './subjects.ts';

const SIX = ['guitar-6', 'guitar-7', 'bass-4', 'mandolin', 'banjo-5', 'ukulele-soprano'];

export async function measureRounds(): Promise<void> {
  console.log('\nHarmonic minor on 12 roots, in position, median');
  const head = modeOf('2122131');
  const roots = twelveRoots();
  for (const id of SIX) {
    const neck = neckOf(id);
    const round = await median(roots, (root) => roundOf(neck, head, root));
    const fingering = await median(roots, (root) => fingeringsOf(neck, spell(head, root), { limit: 1 }));
    console.log(
      `  ${id.padEnd(18)} a round ${(round / 1e6).toFixed(3)} ms   a fingering ${(fingering / 1e3).toFixed(0)} µs`,
    );
  }
}
