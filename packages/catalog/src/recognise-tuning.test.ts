import { describe, expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';
import { recogniseTuning } from './recognise-tuning.ts';

const namesOf = (found: ReturnType<typeof recogniseTuning>) =>
  found.map(({ instrument, tuning }) => `${instrument.id} ${tuning.id}`);

describe('recogniseTuning', () => {
  test('finds every tuning of the catalogue by its open strings, on its own instrument first', () => {
    for (const instrument of CATALOGUE.instruments) {
      for (const tuning of instrument.tunings) {
        const open = tuning.courses.map(([principal]) => principal.midi);
        const found = recogniseTuning(open, instrument);
        expect(found).toContainEqual({ instrument, tuning });
        expect(found[0]?.instrument).toBe(instrument);
      }
    }
  });

  // D3 G3 B3 E4, strings 4 to 1 of a guitar: Wikipedia, Guitar tunings, Tenor guitar, Ukulele.
  test('finds all instruments that share the open strings', () => {
    const open = [50, 55, 59, 64];
    const inOrder = [
      'guitar-tenor chicago',
      'ukulele-baritone standard',
      'bouzouki-greek-4 dgbe',
      'banjo-tenor chicago',
      'banjo-plectrum chicago',
    ];
    expect(namesOf(recogniseTuning(open))).toEqual(inOrder);
    expect(namesOf(recogniseTuning(open, { id: 'banjo-tenor' }))).toEqual([
      'banjo-tenor chicago',
      ...inOrder.filter((name) => name !== 'banjo-tenor chicago'),
    ]);
    expect(namesOf(recogniseTuning(open, { id: 'nothing' }))).toEqual(inOrder);
  });

  test('keeps the order of the strings: a re-entrant tuning is not its strings sorted', () => {
    expect(namesOf(recogniseTuning([67, 60, 64, 69]))[0]).toBe('ukulele-soprano high-g');
    expect(recogniseTuning([60, 64, 67, 69])).toEqual([]);
  });

  test.each([[[]], [[40]], [[40, 45, 50, 55, 59]], [[Number.NaN]], [[40, 45, 50, 55, 59, 64, 69, 74]]])(
    'finds nothing for %j',
    (open) => {
      expect(recogniseTuning(open)).toEqual([]);
    },
  );
});
