import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import { describeSolution, type FingeredNote } from './fingering.ts';
import { reasonInWords } from './reason.ts';
import { startingSlots, threePerStringFrom, threePerStringObstacle } from './three-per-string.ts';

const { guitar, bass, sevenString, banjo, mandolin } = INSTRUMENTS;

function notesFrom(
  neck: ReturnType<typeof neckOf>,
  root: string,
  steps: string,
  slot: number,
  reachMm = 120,
) {
  const scale = scaleOf(root, steps);
  const found = threePerStringFrom(neck, scale, search(slot, { reachMm }));
  const [best] = found.kind === 'playable' ? found.solutions : [];
  if (best === undefined) throw new Error(found.kind);
  return describeSolution(neck, scale, best).notes;
}

function search(startSlot: number, { reachMm = 120, takesOpen = true, limit = 1 } = {}) {
  return { startSlot, reachMm, takesOpen, limit };
}

const onString = (notes: readonly FingeredNote[], string: number) =>
  notes
    .filter((note) => note.string === string)
    .map(({ fret, finger }) => `${fret}/${finger}`)
    .join(' ');

// Two whole tones 1-2-4, a semitone and a tone 1-2-4, a tone and a semitone 1-3-4 (common practice, no source).
describe('three to a string', () => {
  const aMajor = notesFrom(neckOf(guitar), 'A', STEPS.ionian, 5);

  test.each([
    [6, 'two whole tones', '5/1 7/2 9/4'],
    [5, 'two whole tones', '5/1 7/2 9/4'],
    [4, 'a semitone and a tone', '6/1 7/2 9/4'],
    [3, 'a semitone and a tone', '6/1 7/2 9/4'],
    [2, 'a tone and a semitone', '7/1 9/3 10/4'],
    [1, 'a tone and a semitone', '7/1 9/3 10/4'],
  ])('of A major takes on string %i %s as %s', (string, _what, row) => {
    expect(onString(aMajor, string)).toBe(row);
  });

  test.each([
    ['guitar', guitar, 5, 18],
    ['seven-string', sevenString, 10, 21],
  ])(
    'on a %s is three notes for every string, each a step of the scale',
    (_name, instrument, slot, count) => {
      const notes = notesFrom(neckOf(instrument), 'A', STEPS.harmonicMinor, slot);
      expect(notes).toHaveLength(count);
      expect(notes.map(({ degree }) => degree)).toEqual([...notes.keys()].map((at) => (at % 7) + 1));
    },
  );

  test('may begin on any degree', () => {
    expect(notesFrom(neckOf(guitar), 'A', STEPS.ionian, 7)[0]).toMatchObject({
      note: 'B',
      degree: 2,
      fret: 7,
    });
  });

  test('may take an open string as one of the three', () => {
    const notes = notesFrom(neckOf(guitar), 'E', STEPS.phrygian, 0, 130);
    expect(onString(notes, 6)).toBe('0/0 1/1 3/3');
  });

  test('starts on the roots of the lowest string, or on the first scale note at or above a fret', () => {
    const scale = scaleOf('A', STEPS.ionian);
    expect(startingSlots(neckOf(guitar), scale)).toEqual([5, 17]);
    expect(startingSlots(neckOf(guitar), scale, 6)).toEqual([7]);
    expect(startingSlots(neckOf(guitar), scale, 0)).toEqual([0]);
    expect(startingSlots(neckOf(guitar), scale, 23)).toEqual([]);
    expect(startingSlots(neckOf(guitar, { capoFret: 6 }), scale)).toEqual([17]);
  });
});

describe('three to a string is refused', () => {
  test('where it would take an open string and may not', () => {
    const scale = scaleOf('E', STEPS.phrygian);
    const closed = threePerStringFrom(neckOf(guitar), scale, search(0, { reachMm: 130, takesOpen: false }));
    expect(closed).toEqual({ kind: 'off-the-neck', string: 6 });
  });

  test('with its other fingerings where more are asked for, best first', () => {
    const found = threePerStringFrom(neckOf(guitar), scaleOf('A', STEPS.ionian), search(5, { limit: 5 }));
    const costs = found.kind === 'playable' ? found.solutions.map(({ cost }) => cost) : [];
    expect(costs).toHaveLength(5);
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
  });

  test('at the first fret of a 34-inch bass, where two whole tones are 168.2 mm', () => {
    // 863.6 · (2^(−1/12) − 2^(−5/12))
    expect(threePerStringFrom(neckOf(bass), scaleOf('F', STEPS.ionian), search(1))).toEqual({
      kind: 'too-wide',
      beyondReach: [
        { string: 1, spanMm: 122.4, frets: [2, 3, 5] },
        { string: 2, spanMm: 122.4, frets: [2, 3, 5] },
        { string: 3, spanMm: 168.2, frets: [1, 3, 5] },
        { string: 4, spanMm: 168.2, frets: [1, 3, 5] },
      ].toReversed(),
    });
  });

  test.each([[12], [13], [15]])('but accepted there from fret %i', (slot) => {
    expect(threePerStringFrom(neckOf(bass), scaleOf('F', STEPS.ionian), search(slot)).kind).toBe('playable');
  });

  test('on the string where the neck ends', () => {
    expect(threePerStringFrom(neckOf(guitar), scaleOf('A', STEPS.ionian), search(19))).toEqual({
      kind: 'off-the-neck',
      string: 5,
    });
  });

  test.each([
    ['with one string', neckOf(guitar, {}, 'E2'), 'three to a string needs at least two strings'],
    [
      'with a re-entrant tuning',
      neckOf(banjo),
      'three to a string needs open strings that rise from one to the next, and these do not (the tuning is re-entrant or has two strings alike)',
    ],
    [
      'with two strings alike',
      neckOf(guitar, {}, 'D3-A3-A3'),
      'three to a string needs open strings that rise from one to the next, and these do not (the tuning is re-entrant or has two strings alike)',
    ],
    ['but not in fifths', neckOf(mandolin), undefined],
    ['but not in fourths', neckOf(bass), undefined],
  ])('%s', (_what, neck, obstacle) => {
    const reason = threePerStringObstacle(neck);
    expect(reason && reasonInWords(reason)).toBe(obstacle);
  });
});
