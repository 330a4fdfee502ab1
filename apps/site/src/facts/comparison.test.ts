import { findMode } from '@stillroot/catalog';
import { parseRoot, pitchClassesOf, type Scale, spell, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { COMPARE_PAIRS, pathToCompare } from './compare-pairs.ts';
import { compareScales } from './comparison.ts';

function scaleOf(rootName: string, modeName: string): Scale {
  const root = parseRoot(rootName);
  const entry = findMode(modeName);
  if (!root.ok || !entry) throw new Error(`no scale ${rootName} ${modeName}`);
  return spell(entry.mode, root.value);
}

describe('a comparison', () => {
  // Kostka and Payne, Tonal Harmony (recalled): Dorian is natural minor with 6 raised, Phrygian with 2
  // lowered, Lydian is major with 4 raised, Mixolydian with 7 lowered.
  test.each([
    ['Aeolian', 'Dorian', 6, 1],
    ['Aeolian', 'Phrygian', 2, -1],
    ['Ionian', 'Lydian', 4, 1],
    ['Ionian', 'Mixolydian', 7, -1],
  ])('from %s to %s degree %i moves by %i', (from, to, degree, by) => {
    const { against, degrees } = compareScales([scaleOf('A', from), scaleOf('A', to)]);
    expect(against[0]?.moved).toEqual([{ degree, by }]);
    expect(against[0]?.inCommon).toBe(6);
    expect(degrees.filter(({ isShared }) => !isShared).map((row) => row.degree)).toEqual([degree]);
  });

  test('names the notes in common and those that are not, as each scale spells them', () => {
    const { inAll, notInAll } = compareScales([scaleOf('A', 'Dorian'), scaleOf('A', 'Phrygian')]);
    expect(inAll.join(' ')).toBe('A C D E G');
    expect(notInAll.map((notes) => notes.join(' '))).toEqual(['B F#', 'Bb F']);
  });

  test('counts notes by their sound: a diminished fourth is in common with a major third', () => {
    const { against, degrees } = compareScales([scaleOf('A', 'Ionian'), scaleOf('A', 'altered')]);
    expect(degrees[3]?.cells.map(({ note, by }) => [note, by])).toEqual([
      ['D', 0],
      ['Db', -1],
    ]);
    // A B C# D E F# G# and A Bb C Db Eb F G sound A and C# alike.
    expect(against[0]?.inCommon).toBe(2);
  });

  test('of four scales keeps what all of them hold', () => {
    const scales = ['Ionian', 'Lydian', 'Mixolydian', 'Ionian b6'].map((name) => scaleOf('C', name));
    const [a, b, ...others] = scales as [Scale, Scale, ...Scale[]];
    expect(compareScales([a, b, ...others]).inAll.join(' ')).toBe('C D E G');
  });

  test('adds up: common notes and others are seven, for every mode against Dorian', () => {
    const dorian = scaleOf('D', 'Dorian');
    for (const mode of UNIVERSE.modes) {
      const scale = spell(mode, dorian.root);
      const { inAll, notInAll, against } = compareScales([dorian, scale]);
      expect(inAll.length).toBe(against[0]?.inCommon);
      for (const notes of notInAll) expect(notes.length + inAll.length).toBe(7);
      const shared = pitchClassesOf(scale).filter((one) => pitchClassesOf(dorian).includes(one));
      expect(inAll).toHaveLength(shared.length);
    }
  });
});

describe('comparisons with a page of their own', () => {
  test('are each pair of church modes once, and named modes with their base', () => {
    const slugs = COMPARE_PAIRS.map(({ slug }) => slug);
    expect(new Set(slugs).size).toBe(slugs.length);
    expect(slugs.slice(0, 21)).toContain('dorian-and-phrygian');
    expect(slugs).toContain('phrygian-and-phrygian-dominant');
  });

  test('are found whichever mode comes first; others lead to the page that compares any', () => {
    const [dorian, phrygian, far] = ['Dorian', 'Phrygian', 'Lydian b2 b3'].map(findMode);
    if (!dorian || !phrygian || !far) throw new Error('three modes');
    expect(pathToCompare(phrygian, dorian)).toBe('/compare/dorian-and-phrygian/');
    expect(pathToCompare(dorian, far)).toBe('/compare/?a=dorian&b=lydian-b2-b3');
  });
});
