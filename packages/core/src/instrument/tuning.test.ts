import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { formatMidi } from '../pitch/pitch.ts';
import type { Instrument } from './instrument.ts';
import { openStringNames, ownTuning, parseCourse, parseTuning } from './tuning.ts';

describe('a tuning', () => {
  test.each([
    ['E2-A2-D3-G3-B3-E4', 'E2 A2 D3 G3 B3 E4'],
    ['B1-E2-A2-D3-G3-B3-E4', 'B1 E2 A2 D3 G3 B3 E4'],
    ['e2,a2,d3,g3,b3,e4', 'E2 A2 D3 G3 B3 E4'],
    [' E2  A2 D3 - G3 , B3 E4 ', 'E2 A2 D3 G3 B3 E4'],
    ['D♯2-Gs2', 'D#2 G#2'],
    ['G4-C4-E4-A4', 'G4 C4 E4 A4'],
    ['E1', 'E1'],
    ['C-1-G-1-D0', 'C-1 G-1 D0'],
  ])('typed as %s has the open strings %s', (text, names) => {
    const tuning = valueIn(parseTuning(text));
    expect(openStringNames(tuning).join(' ')).toBe(names);
    expect(tuning.name).toBe(names);
    expect(tuning.id).toBe(names.replaceAll(' ', '-'));
  });

  test('of courses names their first string, and keeps the others', () => {
    const tuning = valueIn(parseTuning('G3/G4-D4/D4'));
    expect(tuning.id).toBe('G3/G4-D4/D4');
    expect(tuning.courses.map((course) => course.map(({ midi }) => midi))).toEqual([
      [55, 67],
      [62, 62],
    ]);
    expect(openStringNames(tuning)).toEqual(['G3', 'D4']);
  });

  test('is read back from its id', () => {
    const tuning = valueIn(parseTuning('Bb1/Bb2 F♯2'));
    expect(parseTuning(tuning.id)).toEqual({ ok: true, value: tuning });
  });

  test('is read back from its id, whatever its pitches', () => {
    const pitches = fc.integer({ min: 0, max: 127 }).map((midi) => formatMidi(midi));
    const courses = fc.array(pitches, { minLength: 1, maxLength: 3 }).map((strings) => strings.join('/'));
    fc.assert(
      fc.property(fc.array(courses, { minLength: 1, maxLength: 14 }), (strings) => {
        expect(valueIn(parseTuning(strings.join('-'))).id).toBe(strings.join('-'));
      }),
    );
  });

  test('has as many as 14 strings', () => {
    expect(valueIn(parseTuning(Array(14).fill('E2').join('-'))).courses).toHaveLength(14);
  });
});

// The tunings are common practice (no one source).
describe("an instrument's own tuning", () => {
  const own = (id: string, text: string) => ({ ...valueIn(parseTuning(text)), id, name: id });
  const idOf = (tunings: Instrument['tunings'], text: string) =>
    ownTuning({ tunings }, valueIn(parseTuning(text)))?.id;
  const guitar = [own('standard', 'E2-A2-D3-G3-B3-E4'), own('drop-c', 'C2-G2-C3-F3-A3-D4')] as const;
  const mandolin = [
    own('standard', 'G2/G2-D3/D3-A3/A3-E4/E4'),
    own('octaves', 'G2/G3-D3/D4-A3/A3-E4/E4'),
  ] as const;

  test.each([
    ['E2-A2-D3-G3-B3-E4', 'standard'],
    ['C2 G2 C3 F3 A3 D4', 'drop-c'],
    ['Fb2 Bbb2 D3 G3 B3 E4', 'standard'],
    ['D2-A2-D3-G3-B3-E4', undefined],
    ['A2-D3-G3-B3-E4', undefined],
    ['E2/E3-A2/A3-D3/D4-G3/G4-B3/B3-E4/E4', undefined],
  ])('of a guitar in %s is %s', (text, id) => {
    expect(idOf(guitar, text)).toBe(id);
  });

  test.each([
    ['G2/G2-D3/D3-A3/A3-E4/E4', 'standard'],
    ['G2/G3-D3/D4-A3/A3-E4/E4', 'octaves'],
    ['G2-D3-A3-E4', 'standard'],
    ['G2/G2-D3-A3-E4', undefined],
  ])('of an octave mandolin in %s is %s', (text, id) => {
    expect(idOf(mandolin, text)).toBe(id);
  });

  test('keeps the spelling that was typed', () => {
    const typed = valueIn(parseTuning('B#1 G2 C3 F3 A3 D4'));
    expect(ownTuning({ tunings: guitar }, typed)).toEqual({
      id: 'drop-c',
      name: 'drop-c',
      courses: typed.courses,
    });
    expect(ownTuning({ tunings: guitar }, valueIn(parseTuning('C2-G2-C3-F3-A3-D4')))).toBe(guitar[1]);
  });
});

describe('a tuning is refused', () => {
  const pitch = 'a note and its octave (middle C is C4), such as E2, F#1 or Bb3';
  const count = (strings: number) =>
    `1 to 14 open strings, low to high, such as E2-A2-D3-G3-B3-E4; this has ${strings}`;

  test.each([
    ['empty', '', 'tuning', '', count(0)],
    ['spaces', '   ', 'tuning', '   ', count(0)],
    ['nothing but hyphens', '---', 'tuning', '---', count(0)],
    ['constructor', 'constructor', 'tuning[0]', 'constructor', pitch],
    ['__proto__', '__proto__', 'tuning[0]', '__proto__', pitch],
    ['notes without octaves', 'E-A-D-G', 'tuning[0]', 'E', pitch],
    ['wrong in the third string', 'E2-A2-H3-G3', 'tuning[2]', 'H3', pitch],
    ['a valid tuning with a tail', 'E2-A2-D3-G3x', 'tuning[3]', 'G3x', pitch],
    ['a look-alike sharp', 'E2-F＃2', 'tuning[1]', 'F＃2', pitch],
    ['half a course', 'G3/-D4/D4', 'tuning[0]', '', pitch],
    ['wrong in the second string of a course', 'G3/G3-D4/H4', 'tuning[1]', 'H4', pitch],
    ['an octave below −1', 'C-2', 'tuning[0]', 'C', pitch],
  ])('where it is %s', (_what, text, field, value, expected) => {
    expect(problemIn(parseTuning(text))).toEqual({ field, value, expected });
  });

  test('where it has 15 strings', () => {
    const text = Array(15).fill('E2').join('-');
    expect(problemIn(parseTuning(text, 'open'))).toEqual({ field: 'open', value: text, expected: count(15) });
  });

  test('where it is very long, within a moment', () => {
    expect(problemIn(parseTuning('E2-'.repeat(50_000))).expected).toBe(count(50_000));
    expect(problemIn(parseTuning(`E2${' '.repeat(50_000)}x`)).field).toBe('tuning[1]');
  });

  test.each(['', '/', 'G3/', 'G3//G3', 'G3 /x'])('where a course is "%s"', (text) => {
    expect(problemIn(parseCourse(text)).field).toBe('course');
  });
});
