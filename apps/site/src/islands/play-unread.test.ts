import { describe, expect, test } from 'vitest';
import { PLAY_KEYS } from './play-keys.ts';
import { problemsOf, unreadIn } from './play-unread.ts';

const told = (text: string) =>
  problemsOf(unreadIn(new URLSearchParams(text))).map(({ field, value }) => [field, value]);

describe('what cannot be had of a play-along in an address', () => {
  test.each([
    ['tempo', '9999'],
    ['tempo', 'fast'],
    ['tempo', '72.5'],
    ['top', '0'],
    ['step', '-5'],
    ['every', '17'],
    ['countIn', '9'],
    ['repeats', '0'],
    ['rest', '49'],
    ['seed', 'x'],
    ['turn', '8'],
    ['pattern', '__proto__'],
    ['value', 'third'],
    ['meter', '4/0'],
    ['backing', 'brass'],
    ['metronome', 'perhaps'],
    ['loop', 'for ever'],
    ['mix', '80-60'],
  ])('is told with its field: %s=%s', (key, text) => {
    const [problem, ...others] = problemsOf(unreadIn(new URLSearchParams({ [key]: text })));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ field: key, value: text });
    expect(problem?.expected.length).toBeGreaterThan(5);
  });

  test('is told with the numbers that can', () => {
    const [problem] = problemsOf(unreadIn(new URLSearchParams('tempo=9999')));
    expect(problem?.expectation).toEqual({ kind: 'whole-number', from: 20, to: 400 });
  });

  test.each([
    '',
    'tempo=',
    'tempo=70',
    'tempo=070&pattern=thirds&value=eighth-triplet&meter=7/8&metronome=off&loop=once&mix=90-10-20-0',
    'tempo=80&meter=4/4&metronome=on&backing=drone&seed=1&turn=1&capo=abc',
  ])('is nothing where all can be had: %s', (text) => {
    expect(told(text)).toEqual([]);
  });

  test('is told of every choice at once', () => {
    const all = new URLSearchParams(PLAY_KEYS.map((key) => [key, '?']));
    expect(told(all.toString())).toEqual(PLAY_KEYS.map((key) => [key, '?']));
  });
});
