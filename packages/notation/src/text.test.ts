import {
  type Fingering,
  type FingeringOptions,
  fingeringsOf,
  type Neck,
  placesOn,
  type Scale,
} from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { neckOf, scaleOf } from './given.ts';
import { fingeringSummary, fingeringText, fretboardText } from './text.ts';

function fingeringOf(neck: Neck, scale: Scale, options: FingeringOptions = {}): Fingering {
  const [best] = fingeringsOf(neck, scale, { ...options, limit: 1 }).fingerings;
  if (best === undefined) throw new Error('no fingering');
  return best;
}

/** The dulcimer's Mixolydian fret pattern with the added 6½. */
const partialFrets = [
  ...[2, 4, 5, 7, 9, 10].map((semitones, at) => ({ fret: at + 1, semitones })),
  { fret: 6.5, semitones: 11 },
  ...[12, 14, 16, 17, 19, 21, 22].map((semitones, at) => ({ fret: at + 7, semitones })),
];
const GUITAR = 'E2-A2-D3-G3-B3-E4';
const guitar = neckOf(GUITAR);
const capoed = neckOf(GUITAR, {}, { capoFret: 3 });
const bass = neckOf('E1-A1-D2-G2', { scaleLengthMm: 863.6, frets: 21 });
const banjo = neckOf('G4-D3-G3-B3-D4', { shortStrings: [{ string: 5, startsAtFret: 5 }] });
const dulcimer = neckOf('D3-A3-D4/D4', { scaleLengthMm: 700, frets: 13, partialFrets });
const flat = neckOf('Eb2-Ab2-Db3-Gb3-Bb3-Eb4');
const aeolian = scaleOf('A', '2122122');
const ionian = scaleOf('D', '2212221');

/** The notes of tablature, as `string:fret/finger note`, and its systems' rows. */
function readTablature(text: string, strings: number) {
  const systems = text.split('\n\n').map((system) => system.split('\n'));
  const notes = systems.flatMap((lines) => {
    const [fingers = '', names = ''] = lines.slice(strings);
    const found = lines
      .slice(0, strings)
      .flatMap((line, at) =>
        [...line.matchAll(/\d+(\.\d+)?(?=-)/g)]
          .filter(({ index }) => index > line.indexOf('|'))
          .map(({ 0: fret, index: column }) => ({ string: at + 1, fret, column })),
      );
    const inOrder = found.toSorted((a, b) => a.column - b.column);
    return inOrder.map(({ string, fret, column }) => {
      const under = (line: string) => (/^\S+/.exec(line.slice(column)) ?? ['nothing'])[0];
      return `${string}:${fret}/${under(fingers)} ${under(names)}`;
    });
  });
  return { notes, systems };
}

