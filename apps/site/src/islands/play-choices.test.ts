import { describe, expect, test } from 'vitest';
import { readPlayChoices, writePlayChoices } from './play-choices.ts';
import { PLAY_KEYS, playQuery } from './play-keys.ts';

const WHOLE =
  'tempo=60&step=5&top=140&every=2&pattern=thirds&value=eighth-triplet&meter=7%2F8&countIn=2&repeats=3&rest=4&seed=9&backing=both&metronome=off&loop=mode&turn=4&mix=90-10-20-0';

const again = (text: string): string =>
  writePlayChoices(readPlayChoices(new URLSearchParams(text))).toString();

describe('choices of the play-along in an address', () => {
  test('everything that can be chosen is written as it was read', () => {
    expect(again(WHOLE)).toBe(WHOLE);
    expect([...new URLSearchParams(WHOLE).keys()]).toEqual([...PLAY_KEYS]);
  });

  test('defaults are left out', () => {
    expect(again('tempo=80&pattern=up&value=quarter&meter=4/4&backing=drone&mix=80-60-60-50&turn=1')).toBe(
      '',
    );
  });

  test.each([
    'tempo=0',
    'tempo=NaN',
    'tempo=10000',
    'tempo=-80',
    'tempo=1e2',
    'pattern=__proto__',
    'value=constructor',
    'meter=4/0',
    'meter=x',
    'countIn=9',
    'repeats=0',
    'rest=-1',
    'mix=101-0-0-0',
    'mix=1-2-3',
    'mix=a-b-c-d',
    'loop=',
    'volume=100',
  ])('what cannot be had is not chosen: %s', (text) => {
    expect(again(text)).toBe('');
  });

  test('a link says nothing of how loud the whole is', () => {
    expect(PLAY_KEYS.some((key) => /volume|loud|gain/.test(key))).toBe(false);
  });

  test('they are told from other choices', () => {
    expect(playQuery(new URLSearchParams('instrument=bass-4&tempo=60&utm=1')).toString()).toBe('tempo=60');
  });
});
