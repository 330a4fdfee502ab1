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

/**
 * Reads a pitch in scientific notation, octaves −1 to 9, sounding between MIDI 0 and 127.
 * @example parsePitch('B0') // midi 23
 */
export function parsePitch(text: string, field = 'pitch'): Result<Pitch> {
  const match = /^([^0-9\s-]+)(-1|\d)$/.exec(text.trim());
  const note = match ? parseNote(match[1] as string, field) : undefined;
  if (match && note?.ok) {
    const octave = Number(match[2]);
    const midi =
      12 * (octave + 1) + (NATURAL_SEMITONES[note.value.letterIndex] as number) + note.value.alteration;
    if (midi >= 0 && midi <= 127) {
      return succeed({
        ...note.value,
        octave,
        midi,
        name: formatNote(note.value.letterIndex, note.value.alteration) + octave,
      });
    }
  }
  return fail(field, text, 'a note and its octave (middle C is C4), such as E2, F#1 or Bb3');
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
