/**
 * Random pieces: a scale or a round on a neck, in any pattern, note value, tempo and time signature. Half of
 * the necks are those that players hold; the others are random.
 */
import {
  BEAT_UNITS,
  type BeatUnit,
  buildNeck,
  type Fingering,
  fingeringsOf,
  type Instrument,
  type Mode,
  type Neck,
  type NeckOptions,
  NOTE_VALUES,
  ORDERS,
  PATTERNS,
  type Piece,
  type PlayOptions,
  parseTuning,
  playFingering,
  playRound,
  type Result,
  ROOTS,
  type Root,
  roundOf,
  STYLES,
  type Style,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import fc from 'fast-check';
import { unwrap } from '../reference/in-core.ts';
import { questions } from './anyone.ts';

/** A piece, the neck it is played on, and how its instrument is written and sounds. */
export interface Played {
  readonly neck: Neck;
  readonly piece: Piece;
  readonly midiProgram: number;
  readonly clef: { readonly sign: 'G' | 'F' | 'C'; readonly line: number; readonly octaveChange: number };
}

type Rest = Pick<Instrument, 'scaleLengthMm' | 'frets'> & Partial<Instrument>;

function neckOf(openStrings: string, rest: Rest, options: NeckOptions = {}): Neck {
  const tunings = [unwrap(parseTuning(openStrings))] as const;
  const named = {
    id: 'any',
    name: 'any',
    aliases: [],
    handFrame: 'one-finger-per-fret',
    shortStrings: [],
  } as const;
  return unwrap(buildNeck({ ...named, ...rest, tunings }, tunings[0], options));
}

const GUITAR: Rest = { scaleLengthMm: 648, frets: 22 };
const BANJO: Rest = { scaleLengthMm: 667, frets: 22, shortStrings: [{ string: 5, startsAtFret: 5 }] };
const DULCIMER: Rest = {
  scaleLengthMm: 700,
  frets: 14,
  partialFrets: [
    ...[2, 4, 5, 7, 9, 10].map((semitones, at) => ({ fret: at + 1, semitones })),
    { fret: 6.5, semitones: 11 },
    ...[12, 14, 16, 17, 19, 21, 22].map((semitones, at) => ({ fret: at + 7, semitones })),
    { fret: 13.5, semitones: 23 },
    { fret: 14, semitones: 24 },
  ],
};

/** Open strings and scale lengths are common practice (no one source). */
const KNOWN_NECKS: readonly Neck[] = [
  neckOf('E2-A2-D3-G3-B3-E4', GUITAR),
  neckOf('E2-A2-D3-G3-B3-E4', GUITAR, { capoFret: 3 }),
  neckOf('E2-A2-D3-G3-B3-E4', GUITAR, { capoFret: 2, capoStrings: [3, 4, 5] }),
  neckOf('D2-A2-D3-F#3-A3-D4', GUITAR),
  neckOf('Eb2-Ab2-Db3-Gb3-Bb3-Eb4', GUITAR),
  neckOf('B1-E2-A2-D3-G3-B3-E4', { scaleLengthMm: 648, frets: 24 }),
  neckOf('B0-E1-A1-D2-G2', { scaleLengthMm: 863.6, frets: 21 }),
  neckOf('E1-A1-D2-G2', { scaleLengthMm: 863.6, frets: 21 }),
  neckOf('G3/G3-D4/D4-A4/A4-E5/E5', { scaleLengthMm: 352, frets: 20, handFrame: 'two-frets-per-finger' }),
  neckOf('G4-C4-E4-A4', { scaleLengthMm: 349, frets: 15 }),
  neckOf('G4-D3-G3-B3-D4', BANJO),
  neckOf('G4-D3-G3-B3-D4', BANJO, { capoFret: 2 }),
  neckOf('D3-A3-D4/D4', DULCIMER),
];

const necks: fc.Arbitrary<Neck> = fc.oneof(
  fc.constantFrom(...KNOWN_NECKS),
  questions.map(({ neck }) => neck),
);

const meters = fc.record({
  beats: fc.integer({ min: 2, max: 12 }),
  unit: fc.constantFrom<BeatUnit>(...BEAT_UNITS),
});

const playOptions: fc.Arbitrary<PlayOptions> = fc.record(
  {
    pattern: fc.constantFrom(...PATTERNS),
    seed: fc.integer({ min: 1, max: 2 ** 32 - 1 }),
    noteValue: fc.constantFrom(...NOTE_VALUES),
    tempoBpm: fc.oneof(fc.integer({ min: 20, max: 400 }), fc.double({ min: 20, max: 400, noNaN: true })),
    meter: meters,
    bars: fc.integer({ min: 1, max: 4 }),
    countInBars: fc.integer({ min: 0, max: 4 }),
    repeats: fc.integer({ min: 1, max: 2 }),
    restBeats: fc.integer({ min: 0, max: 9 }),
  },
  { requiredKeys: ['pattern', 'noteValue', 'tempoBpm', 'meter'] },
);

const clefs: fc.Arbitrary<Played['clef']> = fc.constantFrom(
  { sign: 'G', line: 2, octaveChange: -1 },
  { sign: 'G', line: 2, octaveChange: 0 },
  { sign: 'F', line: 4, octaveChange: -1 },
  { sign: 'C', line: 3, octaveChange: 0 },
);

interface Asked {
  readonly neck: Neck;
  readonly mode: Mode;
  readonly root: Root;
  readonly style: Style;
  readonly options: PlayOptions;
}

/** Any piece: one scale, or now and then a round. What cannot be played is left out. */
export const pieces: fc.Arbitrary<Played> = fc
  .record({
    neck: necks,
    mode: fc.constantFrom(...UNIVERSE.modes),
    root: fc.constantFrom(...ROOTS),
    style: fc.constantFrom(...STYLES),
    order: fc.constantFrom(...ORDERS),
    isRound: fc.nat(7).map((number) => number === 0),
    options: playOptions,
    midiProgram: fc.nat(127),
    clef: clefs,
  })
  .map(({ isRound, order, midiProgram, clef, ...asked }) => {
    const result = isRound
      ? playRound(roundOf(asked.neck, asked.mode, asked.root, { style: asked.style, order }), asked.options)
      : playOne(asked);
    if (!result?.ok) return undefined;
    const { options, style, neck } = asked;
    const shown = { tuning: neck.tuning.id, capo: neck.capoFret, isRound, style, ...options };
    const played: Played = { neck, piece: result.value, midiProgram, clef };
    return Object.assign(played, { [fc.toStringMethod]: () => JSON.stringify(shown) });
  })
  .filter((played) => played !== undefined);

function playOne({ neck, mode, root, style, options }: Asked): Result<Piece> | undefined {
  const scale = spell(mode, root);
  const answer = fingeringsOf(neck, scale, { style, limit: 1 });
  const fingering: Fingering | undefined = answer.fingerings[0] ?? answer.alternative?.fingering;
  return fingering && playFingering(scale, fingering, options);
}
