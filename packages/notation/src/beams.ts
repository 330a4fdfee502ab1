/**
 * Beams: which short notes are joined, and by how many beams.
 */
import { type Meter, TICKS_PER_QUARTER } from '@stillroot/core';
import type { WrittenSign } from './written-bars.ts';

/** What a beam does at a note, as MusicXML says it. */
export type BeamPart = 'begin' | 'continue' | 'end' | 'forward hook' | 'backward hook';

/**
 * The beams at each sign of a bar, the outermost first; none at rests and at notes that stand alone. Notes of
 * one triplet are joined, and others within one group of beats.
 */
export function beamsOf(
  signs: readonly WrittenSign[],
  barTicks: number,
  meter: Meter,
): readonly (readonly BeamPart[])[] {
  const ends = groupEnds(meter);
  const groupOf = (sign: WrittenSign): number => ends.findIndex((end) => sign.startTicks - barTicks < end);
  const isJoined = (sign: WrittenSign, next: WrittenSign | undefined): boolean => {
    if (next === undefined || flagsOf(sign) === 0 || flagsOf(next) === 0) return false;
    if (sign.isTriplet || next.isTriplet) return sign.isTriplet && next.isTriplet && !next.beginsBracket;
    return groupOf(sign) === groupOf(next);
  };
  const beams: (readonly BeamPart[])[] = [];
  for (let from = 0; from < signs.length; ) {
    let to = from + 1;
    while (isJoined(signs[to - 1] as WrittenSign, signs[to])) to += 1;
    beams.push(...joined(signs.slice(from, to).map(flagsOf)));
    from = to;
  }
  return beams;
}

/**
 * Where the groups of a bar end, in ticks from its beginning: at every quarter; where shorter notes are
 * counted, after three of them if they go in threes, and else after two, the last group taking three
 * (common practice, no source).
 */
function groupEnds({ beats, unit }: Meter): readonly number[] {
  const unitTicks = (4 * TICKS_PER_QUARTER) / unit;
  const barTicks = beats * unitTicks;
  if (unit <= 4) return multiples(TICKS_PER_QUARTER, barTicks);
  if (beats % 3 === 0) return multiples(3 * unitTicks, barTicks);
  const ends = multiples(2 * unitTicks, barTicks);
  return beats % 2 === 0 ? ends : [...ends.slice(0, -1), barTicks];
}

function multiples(step: number, to: number): readonly number[] {
  return Array.from({ length: Math.floor(to / step) }, (_, at) => (at + 1) * step);
}

/** Flags of a note that stands alone: one for an eighth, two for a sixteenth. */
function flagsOf({ note, quarters }: WrittenSign): number {
  return note && quarters < 1 ? -Math.log2(quarters) : 0;
}

function joined(flags: readonly number[]): readonly (readonly BeamPart[])[] {
  if (flags.length < 2) return flags.map(() => []);
  return flags.map((own, at) =>
    Array.from({ length: own }, (_, beam): BeamPart => {
      const isOn = (flags[at - 1] ?? 0) > beam;
      const goesOn = (flags[at + 1] ?? 0) > beam;
      if (isOn) return goesOn ? 'continue' : 'end';
      if (goesOn) return 'begin';
      return at === 0 ? 'forward hook' : 'backward hook';
    }),
  );
}
