import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { dataWith, makeFolder, messageOf, removeFolder } from './broken-data.ts';

const folder = makeFolder();

afterAll(() => removeFolder(folder));

describe('a value that disagrees with another file', () => {
  test.each<[string, (string | number)[], unknown, string]>([
    [
      'families/major.json',
      ['modes', 0, 'names', 0, 'sources', 0],
      'nobody',
      'modes[0].names[0].sources[0]: expected the id of an entry of data/sources.json, got "nobody"',
    ],
    [
      'instruments/mandolin.json',
      ['handFrameSources', 1],
      'nobody',
      'handFrameSources[1]: expected the id of an entry of data/sources.json, got "nobody"',
    ],
    [
      'thaats.json',
      ['sources', 0],
      'nobody',
      'sources[0]: expected the id of an entry of data/sources.json, got "nobody"',
    ],
    [
      'conflicts.json',
      [0, 'uses', 0, 'sources', 0],
      'nobody',
      '[0].uses[0].sources[0]: expected the id of an entry of data/sources.json, got "nobody"',
    ],
    [
      'instruments/bass-5.json',
      ['id'],
      'bass-4',
      'id: expected the name of the file without .json, got "bass-4"',
    ],
    [
      'instruments/bass-5.json',
      ['aliases', 0],
      'Bass Guitar',
      'aliases[0]: expected a name that no other instrument has (see data/instruments/bass-4.json: aliases[1]), got "Bass Guitar"',
    ],
    [
      'instruments/guitar-6.json',
      ['tunings', 1, 'sources'],
      ['nobody'],
      'tunings[1].sources[0]: expected the id of an entry of data/sources.json, got "nobody"',
    ],
    [
      'not-served.json',
      [0, 'sources', 0],
      'nobody',
      '[0].sources[0]: expected the id of an entry of data/sources.json, got "nobody"',
    ],
    [
      'not-served.json',
      [1, 'aliases', 0],
      'Lute',
      '[1].aliases[0]: expected a name that no other instrument has (see data/instruments/lute-renaissance-6.json: aliases[0]), got "Lute"',
    ],
    [
      'instruments/guitar-8.json',
      ['order'],
      2,
      'order: expected a place that no other instrument has (see data/instruments/guitar-7.json: order), got "2"',
    ],
    [
      'instruments/bass-5.json',
      ['kind'],
      'guitar',
      'order: expected a place among guitars, before basses, got "11"',
    ],
    [
      'families/purvi.json',
      ['aliases', 0, 'name'],
      'Marva',
      'aliases[0].name: expected a name that no other family has (see data/families/marwa.json: aliases[0].name), got "Marva"',
    ],
    [
      'families/persian.json',
      ['modes', 1, 'names', 0, 'name'],
      'Persian',
      'modes[1].names[0].name: expected a name for one mode, or an entry in data/conflicts.json; data/families/persian.json: modes[0].names[0].name gives "Persian" to 1311231, this to 3112311',
    ],
    [
      'thaats.json',
      ['scales', 0, 'name'],
      'Dorian',
      'scales[0].name: expected a name for one mode, or an entry in data/conflicts.json; data/families/major.json: modes[1].names[0].name gives "Dorian" to 2122212, this to 2212221',
    ],
    [
      'families/persian.json',
      ['modes', 1, 'names', 0, 'name'],
      'Lydian b6',
      'modes[1].names[0].name: expected a name whose slug no other mode has, got "Lydian b6" (3112311), which is "Lydian b6" (2221131) too',
    ],
  ])('%s %j = %j', (file, path, value, expected) => {
    expect(messageOf(dataWith(folder, file, path, value)).split('\n')).toContain(`data/${file}: ${expected}`);
  });

  test('two files of one family', () => {
    const data = dataWith(folder, 'families/major.json', ['order'], 1);
    const major = JSON.parse(readFileSync(join(data, 'families/major.json'), 'utf8'));
    const twin = { ...major, slug: 'twin', name: 'twin', aliases: [], order: 99 };
    writeFileSync(join(data, 'families/twin.json'), JSON.stringify(twin));
    expect(messageOf(data)).toBe(
      'data/families/twin.json: head: expected a family that no other file describes (see data/families/major.json: head), got "1221222"',
    );
  });
});
