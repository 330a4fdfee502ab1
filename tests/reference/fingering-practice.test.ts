import { findInstrument } from '@stillroot/catalog';
import {
  buildNeck,
  EVERYDAY_ROOTS,
  fingeringsOf,
  fretDistanceMm,
  handPositions,
  type Neck,
  reasonInWords,
  spell,
} from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { modeOf, rootOf, unwrap } from './in-core.ts';

const MAJOR = '1 2 3 4 5 6 7';

function neckOf(id: string): Neck {
  const instrument = findInstrument(id);
  if (instrument === undefined) throw new Error(`no instrument ${id}`);
  return unwrap(buildNeck(instrument, instrument.tunings[0]));
}

/** The best fingering of a major scale from a fret, as `string:fret/finger`. */
function rowOf(id: string, root: string, fret: number): string {
  const scale = spell(modeOf(MAJOR), rootOf(root));
  const [best] = fingeringsOf(neckOf(id), scale, { fret, limit: 1 }).fingerings;
  return best?.notes.map((note) => `${note.string}:${note.fret}/${note.finger}`).join(' ') ?? '';
}

// Classical guitar: open (first) position as the methods of Sor (1830) and Carcassi (op. 59, 1836) begin;
// a position is named by the fret of finger 1 and gives each finger a fret (Noad, Solo Guitar Playing, 1968;
// Leavitt, A Modern Method for Guitar, vol. 1, 1966). Recalled.
describe('the major scale on the guitar', () => {
  test.each([
    ['C', 0, '5:3/3 4:0/0 4:2/2 4:3/3 3:0/0 3:2/2 2:0/0 2:1/1'],
    ['F', 0, '6:1/1 6:3/3 5:0/0 5:1/1 5:3/3 4:0/0 4:2/2 4:3/3 3:0/0 3:2/2 3:3/3 2:1/1 2:3/3 1:0/0 1:1/1'],
    ['C', 2, '5:3/2 5:5/4 4:2/1 4:3/2 4:5/4 3:2/1 3:4/3 3:5/4'],
    ['D', 4, '5:5/2 5:7/4 4:4/1 4:5/2 4:7/4 3:4/1 3:6/3 3:7/4'],
    ['G', 2, '6:3/2 6:5/4 5:2/1 5:3/2 5:5/4 4:2/1 4:4/3 4:5/4 3:2/1 3:4/3 3:5/4 2:3/2 2:5/4 1:2/1 1:3/2'],
    ['A', 4, '6:5/2 6:7/4 5:4/1 5:5/2 5:7/4 4:4/1 4:6/3 4:7/4 3:4/1 3:6/3 3:7/4 2:5/2 2:7/4 1:4/1 1:5/2'],
  ])('of %s from fret %i is fingered as the methods do', (root, fret, row) => {
    expect(rowOf('guitar-6', root, fret)).toBe(row);
  });

  test('in every key and position gives each finger its fret; only fingers 1 and 4 stretch, by one fret', () => {
    let looked = 0;
    for (const root of EVERYDAY_ROOTS) {
      for (let fret = 1; fret <= 12; fret += 1) {
        const { fingerings } = fingeringsOf(neckOf('guitar-6'), spell(modeOf(MAJOR), root), { fret });
        for (const { notes, positions, cost } of fingerings) {
          const [position = 0] = positions;
          if (cost.travelMm > 0 || notes.some((note) => note.finger === 0)) continue;
          for (const note of notes) {
            const owns = note.fret - position + 1;
            expect(note.finger).toBe(Math.min(4, Math.max(1, owns)));
            expect(Math.abs(owns - note.finger)).toBeLessThanOrEqual(1);
            looked += 1;
          }
        }
      }
    }
    expect(looked).toBeGreaterThan(1000);
  });
});

// Simandl, New Method for the Double Bass, as the American School of Double Bass teaches it: fingers 1, 2
// and 4 span a whole tone, 2 takes the semitone, 3 stops no note of its own in the low positions.
describe('the low hand of the bass', () => {
  test.each([
    ['F', '4:1/1 4:3/4 3:0/0 3:1/1 3:3/4 2:0/0 2:2/2 2:3/4'],
    ['Bb', '3:1/1 3:3/4 2:0/0 2:1/1 2:3/4 1:0/0 1:2/2 1:3/4'],
  ])('plays %s major in half position with 1, 2 and 4', (root, row) => {
    expect(rowOf('bass-4', root, 0)).toBe(row);
  });

  test.each([['bass-4'], ['bass-5'], ['bass-6']])(
    'on a %s never uses finger 3 at rest below fret 5',
    (id) => {
      const neck = neckOf(id);
      for (const { fingers, indexSlot, from, to, stretchTenthsMm } of handPositions(neck, 120, 1, 4)) {
        if (stretchTenthsMm.some((stretch) => stretch > 0)) continue;
        expect([id, indexSlot, fingers, to - from]).toEqual([id, indexSlot, [1, 2, 4], 2]);
      }
    },
  );

  // Published electric-bass lessons: one finger a fret from about fret 5 to 7 upwards.
  test('gives way to one finger a fret where four frets are a comfortable span', () => {
    const changeOver = handPositions(neckOf('bass-4'), 120, 1, 12).find(
      ({ fingers, stretchTenthsMm }) => fingers.length === 4 && Math.max(...stretchTenthsMm) === 0,
    );
    expect(changeOver?.indexSlot).toBeGreaterThanOrEqual(5);
    expect(changeOver?.indexSlot).toBeLessThanOrEqual(7);
  });
});

// L · (1 − 2^(−n/12)): at fret 1 of a 34-inch bass two whole tones are 168.2 mm, at fret 12 they are 89.1.
describe('three to a string on a 34-inch bass', () => {
  const scale = spell(modeOf(MAJOR), rootOf('F'));
  const at = (fret: number) => fingeringsOf(neckOf('bass-4'), scale, { style: 'three-per-string', fret });
  const span = (low: number, high: number) => fretDistanceMm(863.6, high) - fretDistanceMm(863.6, low);

  test('at fret 1 is beyond reach on every string, and the alternative is not', () => {
    const { fingerings, beyondReach = [], alternative, reason } = at(1);
    expect(fingerings).toEqual([]);
    expect(reason && reasonInWords(reason)).toBe(
      'string 4 asks the hand to cover frets 1, 3, 5 at once, 168.2 mm; the reach is 120 mm',
    );
    expect(beyondReach).toHaveLength(4);
    for (const { frets, spanMm } of beyondReach) {
      expect(spanMm).toBeCloseTo(span(Math.min(...frets), Math.max(...frets)), 1);
      expect(spanMm).toBeGreaterThan(120);
    }
    expect(alternative?.fingering.reachMm).toBeLessThanOrEqual(120);
    expect(alternative?.fingering.notes.length).toBeGreaterThanOrEqual(8);
  });

  test('at fret 12 is played, nothing wider than the arithmetic of its frets', () => {
    const { fingerings, beyondReach, reason } = at(12);
    expect([reason, beyondReach]).toEqual([undefined, undefined]);
    expect(fingerings[0]?.area).toEqual({ from: 12, to: 15 });
    expect(fingerings[0]?.reachMm).toBeCloseTo(span(12, 15), 1);
  });
});
