/**
 * What a fingering must hold true, reckoned from the instrument alone.
 */
import { type Fingering, fretDistanceMm, type Instrument, type Scale, type Style } from '@stillroot/core';
import { expect } from 'vitest';
import type { Question } from './anyone.ts';

const FEWEST_NOTES: Readonly<Record<Style, number>> = {
  position: 8,
  'three-per-string': 6,
  'one-string': 8,
  'two-octaves': 15,
  'whole-range': 8,
  'across-the-neck': 1,
};

const BEGINS_ON_ROOT: ReadonlySet<Style> = new Set(['position', 'one-string', 'two-octaves']);

/** Checks every promise of a fingering: its notes, its places, its area, its fingers and its reach. */
export function expectSound(question: Question, scale: Scale, style: Style, fingering: Fingering): void {
  const { notes, area, reachMm } = fingering;
  const first = notes[0]?.degree ?? 0;
  const rootMidi = (notes[0]?.midi ?? 0) - (scale.mode.semitones[first - 1] ?? Number.NaN);
  expect(notes.length).toBeGreaterThanOrEqual(FEWEST_NOTES[style]);
  if (BEGINS_ON_ROOT.has(style)) expect(first).toBe(1);
  expect(((rootMidi % 12) + 12) % 12).toBe(scale.root.pitchClass);
  for (const [at, { string, fret, finger, note, degree, midi }] of notes.entries()) {
    const step = first - 1 + at;
    expect(degree).toBe((step % 7) + 1);
    expect(note).toBe(scale.notes[degree - 1]);
    expect(midi).toBe(
      rootMidi + 12 * Math.floor(step / 7) + (scale.mode.semitones[degree - 1] ?? Number.NaN),
    );
    expect(midi).toBe(midiAt(question, string, fret));
    expect(fret === 0 ? [0] : [1, 2, 3, 4]).toContain(finger);
    if (question.openStrings === 'never') expect(fret).toBeGreaterThan(0);
    if (question.openStrings === 'anywhere' && fret === 0) continue;
    expect(fret).toBeGreaterThanOrEqual(area.from);
    expect(fret).toBeLessThanOrEqual(area.to);
  }
  expect(reachMm).toBeLessThanOrEqual(question.reachMm);
  if (style === 'three-per-string') expectThrees(question, fingering);
  if (style === 'one-string') expect(new Set(notes.map(({ string }) => string)).size).toBe(1);
  const { travelMm, shifts, stretchMm, stringChanges } = fingering.cost;
  expect([travelMm, shifts, stretchMm, stringChanges].every((one) => one >= 0 && Number.isFinite(one))).toBe(
    true,
  );
  if (travelMm === 0) expect(reachMm).toBeCloseTo(spanMm(question, fingering), 1);
}

/** The note number of a fret on a string, from the tuning, the short strings and the capo; NaN where there is no such fret. */
export function midiAt({ instrument, options }: Question, string: number, fret: number): number {
  const [tuning] = instrument.tunings;
  const principal = tuning.courses.at(-string)?.[0].midi ?? Number.NaN;
  const shortStart = instrument.shortStrings.find((one) => one.string === string)?.startsAtFret ?? 0;
  const isCapoed = options.capoStrings?.includes(string) ?? true;
  const start = Math.max(shortStart, isCapoed ? (options.capoFret ?? 0) : 0);
  if (fret !== 0 && fret <= start) return Number.NaN;
  const nut = principal - semitonesOf(instrument, shortStart);
  return nut + semitonesOf(instrument, fret === 0 ? start : fret);
}

function semitonesOf({ partialFrets, frets }: Instrument, fret: number): number {
  if (fret === 0) return 0;
  if (fret > frets) return Number.NaN;
  if (partialFrets) return partialFrets.find((one) => one.fret === fret)?.semitones ?? Number.NaN;
  return Number.isInteger(fret) ? fret : Number.NaN;
}

function expectThrees(question: Question, fingering: Fingering): void {
  const strings = question.neck.strings.length;
  expect(fingering.notes.map(({ string }) => string)).toEqual(
    Array.from({ length: 3 * strings }, (_, at) => strings - Math.floor(at / 3)),
  );
  for (let string = 1; string <= strings; string += 1) {
    const notes = fingering.notes.filter((note) => note.string === string);
    expect(spanMm(question, { ...fingering, notes })).toBeLessThanOrEqual(question.reachMm);
  }
}

function spanMm({ instrument }: Question, { notes }: Fingering): number {
  const places = notes
    .filter(({ fret }) => fret > 0)
    .map(({ fret }) => fretDistanceMm(instrument.scaleLengthMm, semitonesOf(instrument, fret)));
  return places.length === 0 ? 0 : Math.max(...places) - Math.min(...places);
}
