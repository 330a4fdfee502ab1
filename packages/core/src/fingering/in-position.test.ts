import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, modeOf, neckOf, rootOf, STEPS, scaleOf } from '../given.ts';
import { spell } from '../mode/spelling.ts';
import { UNIVERSE } from '../mode/universe.ts';
import { modesFrom } from '../relation/relatives.ts';
import { fretsBeyondTwelfth } from './area.ts';
import { findSharedAreas } from './in-position.ts';

const { guitar, bass } = INSTRUMENTS;
const anywhere = {
  reachMm: 120,
  limit: 40,
  each: 1,
  prefer: 'fewest-frets',
  openStrings: 'near-the-nut',
} as const;

describe('an area', () => {
  // In standard tuning every major scale fits a window of five frets; the frets of the guitar, computed.
  test('of five frets is enough for every major scale on a guitar, without moving the hand', () => {
    for (const root of ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B']) {
      const [best] = findSharedAreas(neckOf(guitar), [scaleOf(root, STEPS.ionian)], anywhere);
      const [fingering] = best?.fingerings ?? [];
      expect(fingering?.cost.travelMm).toBe(0);
      expect((fingering?.area.to ?? 99) - (fingering?.area.from ?? 0)).toBeLessThanOrEqual(4);
    }
  });

  test('holds more octaves before fewer, low frets before those beyond the twelfth', () => {
    const found = findSharedAreas(neckOf(guitar), [scaleOf('A', STEPS.ionian)], anywhere);
    const rows = found.map(({ fingerings: [one] }) => one && [one.notes.length, one.area.from]);
    expect(rows).toEqual([
      [15, 4],
      [15, 16],
    ]);
  });

  test('shared by several scales gives each its fingering from one root note', () => {
    const scales = modesFrom(modeOf(STEPS.harmonicMinor)).map((mode) => spell(mode, rootOf('A')));
    const [best] = findSharedAreas(neckOf(guitar), scales, anywhere);
    expect(best?.fingerings).toHaveLength(7);
    expect(new Set(best?.fingerings.map(({ notes }) => notes[0]?.midi))).toEqual(new Set([45]));
    expect(new Set(best?.fingerings.map(({ notes }) => notes.length))).toEqual(new Set([15]));
  });

  // Where all are asked for, every area is fingered; where few are, most never are.
  test.each([1, 2, 5])('is the same whether all or the best %i are asked for', (limit) => {
    let compared = 0;
    for (const neck of Object.values(INSTRUMENTS).map((instrument) => neckOf(instrument))) {
      for (const mode of UNIVERSE.modes.filter(({ index }) => index % 29 === limit)) {
        const rounds = modesFrom(mode).map((one) => spell(one, rootOf('C')));
        for (const scales of [rounds.slice(0, 1), rounds]) {
          const search = { ...anywhere, each: scales.length === 1 ? limit : 1 };
          const all = findSharedAreas(neck, scales, search);
          expect(findSharedAreas(neck, scales, { ...search, limit })).toEqual(all.slice(0, limit));
          compared += Number(all.length > limit);
        }
      }
    }
    expect(compared).toBeGreaterThan(40);
  });

  test('begins where it is asked to, or is not found', () => {
    const scale = scaleOf('A', STEPS.ionian);
    const [fromFour] = findSharedAreas(neckOf(guitar), [scale], { ...anywhere, fromSlot: 4 });
    expect(fromFour?.fingerings[0]?.area).toEqual({ from: 4, to: 7 });
    expect(findSharedAreas(neckOf(guitar), [scale], { ...anywhere, fromSlot: 99 })).toEqual([]);
  });

  test('grows, or the hand travels, where the hand is small', () => {
    const scale = scaleOf('G', STEPS.phrygian);
    const reach = (reachMm: number) =>
      findSharedAreas(neckOf(bass), [scale], { ...anywhere, reachMm, limit: 1, fromSlot: 1 })[0];
    const [wide] = reach(200)?.fingerings ?? [];
    const [small] = reach(60)?.fingerings ?? [];
    expect(wide?.cost.travelMm).toBe(0);
    expect(small?.cost.travelMm).toBeGreaterThan(0);
    expect(small?.reachMm).toBeLessThanOrEqual(60);
  });

  // Two octaves of E fit in frets 17 to 21 of a five-string bass; one, in frets 8 to 12 (common practice, no source).
  test('far up the neck comes after others, unless it is asked for', () => {
    const neck = neckOf(bass, {}, 'B0-E1-A1-D2-G2');
    const modes = modesFrom(modeOf(STEPS.harmonicMinor)).map((mode) => spell(mode, rootOf('E')));
    const rowOf = (search: Partial<typeof anywhere> & { fromSlot?: number }) => {
      const [best] = findSharedAreas(neck, modes, { ...anywhere, ...search });
      const [first] = best?.fingerings ?? [];
      return first && [first.notes.length, first.area.from];
    };
    expect(rowOf({})).toEqual([8, 8]);
    expect(rowOf({ fromSlot: 17 })).toEqual([15, 17]);
  });

  // A hand that stays has all seven of D at frets 15 to 19 of a bass in drop D; lower down it must move.
  test('far up the neck comes after those in which the hand moves', () => {
    const neck = neckOf(bass, {}, 'D1-A1-D2-G2');
    const modes = modesFrom(modeOf(STEPS.ionian)).map((mode) => spell(mode, rootOf('D')));
    const fingerings = findSharedAreas(neck, modes, anywhere)[0]?.fingerings ?? [];
    expect(fingerings.filter(({ area }) => area.to < 17)).toHaveLength(7);
    expect(fingerings.some(({ cost }) => cost.travelMm > 0)).toBe(true);
  });

  test.each([
    [0, 0],
    [12, 0],
    [13, 1],
    [22, 10],
  ])('that ends at fret %i lies %i frets beyond the twelfth', (fret, beyond) => {
    expect(fretsBeyondTwelfth(fret)).toBe(beyond);
  });
});
