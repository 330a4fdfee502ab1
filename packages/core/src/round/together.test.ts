import { describe, expect, test } from 'vitest';
import { fingeringsOf } from '../fingering/fingerings.ts';
import { reasonInWords } from '../fingering/reason.ts';
import { INSTRUMENTS, modeOf, neckOf, rootOf, STEPS } from '../given.ts';
import { EVERYDAY_ROOTS } from '../pitch/root.ts';
import { roundOf } from './round.ts';

const { guitar, bass, mandolin } = INSTRUMENTS;
const harmonicMinor = modeOf(STEPS.harmonicMinor);

describe('modes in areas of their own', () => {
  test.each([
    ['guitar', neckOf(guitar)],
    ['bass', neckOf(bass)],
    ['mandolin', neckOf(mandolin)],
  ])('on a %s each lie in as few frets as that mode needs', (_name, neck) => {
    for (const root of EVERYDAY_ROOTS) {
      const round = roundOf(neck, harmonicMinor, root, { sharing: 'own-areas' });
      for (const { scale, fingering } of round.modes) {
        const width = fingering && fingering.area.to - fingering.area.from;
        for (let fret = 0; fret < 20; fret += 1) {
          const [alone] = fingeringsOf(neck, scale, { fret, limit: 1 }).fingerings;
          if (alone?.cost.travelMm !== 0) continue;
          expect(alone.area.to - alone.area.from).toBeGreaterThanOrEqual(width ?? 99);
        }
      }
    }
  });

  test('together take all the frets that they use', () => {
    const { area, modes } = roundOf(neckOf(guitar), harmonicMinor, rootOf('A'), { sharing: 'own-areas' });
    expect(area).toEqual({
      from: Math.min(...modes.map(({ fingering }) => fingering?.area.from ?? 99)),
      to: Math.max(...modes.map(({ fingering }) => fingering?.area.to ?? 0)),
    });
  });
});

describe('a round up the neck', () => {
  test('over two octaves begins every mode on one root', () => {
    const { modes } = roundOf(neckOf(bass), harmonicMinor, rootOf('A'), { style: 'two-octaves' });
    const firsts = modes.map(({ fingering }) => fingering?.notes[0]?.midi);
    expect(new Set(firsts).size).toBe(1);
    expect(modes.map(({ fingering }) => fingering?.notes.length)).toEqual(Array(7).fill(15));
  });

  test('over the whole range has every mode to the end of the neck', () => {
    const { modes } = roundOf(neckOf(guitar), harmonicMinor, rootOf('A'), { style: 'whole-range' });
    for (const { fingering } of modes) expect(fingering?.notes.length).toBeGreaterThan(24);
  });

  test('across the neck is refused: a round stays in one area', () => {
    const round = roundOf(neckOf(guitar), harmonicMinor, rootOf('A'), { style: 'across-the-neck' });
    expect(round.reason && reasonInWords(round.reason)).toBe(
      'across the neck is a chain of areas for one scale, and a round stays in one area',
    );
    expect(round.alternative?.style).toBe('position');
  });
});

describe('a round without open strings', () => {
  test('has none, and may lie elsewhere', () => {
    for (const root of EVERYDAY_ROOTS) {
      const { modes } = roundOf(neckOf(guitar), harmonicMinor, root, { openStrings: 'never' });
      const fingers = modes.flatMap(({ fingering }) => fingering?.notes.map(({ finger }) => finger) ?? [0]);
      expect(Math.min(...fingers)).toBe(1);
    }
  });
});
