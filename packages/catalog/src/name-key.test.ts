import { UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { instrumentKey, LONGEST_NAME, modeKey } from './name-key.ts';

describe('modeKey', () => {
  test.each([
    [
      'Dorian #4',
      ['Dorian ♯4', 'dorian-s4', 'DORIAN SHARP 4', ' dorian_sharp4 ', 'dorian#4', 'Dorian Sharp-4'],
    ],
    ['Locrian bb7', ['Locrian 𝄫7', 'locrian double flat 7', 'locrian-doubleflat7', 'Locrian ♭♭7']],
    ['Locrian nat6', ['Locrian ♮6', 'locrian natural 6', 'LOCRIAN-NAT6']],
    ['Lydian ##4', ['Lydian 𝄪4', 'lydian-doublesharp4', 'lydian-ss4', 'Lydian double-sharp 4']],
    ['natural minor', ['Natural Minor', 'natural-minor']],
    ['Enigmatic descending', ['Enigmatic (descending)']],
  ])('%s is also written %j', (name, others) => {
    for (const other of others) expect(modeKey(other)).toBe(modeKey(name));
  });

  test.each([
    ['Dorian #4', 'Dorian b4'],
    ['Locrian b4', 'Locrian bb4'],
    ['Dorian', 'Dorian/..'],
    ['Dorian', 'Dorian 4'],
    ['natural minor', 'nat minor'],
  ])('%s is not %s', (a, b) => {
    expect(modeKey(a)).not.toBe(modeKey(b));
  });

  test('tells all 462 systematic names apart, and none is longer than a name may be', () => {
    const names = UNIVERSE.modes.map(({ systematicName }) => systematicName);
    expect(new Set(names.map(modeKey)).size).toBe(462);
    expect(Math.max(...names.map((name) => name.length))).toBeLessThanOrEqual(LONGEST_NAME);
  });
});

describe('instrumentKey', () => {
  test('drops case, spaces and hyphens, and reads no accidentals into digits', () => {
    expect(instrumentKey('7-String  Guitar')).toBe('7stringguitar');
    expect(instrumentKey('Bass-5')).toBe('bass5');
  });
});
