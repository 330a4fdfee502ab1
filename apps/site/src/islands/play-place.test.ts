import type { Piece } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { noteAt, sectionAt, seekFrom } from './play-place.ts';

/** Two sections of two bars, four notes each and then a rest, after a bar of count-in. */
const PIECE = {
  countInTicks: 1920,
  totalTicks: 9600,
  sections: [
    { startTicks: 1920, endTicks: 5760 },
    { startTicks: 5760, endTicks: 9600 },
  ],
  notes: [1920, 2400, 2880, 3360, 5760, 6240, 6720, 7200].map((startTicks) => ({
    startTicks,
    durationTicks: 480,
  })),
} as unknown as Piece;

describe('places', () => {
  test.each([
    [0, -1],
    [1919, -1],
    [1920, 0],
    [2399, 0],
    [5000, 3],
    [9599, 7],
  ])('at tick %i the last note to begin is %i', (ticks, note) => {
    expect(noteAt(PIECE, ticks)).toBe(note);
  });

  test.each([
    [0, 0],
    [5759, 0],
    [5760, 1],
  ])('tick %i lies in section %i', (ticks, section) => {
    expect(sectionAt(PIECE, ticks)).toBe(section);
  });

  test.each([
    ['note-on', 1920, 2400],
    ['note-on', 5000, 5760],
    ['note-on', 7200, 1920],
    ['note-back', 2400, 1920],
    ['note-back', 1920, 7200],
    ['mode-on', 2400, 5760],
    ['mode-on', 7000, 1920],
    ['mode-back', 2400, 1920],
    ['mode-back', 5760, 1920],
    ['mode-back', 1920, 5760],
    ['start', 7000, 1920],
  ] as const)('%s from tick %i leads to %i', (seek, from, to) => {
    expect(seekFrom(PIECE, from, seek)).toBe(to);
  });
});
