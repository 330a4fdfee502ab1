/**
 * What is wrong with a round, reckoned from its neck and its scales alone; nothing for a sound one.
 */
import type { Fingering, Neck, Round, Scale } from '@stillroot/core';

/** The first fault of a round, in words; undefined where it has none. */
export function faultOf(neck: Neck, round: Round, reachMm: number): string | undefined {
  const played = round.modes.filter(({ fingering }) => fingering !== undefined);
  if (round.modes.length !== 7) return `${round.modes.length} modes`;
  if (played.length < 7 && !round.reason) return 'modes are missing and no reason is given';
  if (played.length === 0) return round.area ? 'an area without fingerings' : undefined;
  const { area } = round;
  if (!area) return 'fingerings without an area';
  for (const { scale, fingering, reason } of round.modes) {
    if (fingering === undefined) {
      if (!reason) return `${scale.mode.id} is left out without a reason`;
      continue;
    }
    if (fingering.area.from < area.from || fingering.area.to > area.to) {
      return `${scale.mode.id} leaves the area`;
    }
    const fault = fingeringFault(neck, scale, fingering, reachMm);
    if (fault) return `${scale.mode.id}: ${fault}`;
  }
  return undefined;
}

function fingeringFault(
  neck: Neck,
  scale: Scale,
  { notes, area, reachMm }: Fingering,
  allowedMm: number,
): string | undefined {
  const rootMidi = notes[0]?.midi ?? Number.NaN;
  if (rootMidi % 12 !== scale.root.pitchClass) return 'does not begin on the root';
  if (notes.length < 8 || notes.length % 7 !== 1) return `${notes.length} notes`;
  if (reachMm > allowedMm) return `opens the hand ${reachMm} mm`;
  for (const [at, { midi, string, fret, note, degree }] of notes.entries()) {
    const wanted = rootMidi + 12 * Math.floor(at / 7) + (scale.mode.semitones[at % 7] as number);
    if (midi !== wanted || degree !== (at % 7) + 1 || note !== scale.notes[at % 7]) {
      return `note ${at + 1} is ${note} (${midi})`;
    }
    if (fret < area.from || fret > area.to) return `note ${at + 1} lies outside the area`;
    if (soundOf(neck, string, fret) !== midi)
      return `fret ${fret} of string ${string} does not sound ${midi}`;
  }
  return undefined;
}

/** What a fret sounds, from the tuning's open string and the semitones of the neck's frets. */
function soundOf(neck: Neck, string: number, fret: number): number | undefined {
  const open = neck.tuning.courses.at(-string)?.[0].midi;
  const semitones = (wanted: number) => neck.slots.find((slot) => slot.fret === wanted)?.semitones;
  const begins = neck.instrument.shortStrings.find((short) => short.string === string)?.startsAtFret ?? 0;
  const above = fret === 0 ? semitones(begins) : semitones(fret);
  const start = semitones(begins);
  if (open === undefined || above === undefined || start === undefined) return undefined;
  return open + above - start;
}
