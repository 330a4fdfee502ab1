import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import type { Style } from './fingering.ts';
import { fingeringsOf } from './fingerings.ts';
import { reasonInWords } from './reason.ts';

const { guitar, bass, banjo, dulcimer } = INSTRUMENTS;

describe('where a fingering cannot be had, the reason and the nearest that can are said', () => {
  const refusals: readonly (readonly [
    string,
    ReturnType<typeof neckOf>,
    string,
    string,
    Style,
    number | undefined,
    string,
    Style | undefined,
  ])[] = [
    [
      'a bass at the first fret, three to a string',
      neckOf(bass),
      'F',
      STEPS.ionian,
      'three-per-string',
      1,
      'string 4 asks the hand to cover frets 1, 3, 5 at once, 168.2 mm; the reach is 120 mm',
      'position',
    ],
    [
      'three to a string at the end of the neck',
      neckOf(guitar),
      'A',
      STEPS.aeolian,
      'three-per-string',
      19,
      'three to a string runs off the neck from there',
      'position',
    ],
    [
      'three to a string on a re-entrant tuning',
      neckOf(banjo),
      'G',
      STEPS.ionian,
      'three-per-string',
      undefined,
      'three to a string needs open strings that rise from one to the next, and these do not (the tuning is re-entrant or has two strings alike)',
      'position',
    ],
    [
      'three to a string on one string',
      neckOf(guitar, {}, 'E2'),
      'E',
      STEPS.ionian,
      'three-per-string',
      undefined,
      'three to a string needs at least two strings',
      'one-string',
    ],
    [
      'a fret beyond the neck',
      neckOf(guitar),
      'A',
      STEPS.aeolian,
      'position',
      30,
      'this neck ends at fret 22, below fret 30',
      'position',
    ],
    [
      'three to a string beyond the neck',
      neckOf(guitar),
      'A',
      STEPS.aeolian,
      'three-per-string',
      23,
      'this neck ends at fret 22, below fret 23',
      'three-per-string',
    ],
    [
      'the last fret of the neck',
      neckOf(guitar),
      'A',
      STEPS.aeolian,
      'position',
      22,
      'there is no octave from root to root in an area that begins at fret 22',
      'position',
    ],
    [
      'one string of a short neck',
      neckOf(guitar, { frets: 9 }),
      'A',
      STEPS.aeolian,
      'one-string',
      undefined,
      'no string has a whole octave of it from root to root',
      'position',
    ],
    [
      'notes that a diatonic fretting lacks',
      neckOf(dulcimer),
      'F',
      STEPS.ionian,
      'position',
      undefined,
      'in this tuning the frets of this instrument do not have F, Bb',
      undefined,
    ],
  ];

  test.each(refusals)('%s', (_what, neck, root, steps, style, fret, reason, otherStyle) => {
    const answer = fingeringsOf(neck, scaleOf(root, steps), { style, ...(fret !== undefined && { fret }) });
    expect(answer.fingerings).toEqual([]);
    expect(answer.reason && reasonInWords(answer.reason)).toBe(reason);
    expect(answer.alternative?.style).toBe(otherStyle);
    expect(answer.cautions.length).toBeGreaterThanOrEqual(1);
  });

  test('the nearest is the one that begins closest to the fret that was asked', () => {
    const { alternative } = fingeringsOf(neckOf(guitar), scaleOf('A', STEPS.aeolian), { fret: 30 });
    expect(alternative?.fingering.area).toEqual({ from: 19, to: 22 });
  });

  test('the style that was asked comes before another, where the fret allows neither', () => {
    const { alternative } = fingeringsOf(neckOf(guitar), scaleOf('A', STEPS.aeolian), {
      style: 'three-per-string',
      fret: 22,
    });
    expect(alternative?.style).toBe('three-per-string');
    expect(alternative?.fingering.notes[0]).toMatchObject({ string: 6, fret: 17 });
  });

  test('a playable bass from fret 12 has no reason', () => {
    const answer = fingeringsOf(neckOf(bass), scaleOf('F', STEPS.ionian), {
      style: 'three-per-string',
      fret: 12,
    });
    expect(answer.reason).toBeUndefined();
    expect(answer.fingerings[0]?.area.from).toBe(12);
  });
});
