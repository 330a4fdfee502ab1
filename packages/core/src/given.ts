/**
 * What the tests of core start from: modes and roots by name, and a handful of necks.
 * Scale lengths and open strings are common practice (no one source); the dulcimer's diatonic frets follow
 * its Mixolydian fret pattern with the added 6½ and 13½.
 */
import type { Instrument } from './instrument/instrument.ts';
import { buildNeck, type Neck, type NeckOptions } from './instrument/neck.ts';
import { parseTuning } from './instrument/tuning.ts';
import { type Scale, spell } from './mode/spelling.ts';
import { type Mode, UNIVERSE } from './mode/universe.ts';
import { parseRoot, type Root } from './pitch/root.ts';
import type { Result } from './problem.ts';

/** Steps of the modes that the tests speak of most. */
export const STEPS = {
  ionian: '2212221',
  dorian: '2122212',
  phrygian: '1222122',
  lydian: '2221221',
  mixolydian: '2212212',
  aeolian: '2122122',
  locrian: '1221222',
  harmonicMinor: '2122131',
  phrygianDominant: '1312122',
  seventhOfHarmonicMinor: '1212213',
  melodicMinor: '2122221',
} as const;

/** What a result holds; throws where it holds a problem. */
export function valueIn<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.field}: ${result.problem.expected}`);
  return result.value;
}

/** The problem that a result holds, as it is said in words; throws where it holds a value. */
export function problemIn<T>(result: Result<T>) {
  if (result.ok) throw new Error('expected a problem');
  const { field, value, expected } = result.problem;
  return { field, value, expected };
}

/** The mode with these steps; throws where there is none. */
export function modeOf(steps: string): Mode {
  const mode = UNIVERSE.modesById.get(steps);
  if (mode === undefined) throw new Error(`no mode ${steps}`);
  return mode;
}

/** The root of this name. */
export function rootOf(name: string): Root {
  return valueIn(parseRoot(name));
}

/** The scale of these steps on this root. */
export function scaleOf(root: string, steps: string): Scale {
  return spell(modeOf(steps), rootOf(root));
}

function instrumentOf(
  id: string,
  openStrings: string,
  rest: Pick<Instrument, 'scaleLengthMm' | 'frets'> & Partial<Instrument>,
): Instrument {
  const tunings = [valueIn(parseTuning(openStrings))] as const;
  return { id, name: id, aliases: [], handFrame: 'one-finger-per-fret', shortStrings: [], ...rest, tunings };
}

const DULCIMER_FRETS = [
  ...[2, 4, 5, 7, 9, 10].map((semitones, at) => ({ fret: at + 1, semitones })),
  { fret: 6.5, semitones: 11 },
  ...[12, 14, 16, 17, 19, 21, 22].map((semitones, at) => ({ fret: at + 7, semitones })),
  { fret: 13.5, semitones: 23 },
  ...[24, 26, 28].map((semitones, at) => ({ fret: at + 14, semitones })),
];

/** The instruments that the tests play. */
export const INSTRUMENTS = {
  guitar: instrumentOf('guitar', 'E2-A2-D3-G3-B3-E4', { scaleLengthMm: 648, frets: 22 }),
  sevenString: instrumentOf('seven-string', 'B1-E2-A2-D3-G3-B3-E4', { scaleLengthMm: 648, frets: 24 }),
  bass: instrumentOf('bass', 'E1-A1-D2-G2', { scaleLengthMm: 863.6, frets: 21 }),
  mandolin: instrumentOf('mandolin', 'G3/G3-D4/D4-A4/A4-E5/E5', {
    scaleLengthMm: 352,
    frets: 20,
    handFrame: 'two-frets-per-finger',
  }),
  banjo: instrumentOf('banjo', 'G4-D3-G3-B3-D4', {
    scaleLengthMm: 667,
    frets: 22,
    shortStrings: [{ string: 5, startsAtFret: 5 }],
  }),
  dulcimer: instrumentOf('dulcimer', 'D3-A3-D4/D4', {
    scaleLengthMm: 700,
    frets: 16,
    partialFrets: DULCIMER_FRETS,
  }),
} as const;

/** The neck of an instrument in its own tuning, or in open strings typed by hand. */
export function neckOf(instrument: Instrument, options: NeckOptions = {}, openStrings?: string): Neck {
  const tuning = openStrings === undefined ? instrument.tunings[0] : valueIn(parseTuning(openStrings));
  return valueIn(buildNeck(instrument, tuning, options));
}
