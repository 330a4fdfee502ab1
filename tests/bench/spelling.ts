/**
 * A spelled scale: core against the general-purpose theory library on the same scales.
 */
import { EVERYDAY_ROOTS, invariant, spell, spellAnew } from '@stillroot/core';
import { Scale } from 'tonal';
import { median } from './figures.ts';
import { modeOf } from './subjects.ts';

/** Seven-note scales that the library and core both spell with seven letters. */
const NAMES: readonly (readonly [string, string])[] = [
  ['major', '2212221'],
  ['dorian', '2122212'],
  ['phrygian', '1222122'],
  ['lydian', '2221221'],
  ['mixolydian', '2212212'],
  ['aeolian', '2122122'],
  ['locrian', '1221222'],
  ['harmonic minor', '2122131'],
  ['melodic minor', '2122221'],
  ['phrygian dominant', '1312122'],
  ['lydian dominant', '2221212'],
  ['harmonic major', '2212131'],
];

export async function compareSpelling(): Promise<void> {
  const pairs = NAMES.flatMap(([name, id]) =>
    EVERYDAY_ROOTS.map((root) => ({ name, mode: modeOf(id), root })),
  );
  for (const { name, mode, root } of pairs) {
    const theirs = Scale.get(`${root.name} ${name}`).notes.join(' ');
    invariant(theirs === spell(mode, root).notes.join(' '), `${root.name} ${name} is spelled alike by both`);
  }
  const library = await median(pairs, ({ name, root }) => Scale.get(`${root.name} ${name}`).notes);
  const anew = await median(pairs, ({ mode, root }) => spellAnew(mode, root).notes);
  const lookedUp = await median(pairs, ({ mode, root }) => spell(mode, root).notes);
  console.log(`\nA spelled scale, ${pairs.length} scales in turn, median a scale`);
  console.log(`  theory library (tonal 6.4.3)   ${ns(library)}`);
  console.log(`  core, spelled anew             ${ns(anew)}   ${times(library / anew)}`);
  console.log(`  core, as it is used            ${ns(lookedUp)}   ${times(library / lookedUp)}`);
}

function ns(value: number): string {
  return `${value.toFixed(1)} ns`.padStart(11);
}

function times(ratio: number): string {
  return `${ratio.toFixed(0)} times the library's speed`;
}
