import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import { describeSolution, type Fingering } from './fingering.ts';
import { alongString } from './one-string.ts';

const aMinor = scaleOf('A', STEPS.aeolian);

function along(
  neck: ReturnType<typeof neckOf>,
  number: number,
  { fromSlot = 0, scale = aMinor, takesOpen = true } = {},
): Fingering | undefined {
  const string = neck.strings[number - 1];
  if (string === undefined) throw new Error(`no string ${number}`);
  const [solution] = alongString(neck, scale, string, { reachMm: 120, fromSlot, takesOpen, limit: 1 });
  return solution && describeSolution(neck, scale, solution);
}

function fretsAlong(...given: Parameters<typeof along>) {
  return along(...given)?.notes.map(({ fret }) => fret);
}

describe('along one string', () => {
  const guitar = neckOf(INSTRUMENTS.guitar);

  test.each([
    [6, 0, [5, 7, 8, 10, 12, 13, 15, 17]],
    [5, 0, [0, 2, 3, 5, 7, 8, 10, 12]],
    [1, 0, [5, 7, 8, 10, 12, 13, 15, 17]],
  ])('string %i of a guitar, from fret %i, has an octave of A minor at %j', (string, fromSlot, frets) => {
    expect(fretsAlong(guitar, string, { fromSlot })).toEqual(frets);
  });

  test('a short string is climbed by the numbers of the whole neck', () => {
    const scale = scaleOf('G', STEPS.ionian);
    expect(fretsAlong(neckOf(INSTRUMENTS.banjo), 5, { scale })).toEqual([0, 7, 9, 10, 12, 14, 16, 17]);
  });

  test('the hand moves, and what it moves is counted', () => {
    const found = along(guitar, 6);
    expect(found?.cost.travelMm).toBeGreaterThan(0);
    expect(found?.cost.stringChanges).toBe(0);
    expect(found?.reachMm).toBeLessThanOrEqual(120);
  });

  test('the hand moves as seldom as it can: an octave of eight notes takes at most three shifts', () => {
    const found = along(guitar, 6);
    const fingers = found?.notes.map(({ finger }) => finger) ?? [];
    expect(found?.cost.shifts).toBeLessThanOrEqual(3);
    // No finger follows itself along the string: each group of notes lies under a hand that stays.
    expect(fingers.some((finger, at) => at > 0 && finger === fingers[at - 1])).toBe(false);
  });

  test('an open note takes no finger, every other one of the four', () => {
    const notes = along(guitar, 5)?.notes ?? [];
    expect(notes[0]).toMatchObject({ fret: 0, finger: 0 });
    // Without it the octave would begin at fret 12 and end at fret 24, which the neck does not have.
    expect(along(guitar, 5, { takesOpen: false })).toBeUndefined();
    expect(notes.slice(1).every(({ finger }) => finger >= 1 && finger <= 4)).toBe(true);
  });
});

describe('along one string there is nothing', () => {
  test.each([
    ['where the octave runs off the neck', 6, 6],
    ['above the last root', 6, 18],
    ['beyond the neck', 6, 99],
  ])('%s', (_what, string, fromSlot) => {
    expect(fretsAlong(neckOf(INSTRUMENTS.guitar), string, { fromSlot })).toBeUndefined();
  });

  test('where the frets leave a note out', () => {
    expect(
      fretsAlong(neckOf(INSTRUMENTS.dulcimer), 1, { scale: scaleOf('D', STEPS.aeolian) }),
    ).toBeUndefined();
    expect(fretsAlong(neckOf(INSTRUMENTS.dulcimer), 1, { scale: scaleOf('D', STEPS.ionian) })).toHaveLength(
      8,
    );
  });
});
