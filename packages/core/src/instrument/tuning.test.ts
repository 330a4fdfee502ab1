import { describe, expect, test } from 'vitest';
import { problemIn, valueIn } from '../given.ts';
import { openStringNames, parseCourse, parseTuning } from './tuning.ts';

describe('a tuning', () => {
  test.each([
    ['E2-A2-D3-G3-B3-E4', 'E2 A2 D3 G3 B3 E4'],
    ['B1-E2-A2-D3-G3-B3-E4', 'B1 E2 A2 D3 G3 B3 E4'],
    ['e2,a2,d3,g3,b3,e4', 'E2 A2 D3 G3 B3 E4'],
    [' E2  A2 D3 - G3 , B3 E4 ', 'E2 A2 D3 G3 B3 E4'],
    ['D♯2-Gs2', 'D#2 G#2'],
    ['G4-C4-E4-A4', 'G4 C4 E4 A4'],
    ['E1', 'E1'],
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

  test('has as many as 14 strings', () => {
    expect(valueIn(parseTuning(Array(14).fill('E2').join('-'))).courses).toHaveLength(14);
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
    ['an octave below zero', 'C-1', 'tuning[0]', 'C', pitch],
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
