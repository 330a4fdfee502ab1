/**
 * The texts of what can be chosen, and of how a fingering is told. British English.
 */

import { type InstrumentKind, KIND_NAMES } from '@stillroot/catalog/plain';
import type { AreaShift, BeyondReach, Cost, FretRange } from '@stillroot/core';
import { fretWords } from '../measures.ts';
import { counted, joined, lengthWords, tenths } from './numbers.ts';

export const CHOICES = {
  onTheNeck: 'On the neck',
  theHand: 'Hand and fingering',
  theView: 'On the page',
  more: 'Capo strings, frets, hand size, labels, note names and more',
  transpose: 'Tuned by semitones',
  capoStrings: 'Capo on strings',
  capoStringsHint: 'Such as 1-3; all where empty.',
  frets: 'Number of frets',
  scaleLength: 'Scale length in mm',
  scaleLengthHint: 'One, or lowest and highest string: 686-648.',
  own: 'its own',
  all: 'all',
  handSize: 'Size of hand',
  open: 'Open strings',
  sharing: 'The seven share',
  compare: 'Arrows from',
  names: 'Names of notes',
  accidentals: 'Accidentals',
  tuningHint: 'Such as B1-E2-A2-D3-G3-B3-E4, E A d g b e′, DADGAD or Drop D.',
  capoFrets: 'This neck has frets',
  notStrings: 'numbers of strings such as 1,2,3 or 1-3',
  notLength: 'a length in millimetres such as 648, or two such as 686-648',
} as const;

export const OPEN_NAMES = {
  'near-the-nut': 'where the hand is near the nut',
  anywhere: 'anywhere',
  never: 'never',
} as const;

export const SHARING_NAMES = {
  'one-area': 'one area',
  'own-areas': 'areas of their own, as near as can be',
} as const;

export const COMPARE_NAMES = {
  above: 'the mode above',
  base: 'the base of each mode',
  first: 'the first mode',
} as const;

export const NAMING_NAMES = {
  english: 'English: F♯ B♭ B',
  german: 'German: Fis B H',
  romance: 'Romance: fa♯ si♭ si',
  dutch: 'Dutch: Fis Bes B',
  scandinavian: 'Scandinavian: Fiss B H',
  numbers: 'Numbers: 6 10 11, C is 0',
} as const;

export const ACCIDENTAL_NAMES = { signs: 'signs: ♯ ♭', ascii: 'plain text: # b' } as const;

/** A size of hand with its reach. */
export function handSizeName(size: 'small' | 'medium' | 'large', reachMm: number): string {
  return `${size}: ${reachMm} mm`;
}

export const READING = {
  readAs: 'Read as',
  guessed: 'octaves guessed',
  helmholtz: 'from Helmholtz notation',
  alsoOf: 'Also the open strings of:',
  isNamed: 'Known as',
  inEnglish: 'in English',
  couldMean: 'It could also mean',
} as const;

export const COSTS = {
  another: 'Another way to play it',
  next: 'Next',
  previous: 'Previous',
  noMore: 'There are no more.',
  against: 'Against',
  ownBase: 'It is its own base.',
} as const;

/** Which of several fingerings is shown. */
export function answerWords(at: number, count: number): string {
  return `Way ${at} of ${count}, best first.`;
}

/** What a fingering costs, broken down: `the hand travels 28.8 mm in 1 shift; fingers stretch 61 mm, all notes added up`. */
export function costWords({ travelMm, shifts, stretchMm, stringChanges }: Cost): string {
  const travel =
    shifts === 0
      ? 'the hand stays'
      : travelMm === 0
        ? `the hand stays, and a finger slides ${counted(shifts, 'time')}`
        : `the hand travels ${lengthWords(travelMm)} in ${counted(shifts, 'shift')}`;
  const stretch =
    stretchMm === 0
      ? 'no finger stretches'
      : `fingers stretch ${lengthWords(stretchMm)} beyond their own frets, all notes added up`;
  const changes =
    stringChanges === 0 ? 'no awkward string change' : `${counted(stringChanges, 'awkward string change')}`;
  return `${travel}; ${stretch}; ${changes}`;
}

/** Where the hand lies, one place after the other: named by the fret of finger 1 at rest. */
export function positionWords(positions: readonly number[]): string {
  const frets = positions.map(fretWords);
  return positions.length === 1
    ? `the hand lies at fret ${frets[0]}`
    : `the hand lies at frets ${frets.join(', ')} in turn`;
}

/** How many areas cover the neck. */
export function chainWords(count: number): string {
  return `${counted(count, 'area')} ${count === 1 ? 'covers' : 'cover'} every fret, from the nut upwards.`;
}

/** How the hand gets from one area to the next: `Shift: finger 1 from fret 2 up to fret 5, 88.6 mm.` */
export function shiftWords({ fromFret, toFret, distanceMm }: AreaShift): string {
  if (fromFret === toFret) return `No shift: finger 1 stays at fret ${fretWords(fromFret)}.`;
  const way = toFret > fromFret ? 'up' : 'down';
  return `Shift: finger 1 from fret ${fretWords(fromFret)} ${way} to fret ${fretWords(toFret)}, ${lengthWords(distanceMm)}.`;
}

/** Where a hand would have to open too wide: `String 6: frets 1, 3 and 5 at once are 168.2 mm.` */
export function beyondWords({ string, frets, spanMm }: BeyondReach): string {
  return `String ${string}: frets ${joined(frets.map(fretWords))} at once span ${lengthWords(spanMm)}.`;
}

/** Open strings, as a typed tuning was taken. */
export function readingWords(names: string, notation: string, isGuessed: boolean): string {
  const how = isGuessed ? `, ${READING.guessed}` : notation === 'helmholtz' ? ` ${READING.helmholtz}` : '';
  return `${READING.readAs} ${names}${how}.`;
}

/** Why a fingering does not begin at the fret that was asked for. */
export function beginsHigher(fret: number, reachMm: number): string {
  return `No octave from root to root begins at fret ${fretWords(fret)} within a reach of ${lengthWords(reachMm)}; this is the next above it.`;
}

/** Why a round does not begin at the fret that was asked for. */
export function roundBeginsHigher(fret: number, reachMm: number): string {
  return `Not all seven begin at fret ${fretWords(fret)} within a reach of ${lengthWords(reachMm)}; this is the next area above it.`;
}

/** `from fret 5 up to fret 8` */
export function areaInWords({ from, to }: FretRange): string {
  return from === 0
    ? `open strings to fret ${fretWords(to)}`
    : `frets ${fretWords(from)} to ${fretWords(to)}`;
}

/** A group of instruments, in the middle of a sentence. */
export function kindName(kind: InstrumentKind): string {
  return KIND_NAMES[kind];
}

/** The strings that something lies on: `on strings 1, 2 and 3`. */
export function onStrings(strings: readonly number[]): string {
  return `on ${strings.length === 1 ? 'string' : 'strings'} ${joined(strings.map(String))}`;
}

/** The scale length, or those of the lowest and the highest string: `scale length 686 to 648 mm`. */
export function scaleLengthWords(lengthsMm: readonly number[]): string {
  return `scale length ${lengthsMm.map((length) => tenths(length)).join(' to ')} mm`;
}

/** `24 frets` */
export function fretCountWords(count: number): string {
  return counted(count, 'fret');
}
