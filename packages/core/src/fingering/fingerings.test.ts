import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import { slotAtOrAbove } from './area.ts';
import type { Fingering } from './fingering.ts';
import { fingeringsOf, missingNotes } from './fingerings.ts';

const { guitar, bass, mandolin, dulcimer } = INSTRUMENTS;

/** A fingering as `string:fret/finger` rows. */
const row = (fingering: Fingering | undefined) =>
  fingering?.notes.map(({ string, fret, finger }) => `${string}:${fret}/${finger}`).join(' ');

describe('fingerings in position', () => {
  test('of A minor in the open position are those of every primer (common practice, no source)', () => {
    const { fingerings } = fingeringsOf(neckOf(guitar), scaleOf('A', STEPS.aeolian), { fret: 0 });
    expect(row(fingerings[0])).toBe('5:0/0 5:2/2 5:3/3 4:0/0 4:2/2 4:3/3 3:0/0 3:2/2');
  });

  // Position = the fret of finger 1 (classical-guitar method): two octaves of A major in position IV.
  test('of A major on a guitar lie in position IV, one finger a fret, over two octaves', () => {
    const { fingerings, cautions } = fingeringsOf(neckOf(guitar), scaleOf('A', STEPS.ionian));
    expect(row(fingerings[0])).toBe(
      '6:5/2 6:7/4 5:4/1 5:5/2 5:7/4 4:4/1 4:6/3 4:7/4 3:4/1 3:6/3 3:7/4 2:5/2 2:7/4 1:4/1 1:5/2',
    );
    expect(fingerings[0]?.area).toEqual({ from: 4, to: 7 });
    expect(cautions).toHaveLength(1);
  });

  // Mandolin lessons: two frets a finger, after the violin; A major on G and D with 1-2-3 and the next finger.
  test('of A major on a mandolin use two frets a finger', () => {
    const { fingerings } = fingeringsOf(neckOf(mandolin), scaleOf('A', STEPS.ionian), { limit: 1 });
    expect(row(fingerings[0])?.startsWith('4:2/1 4:4/2 4:6/3')).toBe(true);
  });

  test('of F major on a 34-inch bass stay within a whole tone at the nut and never take finger 3', () => {
    const { fingerings } = fingeringsOf(neckOf(bass), scaleOf('F', STEPS.ionian), { fret: 0 });
    expect(row(fingerings[0])).toBe('4:1/1 4:3/4 3:0/0 3:1/1 3:3/4 2:0/0 2:2/2 2:3/4');
    expect(fingerings[0]?.reachMm).toBe(88.9);
  });

  test('above a capo begin at it', () => {
    const neck = neckOf(guitar, { capoFret: 2 });
    const [first] = fingeringsOf(neck, scaleOf('A', STEPS.ionian), { fret: 0 }).fingerings;
    expect(row(first)).toBe('3:0/0 3:4/2 2:0/0 2:3/1 2:5/3 1:0/0 1:4/2 1:5/3');
  });

  test('are no more than asked for, best first', () => {
    const scale = scaleOf('A', STEPS.ionian);
    const all = fingeringsOf(neckOf(guitar), scale).fingerings;
    expect(all.length).toBeLessThanOrEqual(5);
    expect(fingeringsOf(neckOf(guitar), scale, { limit: 1 }).fingerings).toEqual(all.slice(0, 1));
  });

  test('begin in an area at the fret that was asked', () => {
    for (const fret of [1, 4, 7, 9]) {
      for (const { area } of fingeringsOf(neckOf(guitar), scaleOf('A', STEPS.ionian), { fret }).fingerings) {
        expect(area.from).toBeGreaterThanOrEqual(fret);
      }
    }
  });

  test('that open the hand wide come with a caution', () => {
    const scale = scaleOf('A', STEPS.ionian);
    const { cautions, fingerings } = fingeringsOf(neckOf(guitar), scale, {
      style: 'three-per-string',
      fret: 5,
    });
    // 648 · (2^(−5/12) − 2^(−9/12))
    expect(fingerings[0]?.reachMm).toBe(100.1);
    expect(cautions).toHaveLength(2);
  });
});

describe('what a neck has', () => {
  test('is told by the notes it lacks', () => {
    expect(missingNotes(neckOf(dulcimer), scaleOf('D', STEPS.dorian))).toEqual({
      kind: 'notes-missing',
      notes: ['F'],
    });
    expect(missingNotes(neckOf(dulcimer), scaleOf('D', STEPS.ionian))).toBeUndefined();
  });

  test.each([
    [neckOf(guitar), 0, 0],
    [neckOf(guitar), 7, 7],
    [neckOf(guitar), 23, 23],
    [neckOf(guitar, { capoFret: 3 }), 0, 3],
    [neckOf(dulcimer), 6.5, 7],
    [neckOf(dulcimer), 6.2, 7],
    [neckOf(dulcimer), 7, 8],
  ])('has for the fret asked its own slot, or the next: %#', (neck, fret, slot) => {
    expect(slotAtOrAbove(neck, fret)).toBe(slot);
  });
});
