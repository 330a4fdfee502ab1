import { describe, expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';
import { findFamily, findInstrument, findMode, findNotServed } from './find.ts';

/** What must be found nowhere. */
const HOSTILE = [
  '',
  '   ',
  'constructor',
  '__proto__',
  'toString',
  'hasOwnProperty',
  'undefined',
  'major; drop',
  'dorian/../ionian',
  'dorian\u0000',
  'dоrian', // the second letter is Cyrillic
  '2212221 2',
  '22122211',
];

describe('findMode', () => {
  test.each([
    ['2131212', '2131212'],
    ['Dorian #4', '2131212'],
    ['dorian ♯4', '2131212'],
    ['dorian-s4', '2131212'],
    ['dorian-sharp4', '2131212'],
    ['Ukrainian dorian', '2131212'],
    ['LOCRIAN ♭4 𝄫7', '1212213'],
    ['locrian-b4-bb7', '1212213'],
    ['locrian flat 4 double flat 7', '1212213'],
    ['Aeolian natural 7', '2122131'],
    ['major', '2212221'],
    ['minor', '2122122'],
    ['super-locrian', '1212222'],
    ['Vakulabharanam', '1312122'],
    ['Kafi', '2122212'],
  ])('%s is %s', (text, id) => {
    expect(findMode(text)?.mode.id).toBe(id);
  });

  test('finds every mode by its id, slug, displayed and systematic name', () => {
    for (const entry of CATALOGUE.modes) {
      for (const text of [entry.mode.id, entry.slug, entry.name, entry.mode.systematicName]) {
        expect(findMode(text)).toBe(entry);
      }
      for (const alias of entry.aliases) expect(findMode(alias)).toBeDefined();
    }
  });

  test.each(HOSTILE)('finds nothing for %j', (text) => {
    expect(findMode(text)).toBeUndefined();
  });
});

describe('findFamily', () => {
  test('finds every family by its id, slug, name, aliases and the steps of any rotation', () => {
    for (const entry of CATALOGUE.families) {
      const steps = entry.modes.map(({ mode }) => mode.id);
      for (const text of [entry.id, entry.slug, entry.name, ...entry.aliases, ...steps]) {
        expect(findFamily(text)).toBe(entry);
      }
    }
  });

  test.each(HOSTILE)('finds nothing for %j', (text) => {
    expect(findFamily(text)).toBeUndefined();
  });
});

describe('findInstrument', () => {
  test.each([
    ['bass-4', 'bass-4'],
    ['Bass Guitar', 'bass-4'],
    ['low B bass', 'bass-5'],
    ['7 string guitar', 'guitar-7'],
    ['guitar', 'guitar-6'],
    ['uke', 'ukulele-soprano'],
    ['Mandolin', 'mandolin'],
    ['banjo', 'banjo-5'],
    ['lap dulcimer', 'dulcimer-mountain'],
    ['12-string guitar', 'guitar-12'],
    ['laud', 'laud'],
    ['Charangón', 'charangon'],
    ['cuatro puertorriqueno', 'cuatro-puertorriqueno'],
    ['Balalaika', 'balalaika-prima'],
  ])('%s is %s', (text, id) => {
    expect(findInstrument(text)?.id).toBe(id);
  });

  test.each(HOSTILE)('finds nothing for %j', (text) => {
    expect(findInstrument(text)).toBeUndefined();
  });
});

describe('findNotServed', () => {
  test.each([
    ['baglama', 'baglama', /17 frets to the octave/],
    ['Bağlama', 'baglama', /17 frets to the octave/],
    ['saz', 'baglama', /17 frets to the octave/],
    ['OUD', 'oud', /no frets/],
    ['guitarron mexicano', 'guitarron', /no frets/],
    ['fretless bass', 'bass-fretless', /no frets/],
    ['banjo-fretless', 'banjo-fretless', /no frets/],
  ])('%s is %s, with the reason', (text, id, reason) => {
    expect(findNotServed(text)).toMatchObject({ id, reason: expect.stringMatching(reason) });
    expect(findInstrument(text)).toBeUndefined();
  });

  test.each([...HOSTILE, 'guitar-6', 'bass', 'saz '.repeat(100)])('finds nothing for %j', (text) => {
    expect(findNotServed(text)).toBeUndefined();
  });
});
