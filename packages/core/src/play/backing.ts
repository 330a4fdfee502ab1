/**
 * What sounds under the notes: the root as a drone, and a vamp of the mode's own triads. Both are struck
 * anew with every bar, since plucked sounds die away, and last through the rests between modes.
 */
import { type DegreeChord, triadsOf } from '../harmony/chords.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { pitchClassOf } from '../pitch/letter.ts';
import type { Piece, Section, TimedNote } from './piece.ts';
import type { Timing } from './timing.ts';
import { degreesOf, vampDegrees } from './vamp.ts';

/** The octave of the drone begins at E2: under most melodies, and not lost in a small loudspeaker. */
const LOWEST_DRONE_MIDI = 40;

/** The octave in which chords have their roots begins at C3. */
const LOWEST_CHORD_MIDI = 48;

/** The drone under a piece: the root of each section, struck with every bar and held. */
export function droneOf({ sections, timing }: Piece): readonly TimedNote[] {
  return sections.flatMap((section) => {
    const { name: note, pitchClass } = section.scale.root;
    const root = { midi: atOrAbove(LOWEST_DRONE_MIDI, pitchClass), note, degree: 1 };
    return barsOf(section, timing).map((startTicks) => held(section, timing, startTicks, root));
  });
}

/** The vamp under a piece: triads of each section, struck with every bar and held, in root position, root first. */
export function vampOf({ sections, timing, vampDegrees: degrees }: Piece): readonly TimedNote[] {
  return sections.flatMap((section) => {
    const triads = triadsOf(section.scale);
    const chords = (degrees ?? vampDegrees(section.scale)).map((degree) =>
      tonesOf(section.scale, triads[degree - 1] as DegreeChord),
    );
    return barsOf(section, timing).flatMap((startTicks, bar) =>
      (chords[bar % chords.length] ?? []).map((tone) => held(section, timing, startTicks, tone)),
    );
  });
}

type Tone = Pick<TimedNote, 'midi' | 'note' | 'degree'>;

function tonesOf(scale: Scale, chord: DegreeChord): readonly Tone[] {
  const root = atOrAbove(LOWEST_CHORD_MIDI, pitchClassesOf(scale)[chord.degree - 1] as number);
  const degrees = degreesOf(chord);
  return chord.semitones.map((semitones, at) => ({
    midi: root + semitones,
    note: chord.notes[at] as string,
    degree: degrees[at] as number,
  }));
}

function held({ modeIndex }: Section, { ticksPerBar }: Timing, startTicks: number, tone: Tone): TimedNote {
  return { startTicks, durationTicks: ticksPerBar, ...tone, modeIndex };
}

function barsOf({ startTicks, endTicks }: Section, { ticksPerBar }: Timing): readonly number[] {
  const count = (endTicks - startTicks) / ticksPerBar;
  return Array.from({ length: count }, (_, bar) => startTicks + bar * ticksPerBar);
}

/** The first note of a pitch class from a note number upwards. */
function atOrAbove(midi: number, pitchClass: number): number {
  return midi + pitchClassOf(pitchClass - midi);
}
