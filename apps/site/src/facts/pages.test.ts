import { CATALOGUE, findFamily, findMode } from '@stillroot/catalog';
import { EVERYDAY_ROOTS, parseRoot, pitchClassesOf, type Root } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { canonicalPath, isItsOwnCanonical, isListed } from './canonical.ts';
import { instrumentPage } from './instrument-page.ts';
import { modePage } from './mode-page.ts';
import { fretboardPicture, roundPicture } from './paths.ts';
import { roundPage } from './round-page.ts';
import { scalePage } from './scale-page.ts';

function rootOf(name: string): Root {
  const root = parseRoot(name);
  if (!root.ok) throw new Error(root.problem.expected);
  return root.value;
}

function entryOf(name: string) {
  const entry = findMode(name);
  if (!entry) throw new Error(`no mode ${name}`);
  return entry;
}

describe('scalePage', () => {
  test('says what a scale is, from its base and from its parent', () => {
    const page = scalePage(entryOf('Dorian #4'), rootOf('A'));
    expect(page.sentence).toBe(
      'Dorian with a raised 4th; six notes in common with A Dorian, all seven with E harmonic minor.',
    );
    expect(page.scale.notes).toEqual(['A', 'B', 'C', 'D#', 'E', 'F#', 'G']);
    expect(page.degreeOfParent).toBe(4);
  });

  test('lists six other modes of the family, six relatives and at most twelve scales that share six notes', () => {
    const page = scalePage(entryOf('Phrygian dominant'), rootOf('D'));
    expect([page.parallels.length, page.relatives.length]).toEqual([6, 6]);
    expect(page.sharingSix.scales.length).toBeLessThanOrEqual(12);
    const own = new Set(pitchClassesOf(page.scale));
    for (const other of page.sharingSix.scales)
      expect(pitchClassesOf(other).filter((one) => own.has(one))).toHaveLength(6);
  });

  test('a twin shows the same frets under its own note names', () => {
    const [sharp, flat] = ['G#', 'Ab'].map(
      (name) => scalePage(entryOf('Ionian'), rootOf(name)).answer.fingerings[0],
    );
    expect(sharp?.notes.map(({ string, fret }) => [string, fret])).toEqual(
      flat?.notes.map(({ string, fret }) => [string, fret]),
    );
    expect(sharp?.notes[0]?.note).toBe('G#');
    expect(flat?.notes[0]?.note).toBe('Ab');
  });
});

describe('canonicalPath', () => {
  test('G sharp major stands under A flat major', () => {
    expect(canonicalPath(entryOf('Ionian').mode, rootOf('G#'))).toBe('/modes/ionian/a-flat/');
    expect(isItsOwnCanonical('/modes/ionian/g-sharp/')).toBe(false);
    expect(isItsOwnCanonical('/modes/ionian/a-flat/')).toBe(true);
    expect(isItsOwnCanonical('/rounds/major/g-sharp/')).toBe(true);
    expect(['/rounds/major/a/', '/embed/round/', '/modes/ionian/g-sharp/'].filter(isListed)).toEqual([
      '/rounds/major/a/',
    ]);
  });

  test('every canonical page is a page, and stands for itself', () => {
    for (const { mode } of CATALOGUE.modes)
      for (const root of EVERYDAY_ROOTS) expect(isItsOwnCanonical(canonicalPath(mode, root))).toBe(true);
  });
});

describe('the other pages', () => {
  test('a mode says its name in words', () => {
    expect(modePage(entryOf('Locrian b4 bb7')).inWords).toBe(
      'Locrian with a lowered 4th and a doubly lowered 7th',
    );
  });

  test('a round shows seven necks, and what moves before each but the first', () => {
    const family = findFamily('harmonic minor');
    if (!family) throw new Error('harmonic minor is a family');
    const { html, title } = roundPage(family, rootOf('A'));
    expect(title).toBe('The round of harmonic minor from A');
    expect(html.match(/class="neck" width/g)).toHaveLength(7);
    expect(html.match(/class="moved"/g)).toHaveLength(6);
    expect(html).toContain('2 falls a semitone: <b>B → B♭</b>');
  });

  // L · (1 − 2^(−n/12)); at the octave, where a neck is that long, half the scale length.
  test.each(CATALOGUE.instruments.map((instrument) => [instrument.id, instrument] as const))(
    'the frets of %s lie where equal temperament has them',
    (_, instrument) => {
      const { frets, neck } = instrumentPage(instrument);
      for (const [slot, { semitones }] of neck.slots.entries()) {
        const distanceMm = instrument.scaleLengthMm * (1 - 2 ** (-semitones / 12));
        expect(frets[slot]?.distanceMm).toBeCloseTo(distanceMm, 6);
        if (semitones === 12) expect(frets[slot]?.distanceMm).toBeCloseTo(instrument.scaleLengthMm / 2, 6);
      }
    },
  );

  test('pictures are asked for as the API writes roots', () => {
    expect(roundPicture('harmonic-minor', rootOf('A'), 'bass-4')).toBe(
      '/v1/rounds/harmonic-minor/A.svg?instrument=bass-4',
    );
    expect(fretboardPicture('ionian', rootOf('F#'), 'guitar-6')).toBe(
      '/v1/modes/ionian/Fs/fretboard.svg?instrument=guitar-6',
    );
  });
});
