/**
 * Pitches: a note in an octave. Scientific octaves (middle C is C4), MIDI note numbers (C4 = 60, MIDI 1.0
 * Detailed Specification), frequencies from A4 = 440 Hz (ISO 16:1975) unless told otherwise.
 */
import { fail, type Result, succeed } from '../problem.ts';
import { NATURAL_SEMITONES, pitchClassOf } from './letter.ts';
import { formatNote, type NoteName, parseNote } from './note.ts';

/** A note in a scientific octave. */
export interface Pitch extends NoteName {
  readonly octave: number;
  /** MIDI note number of the sound. */
  readonly midi: number;
  /** ASCII name with octave: `Bb0`. */
  readonly name: string;
}

/** The highest note that MIDI 1.0 has a number for; the lowest is 0. */
export const HIGHEST_MIDI = 127;

/** The octaves in which notes with a MIDI number are named. */
export const OCTAVES: readonly number[] = [-1, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9];

/**
 * Reads a pitch in scientific notation, octaves −1 to 9, sounding between MIDI 0 and 127.
 * @example parsePitch('B0') // midi 23
 */
export function parsePitch(text: string, field = 'pitch'): Result<Pitch> {
  const match = /^([^0-9\s-]+)(-1|\d)$/.exec(text.trim());
  const note = match ? parseNote(match[1] as string, field) : undefined;
  const pitch = match && note?.ok ? pitchOf(note.value, Number(match[2])) : undefined;
  if (pitch) return succeed(pitch);
  return fail(field, text, { kind: 'pitch' });
}

/** A note in a scientific octave; undefined where MIDI has no number for it, or the octave no name here. */
export function pitchOf(note: NoteName, octave: number): Pitch | undefined {
  const { letterIndex, alteration } = note;
  const midi = 12 * (octave + 1) + (NATURAL_SEMITONES[letterIndex] as number) + alteration;
  if (!OCTAVES.includes(octave) || midi < 0 || midi > HIGHEST_MIDI) return undefined;
  return { letterIndex, alteration, octave, midi, name: formatNote(letterIndex, alteration) + octave };
}

/**
 * The name of a MIDI note number, naturals first, else the flat or the sharp as asked.
 * @example formatMidi(61)       // 'Db4'
 * @example formatMidi(61, true) // 'C#4'
 */
export function formatMidi(midi: number, sharps = false): string {
  const pitchClass = pitchClassOf(midi);
  const natural = NATURAL_SEMITONES.indexOf(pitchClass);
  const octave = Math.floor(midi / 12) - 1;
  if (natural >= 0) return formatNote(natural, 0) + octave;
  const below = NATURAL_SEMITONES.indexOf(pitchClass - 1);
  return (sharps ? formatNote(below, 1) : formatNote(below + 1, -1)) + octave;
}

/**
 * Frequency in hertz of a MIDI note number in twelve-tone equal temperament.
 * @param a4Hz the frequency of A4 (ISO 16:1975: 440)
 * @example frequencyHz(69) // 440
 */
export function frequencyHz(midi: number, a4Hz = 440): number {
  return a4Hz * 2 ** ((midi - 69) / 12);
}