/** The places of a fretboard in text, as `string fret note`, each under the number of its fret. */
function readFretboard(text: string): readonly string[] {
  const [head = '', ...rows] = text.split('\n');
  const frets = [...head.matchAll(/\S+/g)].map(({ 0: label, index }) => ({ label, index }));
  return rows.flatMap((row, at) =>
    frets.flatMap(({ label, index }) => {
      const note = /^[A-G][b#]*/.exec(row.slice(index))?.[0];
      return note === undefined ? [] : [`${at + 1} ${label} ${note}`];
    }),
  );
}

const cases: readonly (readonly [string, Neck, Scale, FingeringOptions])[] = [
  ['a guitar in position', guitar, aeolian, { fret: 5 }],
  ['a guitar with open strings', guitar, aeolian, { fret: 0 }],
  ['a guitar, three to a string', guitar, scaleOf('F#', '2212221'), { style: 'three-per-string', fret: 9 }],
  ['a guitar on one string', guitar, aeolian, { style: 'one-string' }],
  ['a guitar with a capo', capoed, aeolian, { fret: 0 }],
  ['a guitar in flats', flat, scaleOf('Db', '1312122'), {}],
  ['a bass', bass, aeolian, { fret: 12 }],
  ['a banjo', banjo, scaleOf('G', '2212221'), {}],
  ['a dulcimer on one string', dulcimer, ionian, { style: 'one-string' }],
];

describe('tablature', () => {
  test.each(cases)(
    'of %s reads back as the notes, frets and fingers that it was written from',
    (_name, neck, scale, options) => {
      const fingering = fingeringOf(neck, scale, options);
      const { notes } = readTablature(fingeringText(neck, fingering), neck.strings.length);
      expect(notes).toEqual(
        fingering.notes.map(({ string, fret, finger, note }) => `${string}:${fret}/${finger} ${note}`),
      );
    },
  );

  test.each(cases)('of %s has rows of one length, string 1 on top', (_name, neck, scale, options) => {
    const { systems } = readTablature(
      fingeringText(neck, fingeringOf(neck, scale, options)),
      neck.strings.length,
    );
    for (const lines of systems) {
      const rows = lines.slice(0, neck.strings.length);
      expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
      expect(rows.map((row) => row.slice(0, row.indexOf('|')).trim())).toEqual(
        neck.tuning.courses.map(([pitch]) => pitch.name).toReversed(),
      );
      expect(lines).toHaveLength(neck.strings.length + 2);
    }
  });

  test('of a dulcimer writes the half fret as 6.5', () => {
    const alone = neckOf('D3', { scaleLengthMm: 700, frets: 13, partialFrets });
    const text = fingeringText(alone, fingeringOf(alone, ionian, { style: 'one-string' }));
    expect(text.split('\n')[0]).toBe('D3|-0-1-2--3-4-5-6.5-7-|');
  });

  // F major at the nut of a bass: open strings, then frets 1 and 3 or 2 and 3 (common practice, no source).
  test('of F major on a bass looks as tablature does', () => {
    expect(fingeringText(bass, fingeringOf(bass, scaleOf('F', '2212221'), { fret: 0 }))).toBe(
      [
        'G2|------------------|',
        'D2|------------0-2-3-|',
        'A1|-----0-1--3-------|',
        'E1|-1-3--------------|',
        '    1 4 0 1  4 0 2 4',
        '    F G A Bb C D E F',
      ].join('\n'),
    );
  });

  test('is wrapped at 80 columns, and not before', () => {
    const once = fingeringOf(guitar, scaleOf('F#', '2212221'), { style: 'three-per-string', fret: 9 });
    const long: Fingering = { ...once, notes: [...once.notes, ...once.notes.toReversed(), ...once.notes] };
    const { notes, systems } = readTablature(fingeringText(guitar, long), 6);
    expect(notes).toEqual(
      long.notes.map(({ string, fret, finger, note }) => `${string}:${fret}/${finger} ${note}`),
    );
    expect(systems.length).toBeGreaterThan(1);
    for (const lines of systems) {
      expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(80);
    }
    for (const [row = ''] of systems.slice(0, -1)) expect(row.length).toBeGreaterThan(80 - 3);
  });
});

describe('a fretboard in text', () => {
  const boards: readonly (readonly [string, Neck, Scale])[] = [
    ['a guitar', guitar, aeolian],
    ['a guitar with a capo', capoed, aeolian],
    ['a guitar in double flats', guitar, scaleOf('Gb', '1222122')],
    ['a bass', bass, aeolian],
    ['a banjo', banjo, scaleOf('G', '2212221')],
    ['a dulcimer', dulcimer, ionian],
    ['a far spelling', guitar, scaleOf('B#', '1111116')],
  ];

  test.each(boards)('of %s reads back as the places on the neck', (_name, neck, scale) => {
    expect(readFretboard(fretboardText(neck, scale))).toEqual(
      placesOn(neck, scale).map(({ string, slot, note }) => `${string} ${neck.slots[slot]?.fret} ${note}`),
    );
  });

  test.each(boards)('of %s has rows of one length, string 1 on top', (_name, neck, scale) => {
    const rows = fretboardText(neck, scale).split('\n').slice(1);
    expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
    expect(rows.map((row) => row.slice(0, row.indexOf('|')).trim())).toEqual(
      neck.tuning.courses.map(([pitch]) => pitch.name).toReversed(),
    );
  });

  test('is blank where a short string has not begun', () => {
    const rows = fretboardText(banjo, aeolian).split('\n');
    expect(rows[5]?.startsWith(`G4|${'   |'.repeat(5)}G--|`)).toBe(true);
    expect(rows[4]?.startsWith('D3|D--|---|E--|')).toBe(true);
  });
});

describe('a fretboard in text for a left-handed player', () => {
  const boards: readonly (readonly [string, Neck, Scale])[] = [
    ['a guitar', guitar, aeolian],
    ['a guitar with a capo', capoed, aeolian],
    ['a guitar in double flats', guitar, scaleOf('Gb', '1222122')],
    ['a banjo', banjo, scaleOf('G', '2212221')],
    ['a dulcimer', dulcimer, ionian],
  ];
  /** The cells of a row from the nut, the name of its string first. */
  const cellsOf = (row: string, from: 'left' | 'right'): readonly string[] => {
    const cells = row.split('|').map((cell) => cell.replaceAll(/[- ]/g, ''));
    return (from === 'left' ? cells : cells.toReversed()).slice(0, -1);
  };

  test.each(boards)(
    'of %s is mirrored, string 1 still on top and every name as it was',
    (_name, neck, scale) => {
      const [head = '', ...rows] = fretboardText(neck, scale).split('\n');
      const [leftHead = '', ...leftRows] = fretboardText(neck, scale, { handedness: 'left' }).split('\n');
      expect(leftRows.map((row) => cellsOf(row, 'right'))).toEqual(rows.map((row) => cellsOf(row, 'left')));
      expect(leftHead.trim().split(/ +/).toReversed()).toEqual(head.trim().split(/ +/));
    },
  );

  test.each(boards)('of %s lines up, each number at the right end of its column', (_name, neck, scale) => {
    const [head = '', ...rows] = fretboardText(neck, scale, { handedness: 'left' }).split('\n');
    const ends = [...head.matchAll(/\S+/g)].map(({ 0: fret, index }) => index + fret.length);
    for (const row of rows) {
      const walls = [...row.matchAll(/\|/g)].map(({ index }) => index);
      expect(walls.slice(1)).toEqual(ends);
    }
  });

  test('has its nut on the right, and blanks where a short string has not begun', () => {
    const rows = fretboardText(banjo, aeolian, { handedness: 'left' }).split('\n');
    expect(rows[5]?.endsWith(`--G${'|   '.repeat(5)}|G4`)).toBe(true);
    expect(rows[4]?.endsWith('--E|---|--D|D3')).toBe(true);
  });
});

describe('the summary of a fingering', () => {
  const fingering = fingeringOf(guitar, aeolian, { fret: 5 });
  const costing = (travelMm: number): Fingering => ({ ...fingering, cost: { ...fingering.cost, travelMm } });

  test('says where it lies, how far the hand opens and whether it stays', () => {
    // 648 · (2^(−5/12) − 2^(−8/12)) = 77.2
    expect(fingeringSummary(costing(0))).toBe('frets 5 to 8, hand opens 77.2 mm, the hand stays');
    expect(fingeringSummary(costing(68.6))).toBe(
      'frets 5 to 8, hand opens 77.2 mm, the hand travels 68.6 mm',
    );
  });
});
