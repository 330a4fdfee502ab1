import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { dataWith, makeFolder, messageOf, removeFolder } from './broken-data.ts';
import { loadCatalogue } from './load.ts';

const folder = makeFolder();

afterAll(() => removeFolder(folder));

describe('loadCatalogue', () => {
  test('reads the folder it is given, as a path or a URL', () => {
    const data = dataWith(folder, 'instruments/bass-4.json', ['scaleLengthMm'], 800);
    const bass = loadCatalogue(data).instruments.find(({ id }) => id === 'bass-4');
    expect(bass?.scaleLengthMm).toBe(800);
    expect(loadCatalogue(new URL('../../../data', import.meta.url)).modes).toHaveLength(462);
  });

  test('lists every problem of every file at once', () => {
    const data = dataWith(folder, 'instruments/bass-4.json', ['tunings', 1, 'courses', 2], 'H9');
    writeFileSync(join(data, 'thaats.json'), '{');
    expect(messageOf(data).split('\n')).toEqual([
      expect.stringMatching(/^data\/thaats\.json: cannot be read as JSON: /),
      'data/instruments/bass-4.json: tunings[1].courses[2]: expected a note and its octave (middle C is C4), such as E2, F#1 or Bb3, got "H9"',
    ]);
  });

  test('says which folder or file is missing', () => {
    expect(messageOf(join(folder, 'nowhere'))).toMatch(/^data\/sources\.json: cannot be read .*ENOENT/);
    expect(messageOf(join(folder, 'nowhere'))).toMatch(/^data\/families: cannot be listed: .*ENOENT/m);
  });
});

test('the kind of an instrument is one of the list', () => {
  const data = dataWith(folder, 'instruments/bass-4.json', ['kind'], 'violin');
  expect(messageOf(data)).toMatch(
    /^data\/instruments\/bass-4\.json: kind: expected one of "guitar"\|.*\|"pipa", got "violin"$/,
  );
});

describe('a broken value inside a file', () => {
  const bass = 'instruments/bass-4.json';
  const minor = 'families/harmonic-minor.json';
  test.each<[string, (string | number)[], unknown, string]>([
    [bass, ['frets'], '21', 'frets: expected number, got "21"'],
    [bass, ['frets'], undefined, 'frets: expected number, got nothing'],
    [bass, ['frets'], 99, 'frets: expected number to be <=36, got 99'],
    [bass, ['brand'], 'x', 'Unrecognized key: "brand"'],
    [
      bass,
      ['handFrame'],
      'two',
      'handFrame: expected one of "one-finger-per-fret"|"two-frets-per-finger", got "two"',
    ],
    [bass, ['tunings'], [], 'tunings[0]: expected object, got nothing'],
    [
      bass,
      ['tunings', 0, 'courses'],
      ['E1', 'A1', 'D2'],
      'tunings[0].courses: expected as many as strings, 4; this has 3',
    ],
    [
      bass,
      ['tunings', 0, 'reentrant'],
      true,
      'tunings[0].reentrant: expected what the courses say, false, got true',
    ],
    [
      bass,
      ['tunings', 1, 'id'],
      'standard',
      'tunings[1].id: expected an id that no other tuning of the instrument has, got "standard"',
    ],
    [
      bass,
      ['scaleLengthMm'],
      1000,
      'scaleLengthMm: expected a length within scaleLengthRangeMm, 762 to 914, got 1000',
    ],
    [
      bass,
      ['fretsRange'],
      { from: 22, to: 24 },
      'frets: expected a number within fretsRange, 22 to 24, got 21',
    ],
    [bass, ['fretsRange', 'from'], 0, 'fretsRange.from: expected number to be >0, got 0'],
    [
      bass,
      ['handFrame'],
      'two-frets-per-finger',
      'handFrame: expected two frets a finger only below 500 mm and in fifths, got "two-frets-per-finger"',
    ],
    [
      'instruments/ukulele-soprano.json',
      ['handFrame'],
      'two-frets-per-finger',
      'handFrame: expected two frets a finger only below 500 mm and in fifths, got "two-frets-per-finger"',
    ],
    [
      'instruments/mandocello.json',
      ['handFrame'],
      'two-frets-per-finger',
      'handFrame: expected two frets a finger only below 500 mm and in fifths, got "two-frets-per-finger"',
    ],
    [bass, ['tunings', 0, 'sources'], [], 'tunings[0].sources: expected at least one source'],
    [bass, ['musicXmlSound'], 'bass', 'musicXmlSound: expected a sound such as pluck.guitar, got "bass"'],
    ['not-served.json', [1, 'reason'], 'Why', '[1].reason: expected whole sentences, got "Why"'],
    [
      'not-served.json',
      [1, 'id'],
      'baglama',
      '[1].id: expected an id that no other entry has, got "baglama"',
    ],
    [
      bass,
      ['soundingMinusWrittenSemitones'],
      0,
      'soundingMinusWrittenSemitones: expected twelve times clef.octaveChange, -12, got 0',
    ],
    [
      'instruments/banjo-5.json',
      ['shortStrings', 0, 'string'],
      6,
      'shortStrings[0].string: expected a string from 1 to 5, got 6',
    ],
    [
      'instruments/banjo-5.json',
      ['shortStrings', 0, 'startsAtFret'],
      22,
      'shortStrings[0].startsAtFret: expected a fret below the last, 22, got 22',
    ],
    [
      'instruments/dulcimer-mountain.json',
      ['partialFrets', 3, 'semitones'],
      5,
      'partialFrets[3]: expected a fret above partialFrets[2]',
    ],
    [
      'instruments/dulcimer-mountain.json',
      ['frets'],
      17,
      'frets: expected the number of the last partial fret, 16, got 17',
    ],
    [
      minor,
      ['head'],
      '2122132',
      'head: expected seven steps in semitones that sum to 12, such as 2212221, got "2122132"',
    ],
    [
      minor,
      ['modes', 3, 'steps'],
      '2212221',
      'modes[3].steps: expected the head turned on by 3 degrees, 2131212, got "2212221"',
    ],
    [minor, ['modes'], [], 'modes: expected the seven modes, from the head upwards'],
    [minor, ['slug'], 'minor', 'slug: expected the slug of its name, harmonic-minor, got "minor"'],
    [
      minor,
      ['modes', 0, 'names', 1, 'name'],
      'Harmonic Minor',
      'modes[0].names[1].name: expected a name that differs from names[0], got "Harmonic Minor"',
    ],
    [
      'melakarta.json',
      ['scales', 1, 'number'],
      1,
      'scales[1].number: expected a number that no other scale of the file has, got 1',
    ],
    [
      'conflicts.json',
      [0, 'uses', 1, 'steps'],
      '3121212',
      '[0].uses[1].steps: expected another scale than uses[0], got "3121212"',
    ],
    ['sources.json', [1, 'id'], 'common', '[1].id: expected an id that no other source has, got "common"'],
  ])('%s %j = %j', (file, path, value, expected) => {
    expect(messageOf(dataWith(folder, file, path, value)).split('\n')).toContain(`data/${file}: ${expected}`);
  });
});
