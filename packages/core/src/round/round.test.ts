import { describe, expect, test } from 'vitest';
import { reasonInWords } from '../fingering/reason.ts';
import { INSTRUMENTS, modeOf, neckOf, rootOf, STEPS } from '../given.ts';
import type { Neck } from '../instrument/neck.ts';
import { type Round, type RoundOptions, roundOf } from './round.ts';

const { guitar, bass, sevenString, banjo, dulcimer, mandolin } = INSTRUMENTS;

const harmonicMinorFrom = (neck: Neck, root = 'A', options: RoundOptions = {}): Round =>
  roundOf(neck, modeOf(STEPS.harmonicMinor), rootOf(root), options);

describe('the round of harmonic minor from A', () => {
  test.each([
    ['a six-string guitar', neckOf(guitar), 15],
    ['a four-string bass', neckOf(bass), 8],
    ['a seven-string in B1-E2-A2-D3-G3-B3-E4', neckOf(sevenString), 15],
    ['a mandolin', neckOf(mandolin), 15],
  ])(
    'on %s lays all seven modes in one area, ascending, each with exactly its notes',
    (_name, neck, length) => {
      const round = harmonicMinorFrom(neck);
      const area = round.area ?? { from: Number.NaN, to: Number.NaN };
      expect(round.reason).toBeUndefined();
      expect(round.modes).toHaveLength(7);
      for (const { scale, fingering, reason } of round.modes) {
        const notes = fingering?.notes ?? [];
        expect(reason).toBeUndefined();
        expect(scale.root.name).toBe('A');
        expect(notes).toHaveLength(length);
        expect(notes.map(({ midi }) => midi - (notes[0]?.midi ?? 0))).toEqual(
          [...notes.keys()].map((at) => 12 * Math.floor(at / 7) + (scale.mode.semitones[at % 7] ?? 0)),
        );
        expect(notes.map(({ note, degree }) => `${degree} ${note}`)).toEqual(
          [...notes.keys()].map((at) => `${(at % 7) + 1} ${scale.notes[at % 7]}`),
        );
        expect(notes.every(({ fret }) => fret >= area.from && fret <= area.to)).toBe(true);
        expect(
          notes.every(({ fret, string, midi }) => midi === (neck.strings[string - 1]?.openMidi ?? 0) + fret),
        ).toBe(true);
        expect(fingering?.reachMm).toBeLessThanOrEqual(120);
      }
    },
  );

  test.each([
    ['a six-string guitar', neckOf(guitar), { from: 5, to: 9 }],
    ['a four-string bass', neckOf(bass), { from: 10, to: 14 }],
    ['a seven-string', neckOf(sevenString), { from: 8, to: 12 }],
  ])('on %s stays within five frets, and the hand with it', (_name, neck, area) => {
    const round = harmonicMinorFrom(neck);
    expect(round.area).toEqual(area);
    expect(round.modes.every(({ fingering }) => fingering?.cost.travelMm === 0)).toBe(true);
  });

  test('begins every mode on the same note', () => {
    const firsts = harmonicMinorFrom(neckOf(guitar)).modes.map(({ fingering }) => fingering?.notes[0]?.midi);
    expect(new Set(firsts)).toEqual(new Set([45]));
  });

  test('says from one mode to the next what moved, whatever the order', () => {
    for (const order of ['parent', 'brightness', 'fewest-moves'] as const) {
      const { modes } = harmonicMinorFrom(neckOf(guitar), 'A', { order });
      for (const [at, { scale, moved }] of modes.entries()) {
        const before = modes[at - 1]?.scale.mode.semitones ?? scale.mode.semitones;
        const after = before.map(
          (semitone, degree) => semitone + (moved.find((one) => one.degree === degree + 1)?.by ?? 0),
        );
        expect(after).toEqual(scale.mode.semitones);
        expect(moved.every(({ by }) => by !== 0)).toBe(true);
      }
    }
  });

  test('is laid in the same area in every order', () => {
    const areas = (['parent', 'brightness', 'fewest-moves'] as const).map(
      (order) => harmonicMinorFrom(neckOf(guitar), 'A', { order }).area,
    );
    expect(new Set(areas.map((area) => JSON.stringify(area))).size).toBe(1);
  });
});

