import { describe, expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';
import { searchInstruments } from './instrument-search.ts';

/** Instruments in short, with the tunings that were spoken of: `bass-5 low-b`. */
const found = (text: string, limit?: number) =>
  searchInstruments({ text, ...(limit !== undefined && { limit }) }).map(({ instrument, tunings }) =>
    [instrument.id, ...tunings.map(({ id }) => id)].join(' '),
  );

describe('searchInstruments', () => {
  const words = ['bass', 'five strings', 'low B'];
  const orders = [
    [0, 1, 2],
    [0, 2, 1],
    [1, 0, 2],
    [1, 2, 0],
    [2, 0, 1],
    [2, 1, 0],
  ].map((order) => order.map((at) => words[at]).join(' '));
  test.each(orders)('%s is the five-string bass with a low B', (text) => {
    expect(found(text)).toEqual(['bass-5 low-b']);
  });

  test.each([
    ['five string bass low B', 'bass-5 low-b'],
    ['bass, five strings, low b', 'bass-5 low-b'],
    ['5-string bass', 'bass-5'],
    ['5 string', 'bass-5'],
    ['five strings', 'bass-5'],
    ['low b', 'bass-5 low-b'],
    ['BEADG', 'bass-5 low-b'],
    ['B0 E1 A1 D2 G2', 'bass-5 low-b'],
    ['bead', 'bass-4 bead'],
    ['bass', 'bass-4'],
    ['guitar', 'guitar-6'],
    ['DADGAD', 'guitar-6 dadgad'],
    ['d a d g a d', 'guitar-6 dadgad'],
    ['drop d', 'guitar-6 drop-d double-drop-d'],
    ['bass in drop D', 'bass-4 drop-d'],
    ['D# G# C# F# A# D#', 'guitar-6 half-step-down'],
    ['gDGBD', 'banjo-5 open-g'],
    ['sawmill', 'banjo-5 sawmill a-modal'],
    ['tenor', 'guitar-tenor'],
    ['12 string guitar', 'guitar-12'],
    ['twelve strings', 'guitar-12'],
    ['cebolao', 'viola-caipira cebolao-d cebolao-e'],
    ['russian guitar', 'guitar-russian-7'],
    ['vihuela', 'vihuela-mexicana'],
    ['laúd', 'laud'],
    ['dulcimers', 'dulcimer-mountain'],
    ['bass tuned like a cello', 'bass-4 fifths'],
  ])('%s finds %s first', (text, first) => {
    expect(found(text)[0]).toBe(first);
  });

  test.each([
    ['ukelele', 'ukulele-soprano'],
    ['mandolyn', 'mandolin'],
    ['abnjo', 'banjo-5'],
    ['bouzuki', 'bouzouki-irish'],
    ['citern', 'cittern-modern'],
    ['guitr 7 strng', 'guitar-7'],
    ['dropd', 'guitar-6 drop-d double-drop-d'],
  ])('forgives %s: %s', (text, first) => {
    expect(found(text)[0]).toBe(first);
  });

  test('takes no note for a slip of another', () => {
    expect(found('low g').some((one) => one.startsWith('bass-5'))).toBe(false);
    expect(found('BEADF')).toEqual([]);
  });

  test('finds by kind, own names before those of the kind', () => {
    expect(found('latin american', 99)).toEqual(
      CATALOGUE.instruments.filter(({ kind }) => kind === 'latin-american').map(({ id }) => id),
    );
    expect(found('lute')[0]).toBe('lute-renaissance-6');
    expect(found('lute').at(-1)).toBe('vihuela-renaissance');
  });

  test('finds what somebody is still typing', () => {
    expect(found('bala')).toEqual(['balalaika-prima', 'domra-3', 'domra-4']);
    expect(found('5 str')).toEqual(found('5 strings'));
  });

  test('finds every instrument by its id, its name and its aliases, itself first', () => {
    for (const { id, name, aliases } of CATALOGUE.instruments) {
      for (const text of [id, name, ...aliases])
        expect([text, found(text)[0]?.split(' ')[0]]).toEqual([text, id]);
    }
  });

  test('finds every tuning by the name of its instrument and its own, or by its open strings', () => {
    for (const instrument of CATALOGUE.instruments) {
      for (const tuning of instrument.tunings) {
        const open = tuning.courses.map(([principal]) => principal.name).join(' ');
        for (const text of [`${instrument.id} ${tuning.id}`, open]) {
          const own = searchInstruments({ text, limit: 99 }).find((one) => one.instrument === instrument);
          expect([text, own?.tunings.includes(tuning)]).toEqual([text, true]);
        }
      }
    }
  });

  test('falls back on most of the words, where half of them fit at least', () => {
    expect(found('guitar xyzzyquux')[0]).toBe('guitar-6');
    expect(found('xyzzyquux plugh guitar')).toEqual([]);
  });

  test.each(['xyzzyquux', '---', 'the', 'constructor', '__proto__', 'saz', '99'])(
    'finds nothing for %j',
    (text) => {
      expect(found(text)).toEqual([]);
    },
  );

  test('gives at most as many as asked, twenty where nobody says; all fit nothing at all', () => {
    expect(searchInstruments({})).toHaveLength(20);
    expect(found(' ', 99)).toEqual(CATALOGUE.instruments.map(({ id }) => id));
    expect(found('guitar', 2)).toHaveLength(2);
    expect(found('guitar', 0)).toEqual([]);
    expect(found('guitar', -1)).toEqual([]);
  });

  test('answers a text of two million letters', () => {
    expect(found('guitar '.repeat(300_000), 1)).toEqual(['guitar-6']);
  });
});
