import {
  buildNeck,
  fingeringsOf,
  type Instrument,
  movedDegrees,
  parseRoot,
  parseTuning,
  placesOn,
  type Result,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import * as answers from './answers.ts';

function valueIn<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.expected);
  return result.value;
}

const tuning = valueIn(parseTuning('E2-A2-D3-G3-B3-E4'));
const guitar: Instrument = {
  id: 'guitar',
  name: 'guitar',
  aliases: [],
  scaleLengthMm: 648,
  frets: 22,
  handFrame: 'one-finger-per-fret',
  shortStrings: [],
  tunings: [tuning],
};
const neck = valueIn(buildNeck(guitar, tuning));
const [ionian, dorian] = ['2212221', '2122212'].map((steps) => UNIVERSE.modesById.get(steps));
if (ionian === undefined || dorian === undefined) throw new Error('no such modes');
const scale = spell(ionian, valueIn(parseRoot('A')));
const [fingering] = fingeringsOf(neck, scale).fingerings;

const inFamily = UNIVERSE.families.map(({ id, modes }) => ({
  id,
  slug: id,
  name: id,
  aliases: [],
  steps: modes[0]?.steps,
  modes: modes.map((mode) => ({
    id: mode.id,
    slug: mode.id,
    name: mode.systematicName,
    degree: mode.rotation + 1,
    formula: mode.formula,
    aliases: [],
  })),
}));

describe('what core reckons fits what is answered', () => {
  test('for all 66 families', () => {
    expect(inFamily).toHaveLength(66);
    expect(
      answers.Families.parse({ total: 66, offset: 0, next: null, previous: null, families: inFamily })
        .families,
    ).toEqual(inFamily);
  });

  test('for a fingering, which passes unchanged', () => {
    expect(answers.Fingering.parse(fingering)).toEqual(fingering);
  });

  test('for the places of a scale, without what a neck counts by', () => {
    const [place] = placesOn(neck, scale);
    expect(answers.Place.parse(place)).toEqual({ string: 1, fret: 0, note: 'E', degree: 5, midi: 64 });
    expect(place).toHaveProperty('slot');
  });

  test('for moved degrees', () => {
    const moved = movedDegrees(ionian.semitones, dorian.semitones);
    // By hand: Dorian has b3 and b7.
    expect(moved.map((one) => answers.Moved.parse(one))).toEqual([
      { degree: 3, by: -1 },
      { degree: 7, by: -1 },
    ]);
  });
});

describe('an answer is refused', () => {
  test.each([
    ['a degree beyond the seventh', answers.Moved, { degree: 8, by: 1 }],
    ['a degree before the first', answers.Moved, { degree: 0, by: 1 }],
    ['half a semitone', answers.Moved, { degree: 2, by: 0.5 }],
    ['no number at all', answers.Moved, { degree: 2, by: Number.NaN }],
    ['a string 0', answers.Place, { string: 0, fret: 1, note: 'A', degree: 1, midi: 57 }],
    ['a fret behind the nut', answers.Place, { string: 1, fret: -1, note: 'A', degree: 1, midi: 57 }],
    ['a fifth finger', answers.Fingering, { ...fingering, notes: [{ ...fingering?.notes[0], finger: 5 }] }],
    ['six modes of a family', answers.Family, { ...inFamily[0], modes: inFamily[0]?.modes.slice(1) }],
    [
      'a formula of six degrees',
      answers.ModeSummary,
      { ...inFamily[0]?.modes[0], formula: ['1', '2', '3', '4', '5', '6'] },
    ],
    [
      'a server that is not well',
      answers.Health,
      { status: 'ill', modes: 462, instruments: 21, dataVersion: 'x', counting: 'off' },
    ],
    [
      'a problem without a status',
      answers.Problem,
      { type: '/problems/x/', title: 'x', detail: 'x', errors: [] },
    ],
  ])('where it holds %s', (_what, schema, answer) => {
    expect(schema.safeParse(answer).success).toBe(false);
  });

  test('and is taken where it holds half a fret, as a dulcimer has', () => {
    const place = { string: 1, fret: 6.5, note: 'C#', degree: 7, midi: 61 };
    expect(answers.Place.parse(place)).toEqual(place);
  });
});

describe('a schema with a name', () => {
  test('has one that no other has', () => {
    const ids = Object.values(answers).flatMap((schema) => schema.meta()?.id ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('Problem');
  });
});