describe('a round in another style', () => {
  test('three to a string begins each mode at one place, where every hand is in reach', () => {
    const round = harmonicMinorFrom(neckOf(bass), 'F', { style: 'three-per-string' });
    expect(round.reason).toBeUndefined();
    for (const { fingering } of round.modes) {
      expect(fingering?.notes[0]).toMatchObject({ string: 4, fret: 13, degree: 1 });
      expect(fingering?.notes).toHaveLength(12);
    }
  });

  test('along one string has an octave of each', () => {
    const round = harmonicMinorFrom(neckOf(guitar), 'A', { style: 'one-string' });
    expect(round.modes.map(({ fingering }) => fingering?.notes.length)).toEqual([8, 8, 8, 8, 8, 8, 8]);
    expect(
      new Set(round.modes.flatMap(({ fingering }) => fingering?.notes.map(({ string }) => string))),
    ).toEqual(new Set([6]));
  });

  test('from a fret begins at or above it', () => {
    expect(harmonicMinorFrom(neckOf(guitar), 'A', { fret: 9 }).area?.from).toBeGreaterThanOrEqual(9);
  });

  test('three to a string begins on a root at or above the fret that was asked', () => {
    const firstFret = (fret: number) =>
      harmonicMinorFrom(neckOf(guitar, { frets: 30 }), 'A', { style: 'three-per-string', fret }).modes[0]
        ?.fingering?.notes[0]?.fret;
    expect([firstFret(5), firstFret(6)]).toEqual([5, 17]);
  });

  test('that opens the hand wide carries the caution', () => {
    expect(harmonicMinorFrom(neckOf(guitar)).cautions[0]).toEqual({
      kind: 'wide-stretch',
      openingMm: 100,
      reachMm: 120,
    });
    expect(harmonicMinorFrom(neckOf(bass)).cautions).toHaveLength(1);
  });
});

describe('a round on a diatonic fretting', () => {
  const round = roundOf(neckOf(dulcimer), modeOf(STEPS.ionian), rootOf('D'));

  test('leaves out the modes whose notes it lacks, each with its reason, and plays the others', () => {
    expect(
      round.modes.map(({ scale, fingering, reason }) => [
        scale.mode.systematicName,
        (reason && reasonInWords(reason)) ?? fingering?.notes.length,
      ]),
    ).toEqual([
      ['Ionian', 8],
      ['Dorian', 'in this tuning the frets of this instrument do not have F'],
      ['Phrygian', 'in this tuning the frets of this instrument do not have Eb, F, Bb'],
      ['Lydian', 8],
      ['Mixolydian', 8],
      ['Aeolian', 'in this tuning the frets of this instrument do not have F, Bb'],
      ['Locrian', 'in this tuning the frets of this instrument do not have Eb, F, Bb'],
    ]);
    expect(round.reason && reasonInWords(round.reason)).toBe(
      'only 3 of the seven can be played: the others need notes that this neck does not have',
    );
    expect(round.area).toEqual({ from: 5, to: 8 });
  });

  test('has no area where none can be played', () => {
    const none = harmonicMinorFrom(neckOf(dulcimer), 'D');
    expect(none.area).toBeUndefined();
    expect(none.alternative).toBeUndefined();
    expect(none.reason && reasonInWords(none.reason)).toBe(
      'in this tuning the frets of this instrument do not have F, Bb',
    );
    expect(none.modes.every(({ reason, fingering }) => reason !== undefined && fingering === undefined)).toBe(
      true,
    );
  });
});

describe('a round is refused', () => {
  test.each([
    [
      'three to a string with a small hand',
      neckOf(bass),
      { style: 'three-per-string', fret: 1, reachMm: 60 },
      'string 4 asks the hand to cover frets 1, 3, 4 at once, 129.7 mm; the reach is 60 mm',
      'position',
    ],
    [
      'three to a string on a re-entrant tuning',
      neckOf(banjo),
      { style: 'three-per-string' },
      'three to a string needs open strings that rise from one to the next, and these do not (the tuning is re-entrant or has two strings alike)',
      'position',
    ],
    [
      'from a fret beyond the neck',
      neckOf(guitar),
      { fret: 30 },
      'this neck ends at fret 22, below fret 30',
      'position',
    ],
    [
      'along a string that is too short',
      neckOf(guitar, { frets: 9 }),
      { style: 'one-string' },
      'no string has a whole octave of it from root to root',
      'position',
    ],
  ] as const)('%s, with the reason and the nearest', (_what, neck, options, reason, style) => {
    const round = harmonicMinorFrom(neck, 'F', options);
    expect(round.area).toBeUndefined();
    expect(round.reason && reasonInWords(round.reason)).toBe(reason);
    expect(round.alternative?.style).toBe(style);
    expect(round.modes.every(({ fingering }) => fingering === undefined)).toBe(true);
  });

  test.each([
    ['position', 20],
    ['position', 30],
    ['three-per-string', 21],
  ] as const)(
    'in style %s from fret %i, and the nearest is the one that begins closest below',
    (style, fret) => {
      const neck = neckOf(guitar);
      const { alternative } = harmonicMinorFrom(neck, 'A', { style, fret });
      const playable = neck.slots
        .map((slot) => slot.fret)
        .filter((from) => harmonicMinorFrom(neck, 'A', { style, fret: from }).area?.from === from);
      expect(alternative).toEqual({ style, fret: playable.at(-1) });
      expect(alternative?.fret).toBeGreaterThan(0);
    },
  );
});
