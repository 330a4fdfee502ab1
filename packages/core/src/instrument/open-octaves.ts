/**
 * The octaves of a tuning that is given in letters alone: a guess, by rule.
 * 1. Where the instrument has a tuning of these letters, its octaves (the most usual tuning first).
 * 2. Where it has as many strings, each string takes the octave nearest to the standard one's, ties down.
 * 3. Otherwise each string is at or above the one before by less than an octave. The lowest string's octave is
 *    the one in which most strings are open strings of the instrument's standard tuning; then in which the
 *    highest is nearest to the instrument's highest; then the lower. Without an instrument the six-string
 *    guitar's standard tuning stands for it.
 */
import { pitchClassOf } from '../pitch/letter.ts';
import { type NoteName, pitchClassOfNote } from '../pitch/note.ts';
import { OCTAVES, type Pitch, pitchOf } from '../pitch/pitch.ts';
import type { Course, Instrument, Tuning } from './instrument.ts';

/** A string, or the strings of a course, without octaves. */
export type LetterCourse = readonly [NoteName, ...NoteName[]];

/** E2 A2 D3 G3 B3 E4, the commonest fretted instrument (common practice, no one source). */
const GUITAR_MIDI: readonly number[] = [40, 45, 50, 55, 59, 64];

/** Open strings in octaves; undefined where they do not fit into MIDI's 128 notes. */
export function octavesFor(
  letters: readonly LetterCourse[],
  instrument?: Pick<Instrument, 'tunings'>,
): readonly Course[] | undefined {
  const pattern = instrument && patternFor(letters, instrument.tunings);
  if (pattern) return letters.map((course, at) => courseLike(course, pattern.courses[at] as Course));
  const standard = instrument?.tunings[0].courses.map(([principal]) => principal.midi) ?? GUITAR_MIDI;
  const principals = climbBeside(
    standard,
    letters.map(([principal]) => principal),
  );
  return principals?.map((principal, at) => courseOn(principal, letters[at] as LetterCourse, []));
}

/** The tuning whose octaves are taken over string by string. */
function patternFor(letters: readonly LetterCourse[], tunings: Instrument['tunings']): Tuning | undefined {
  const isOf = ({ courses }: Tuning): boolean =>
    courses.length === letters.length &&
    courses.every(
      ([{ midi }], at) => pitchClassOf(midi) === pitchClassOfNote((letters[at] as LetterCourse)[0]),
    );
  const [standard] = tunings;
  return tunings.find(isOf) ?? (standard.courses.length === letters.length ? standard : undefined);
}

/** A string typed singly for a course has the strings that the course has, at the same distances. */
function courseLike(letters: LetterCourse, pattern: Course): Course {
  const [first, ...rest] = letters;
  const [principal, ...others] = pattern;
  const low = nearest(first, principal.midi);
  if (rest.length > 0) return courseOn(low, letters, others);
  const byOctaves = others.map(({ midi }) => pitchOf(first, low.octave + (midi - principal.midi) / 12));
  return [low, ...byOctaves.filter((pitch) => pitch !== undefined)];
}

/** The other strings of a course lie nearest to their like in the pattern, or to the principal string. */
function courseOn(principal: Pitch, [, ...rest]: LetterCourse, pattern: readonly Pitch[]): Course {
  return [principal, ...rest.map((note, at) => nearest(note, (pattern[at] ?? principal).midi))];
}

function nearest(note: NoteName, midi: number): Pitch {
  const [first, ...others] = OCTAVES.flatMap((octave) => pitchOf(note, octave) ?? []);
  const from = (pitch: Pitch): number => Math.abs(pitch.midi - midi);
  return others.reduce((best, one) => (from(one) < from(best) ? one : best), first as Pitch);
}

function climbBeside(standard: readonly number[], notes: readonly NoteName[]): readonly Pitch[] | undefined {
  const top = standard.at(-1) as number;
  const shared = (climb: readonly Pitch[]): number =>
    climb.filter(({ midi }) => standard.includes(midi)).length;
  const fromTop = (climb: readonly Pitch[]): number => Math.abs((climb.at(-1) as Pitch).midi - top);
  const climbs = OCTAVES.flatMap((octave) => {
    const climb = climbFrom(octave, notes);
    return climb ? [climb] : [];
  });
  return climbs.toSorted((a, b) => shared(b) - shared(a) || fromTop(a) - fromTop(b))[0];
}

function climbFrom(octave: number, [first, ...others]: readonly NoteName[]): readonly Pitch[] | undefined {
  let last = first && pitchOf(first, octave);
  if (!last) return undefined;
  const climb = [last];
  for (const note of others) {
    const from: number = last.midi;
    const next: Pitch | undefined = OCTAVES.flatMap((one) => pitchOf(note, one) ?? []).find(
      ({ midi }) => midi >= from,
    );
    if (!next) return undefined;
    climb.push(next);
    last = next;
  }
  return climb;
}
