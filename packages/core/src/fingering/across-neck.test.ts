import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import { fretDistanceMm } from '../instrument/fret.ts';
import { placesOn } from '../instrument/fretboard.ts';
import { UNIVERSE } from '../mode/universe.ts';
import { acrossNeck } from './across-neck.ts';
import { fingeringsOf } from './fingerings.ts';
import { reasonInWords } from './reason.ts';

const { guitar, bass, banjo, dulcimer, mandolin } = INSTRUMENTS;
const ask = { reachMm: 120, openStrings: 'near-the-nut' } as const;

describe('across the neck', () => {
  test.each([
    ['guitar', guitar],
    ['bass', bass],
    ['mandolin', mandolin],
    ['banjo', banjo],
  ])(
    'on a %s no note of the scale lies outside all areas, and the hand stays in each where it can',
    (_name, instrument) => {
      const neck = neckOf(instrument);
      for (const { id } of UNIVERSE.modes.filter(({ index }) => index % 60 === 0)) {
        const scale = scaleOf('A', id);
        const chain = acrossNeck(neck, scale, ask);
        if (chain === undefined) continue;
        const covered = (fret: number) =>
          chain.fingerings.some(({ area }) => fret >= area.from && fret <= area.to);
        for (const { fret } of placesOn(neck, scale)) expect(covered(fret)).toBe(true);
        for (const { area, cost, notes } of chain.fingerings) {
          // On the low frets of a bass no hand that stays has all notes of every scale.
          if (instrument !== bass || area.from > 7) expect(cost.travelMm).toBe(0);
          const degrees = notes.map(({ degree }) => degree);
          expect(degrees).toEqual(degrees.map((_, at) => (((degrees[0] ?? 0) + at - 1) % 7) + 1));
        }
      }
    },
  );

  test('of the major scale on a guitar of 22 frets are four areas from the nut upwards', () => {
    const chain = acrossNeck(neckOf(guitar), scaleOf('G', STEPS.ionian), ask);
    const starts = chain?.fingerings.map(({ area }) => area.from) ?? [];
    expect(starts).toEqual(starts.toSorted((a, b) => a - b));
    expect(starts).toHaveLength(4);
    expect(starts[0]).toBe(0);
  });

  test('on a bass of five strings moves the hand where no one hand can play, and no farther than in any area it must', () => {
    const lowB = neckOf(bass, {}, 'B0-E1-A1-D2-G2');
    const chain = acrossNeck(lowB, scaleOf('G', STEPS.ionian), ask);
    const moving = chain?.fingerings.filter(({ cost }) => cost.travelMm > 0) ?? [];
    expect(moving.length).toBeGreaterThan(0);
    // Beyond the seventh fret four frets are less than 92 mm, so the hand never needs to move there.
    for (const { area } of moving) expect(area.from).toBeLessThan(7);
    for (const { reachMm } of chain?.fingerings ?? []) expect(reachMm).toBeLessThanOrEqual(120);
  });

  test('says how far each shift is, from the frets of finger 1', () => {
    const { shifts = [], fingerings } = fingeringsOf(neckOf(bass), scaleOf('F', STEPS.ionian), {
      style: 'across-the-neck',
    });
    expect(shifts).toHaveLength(fingerings.length - 1);
    for (const [at, { fromFret, toFret, distanceMm }] of shifts.entries()) {
      expect([fromFret, toFret]).toEqual([
        fingerings[at]?.positions.at(-1),
        fingerings[at + 1]?.positions[0],
      ]);
      expect(distanceMm).toBeCloseTo(fretDistanceMm(863.6, toFret) - fretDistanceMm(863.6, fromFret), 1);
    }
  });

  test('avoids open strings where that is asked', () => {
    const chain = acrossNeck(neckOf(guitar), scaleOf('G', STEPS.ionian), { ...ask, openStrings: 'never' });
    expect(chain?.fingerings.flatMap(({ notes }) => notes).every(({ finger }) => finger > 0)).toBe(true);
    expect(chain?.fingerings[0]?.area.from).toBeGreaterThan(0);
  });

  test('is refused with the reason where frets lack notes', () => {
    const answer = fingeringsOf(neckOf(dulcimer), scaleOf('D', STEPS.dorian), { style: 'across-the-neck' });
    expect(answer.fingerings).toEqual([]);
    expect(answer.reason && reasonInWords(answer.reason)).toBe(
      'in this tuning the frets of this instrument do not have F',
    );
  });
});
