/**
 * Core: every mode of every seven-note family, spelled, related, laid on any neck and fingered.
 * Pure functions and read-only data; runs in Node and in the browser alike.
 */

export type { Expectation } from './expectation.ts';
export type { AreaShift } from './fingering/across-neck.ts';
export { OPEN_STRING_USES, type OpenStrings } from './fingering/area.ts';
export { type Caution, cautionInWords, cautionsFor } from './fingering/cautions.ts';
export type { Cost } from './fingering/cost.ts';
export {
  type FingeredNote,
  type Fingering,
  type FretRange,
  STYLES,
  type Style,
} from './fingering/fingering.ts';
export { type FingeringAnswer, type FingeringOptions, fingeringsOf } from './fingering/fingerings.ts';
export {
  comfortableReachMm,
  DEFAULT_REACH_MM,
  HAND_SIZES,
  type HandPosition,
  type HandSize,
  type HandSizeName,
  handPositions,
  REACH_RANGE_MM,
  widestHands,
} from './fingering/hand.ts';
export { REASON_KINDS, type Reason, reasonInWords } from './fingering/reason.ts';
export { solve } from './fingering/solve.ts';
export type { BeyondReach } from './fingering/three-per-string.ts';
export type { LineNote } from './fingering/touch.ts';
export { chordSymbolsIn, parseChord, type SymbolChord } from './harmony/chord-symbol.ts';
export { type DegreeChord, seventhsOf, triadsOf } from './harmony/chords.ts';
export { type Holding, scalesHolding } from './harmony/holding.ts';
export { fretDistanceMm } from './instrument/fret.ts';
export { type Place, placesOn } from './instrument/fretboard.ts';
export type {
  Course,
  HandFrame,
  Instrument,
  PartialFret,
  ShortString,
  Tuning,
} from './instrument/instrument.ts';
export {
  buildNeck,
  type FretSlot,
  fretNumber,
  MOST_FRETS,
  type Neck,
  type NeckOptions,
  type NeckString,
  openSlot,
  stringFretDistanceMm,
} from './instrument/neck.ts';
export { type OuterLengthsMm, SCALE_LENGTH_RANGE_MM } from './instrument/neck-options.ts';
export { type ReadTuningOptions, readTuning, type TuningReading } from './instrument/read-tuning.ts';
export { transposeTuning } from './instrument/transpose.ts';
export {
  MOST_STRINGS,
  openStringNames,
  ownTuning,
  parseCourse,
  parseTuning,
} from './instrument/tuning.ts';
export { tuningNamed } from './instrument/tuning-name.ts';
export type { TuningNotation } from './instrument/tuning-words.ts';
export {
  type Base,
  CHURCH_MODE_NAMES,
  CHURCH_MODES,
  type ChurchModeName,
  distanceBetween,
  findBase,
  type MovedDegree,
  movedDegrees,
} from './mode/base.ts';
export { formatDegree, formatNamedDegree } from './mode/formula.ts';
export {
  kindestRoot,
  kindestRootOf,
  needsReadable,
  pitchClassesOf,
  type Scale,
  spell,
  spellAnew,
} from './mode/spelling.ts';
export {
  buildUniverse,
  type Family,
  type Mode,
  rotate,
  semitonesOf,
  UNIVERSE,
  type Universe,
} from './mode/universe.ts';
export { formatAccidental, toAscii, toSigns } from './pitch/accidental.ts';
export { LETTERS, type Letter, MAJOR_SEMITONES, NATURAL_SEMITONES, pitchClassOf } from './pitch/letter.ts';
export { formatNote, type NoteName, parseNote, pitchClassOfNote } from './pitch/note.ts';
export { formatMidi, frequencyHz, type Pitch, parsePitch } from './pitch/pitch.ts';
export { commonCount, type PitchClassSet, setOf } from './pitch/pitch-class-set.ts';
export { formatHelmholtz, parseHelmholtz } from './pitch/pitch-helmholtz.ts';
export { EVERYDAY_ROOTS, parseRoot, ROOTS, ROOTS_BY_PITCH_CLASS, type Root } from './pitch/root.ts';
export { droneOf, vampOf } from './play/backing.ts';
export { isTriplet, NOTE_VALUES, type NoteValue, TICKS_PER_QUARTER, ticksOf } from './play/note-value.ts';
export { PATTERNS, type Pattern } from './play/pattern.ts';
export type { Click, Piece, PlayedNote, Section, TimedNote } from './play/piece.ts';
export { MOST_BARS, MOST_NOTES, type NameScale, playFingering, playRound } from './play/play.ts';
export { PLAY_RANGES, type PlayOptions } from './play/play-options.ts';
export { SEED_RANGE } from './play/random.ts';
export {
  BEAT_UNITS,
  BEATS_RANGE,
  type BeatUnit,
  type Meter,
  parseMeter,
  quartersPerMinute,
  secondsAt,
  TEMPO_RANGE_BPM,
  type Timing,
  ticksAt,
} from './play/timing.ts';
export { vampDegrees } from './play/vamp.ts';
export { fail, invariant, type Problem, type Result, succeed } from './problem.ts';
export { type Neighbour, neighboursOf, type RouteStep, routeBetween } from './relation/neighbours.ts';
export { degreeIn, familyOf, modesFrom, parentScale, relativeScales } from './relation/relatives.ts';
export { placementSets, type SharedScale, sharedScales } from './relation/shared.ts';
export { ORDERS, type Order, orderModes } from './round/order.ts';
export { type Round, type RoundMode, type RoundOptions, roundOf } from './round/round.ts';
export { SHARINGS, type Sharing } from './round/together.ts';
