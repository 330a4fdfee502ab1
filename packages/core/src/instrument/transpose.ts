/**
 * Tunings moved as a whole: down a semitone, up a fourth.
 */
import { NATURAL_SEMITONES } from '../pitch/letter.ts';
import { formatNote } from '../pitch/note.ts';
import { formatMidi, HIGHEST_MIDI, type Pitch, parsePitch, pitchOf } from '../pitch/pitch.ts';
import { fail, type Result, succeed } from '../problem.ts';
import type { Course, Tuning } from './instrument.ts';
import { tuningOf } from './tuning.ts';

/**
 * A tuning with every string moved by as many semitones. All strings move by the same interval, so that fourths
 * stay fourths on paper too: of the intervals with that many semitones the one with the fewest accidentals,
 * then with flats. Where that gives a name such as Cb or Gbb, each string takes its plainest name.
 * @param semitones whole; below zero for down
 * @returns a problem where a string would leave MIDI notes 0 to 127
 * @example transposeTuning(eadgbe, -2) // D2 G2 C3 F3 A3 D4
 * @example transposeTuning(eadgbe, -3) // C#2 F#2 B2 E3 G#3 C#4
 */
export function transposeTuning(tuning: Tuning, semitones: number, field = 'transpose'): Result<Tuning> {
  const pitches = tuning.courses.flat();
  const midis = pitches.map(({ midi }) => midi);
  const [down, up] = [Math.min(...midis), HIGHEST_MIDI - Math.max(...midis)];
  if (!Number.isInteger(semitones) || semitones < -down || semitones > up) {
    return fail(field, String(semitones), {
      kind: 'semitones',
      from: -down,
      to: up,
      tuning: tuning.name,
      highestMidi: HIGHEST_MIDI,
    });
  }
  const moves = intervalsOf(semitones).map((letters) => (pitch: Pitch) => moveBy(pitch, letters, semitones));
  const [plainest] = moves
    .filter((move) => pitches.every((pitch) => move(pitch) !== undefined))
    .toSorted((a, b) => accidentalsIn(pitches.map(a)) - accidentalsIn(pitches.map(b)));
  const move = (pitch: Pitch): Pitch => plainest?.(pitch) ?? plainAt(pitch.midi + semitones, pitches);
  return succeed(tuningOf(tuning.courses.map((course) => course.map(move) as unknown as Course)));
}

/** How many letters an interval of so many semitones may go up or down, flats before sharps; octaves keep them. */
function intervalsOf(semitones: number): readonly number[] {
  const letters = Math.round((semitones * 7) / 12);
  return semitones % 12 === 0 ? [letters] : [letters + 1, letters, letters - 1];
}

/** A pitch an interval away; undefined where its name would be less plain than it was: Cb for B, or Gbb. */
function moveBy(pitch: Pitch, letters: number, semitones: number): Pitch | undefined {
  const steps = 7 * pitch.octave + pitch.letterIndex + letters;
  const octave = Math.floor(steps / 7);
  const letterIndex = steps - 7 * octave;
  const alteration = pitch.midi + semitones - 12 * (octave + 1) - (NATURAL_SEMITONES[letterIndex] as number);
  const isPlain =
    formatMidi(pitch.midi + semitones, alteration > 0) === formatNote(letterIndex, alteration) + octave;
  if (!isPlain && semitones % 12 !== 0) return undefined;
  return pitchOf({ letterIndex, alteration }, octave);
}

function accidentalsIn(pitches: readonly (Pitch | undefined)[]): number {
  return pitches.reduce((sum, pitch) => sum + Math.abs(pitch?.alteration ?? 0), 0);
}

/** The plainest name of a note number, with sharps where the tuning has more sharps than flats. */
function plainAt(midi: number, pitches: readonly Pitch[]): Pitch {
  const leaning = pitches.reduce((sum, { alteration }) => sum + alteration, 0);
  const pitch = parsePitch(formatMidi(midi, leaning > 0));
  if (!pitch.ok) throw new Error(`invariant: note number ${midi} has a name`);
  return pitch.value;
}
