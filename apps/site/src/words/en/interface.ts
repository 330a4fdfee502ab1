/**
 * The texts of the interface, in one place, so that other languages can follow. British English.
 */

import type { Order, Style } from '@stillroot/core';
import type { Labels } from '@stillroot/notation';

export const SITE_NAME = 'Stillroot';

/** What the site is, in one sentence. */
export const SITE_SENTENCE =
  'Every mode of every seven-note scale, from one root and in one area of the neck, on whatever fretted instrument you hold.';

export const NAVIGATION = {
  skip: 'Skip to the content',
  label: 'Main',
  rounds: 'Rounds',
  families: 'Families',
  modes: 'Modes',
  instruments: 'Instruments',
  map: 'Map',
  compare: 'Compare',
  routes: 'Routes',
  search: 'Search',
  lesson: 'Lesson',
  trail: 'You are here',
  languages: 'Languages',
} as const;

export const LABEL_NAMES: Readonly<Record<Labels, string>> = {
  degrees: 'degrees',
  notes: 'notes',
  fingers: 'fingers',
};

export const STYLE_NAMES: Readonly<Record<Style, string>> = {
  position: 'in position',
  'three-per-string': 'three to a string',
  'one-string': 'along one string',
  'two-octaves': 'over two octaves',
  'whole-range': 'over the whole range',
  'across-the-neck': 'across the neck, area by area',
};

export const ORDER_NAMES: Readonly<Record<Order, string>> = {
  parent: 'by parent degree',
  brightness: 'from bright to dark',
  'fewest-moves': 'with the fewest moved notes',
};

export const CHOOSER = {
  family: 'Family',
  root: 'Root',
  instrument: 'Instrument',
  tuning: 'Tuning',
  typedTuning: 'Typed by hand …',
  openStrings: 'Open strings, low to high',
  openStringsHint: 'Such as B1-E2-A2-D3-G3-B3-E4; middle C is C4.',
  tuningHint: 'Leave empty for the usual one, or type open strings, low to high: E1-A1-D2-G2.',
  capo: 'Capo at fret',
  labels: 'Labels',
  hand: 'Hand',
  right: 'right-handed',
  left: 'left-handed',
  style: 'Laid out',
  fret: 'From fret',
  anywhere: 'anywhere',
  reach: 'Reach in mm',
  order: 'Order',
  show: 'Show this round',
  goToPicture: 'Go to the necks',
  change: 'change',
  summary: 'Choose instrument, tuning, capo, hand and more',
  ownSummary: 'Choose tuning, capo, hand and labels',
  roundSummary: 'Choose family, root, instrument, tuning and more',
  failed: 'The other instruments could not be fetched. The page itself is complete; try again later.',
  capoShort: 'capo at fret',
  notInstrument: 'one of the instruments in the list',
  notMode:
    'the name of a mode such as Phrygian dominant, a place such as 4th mode of harmonic minor, a formula, or seven steps',
  notTuning: 'a tuning of this instrument by its id, or open strings such as E2-A2-D3-G3-B3-E4',
} as const;

export const FIGURES = {
  scrollHint: 'scrolls sideways',
  before: 'Moved notes',
  cannot: 'This cannot be played:',
  insteadOf: 'The nearest that can be:',
  leftOut: 'Left out:',
  opens: 'the hand opens',
  stays: 'the hand stays',
  travels: 'the hand travels',
  openString: 'open',
  string: 'String',
  frets: 'Frets',
  fingers: 'Fingers',
  notes: 'Notes',
} as const;

export const KEY = {
  shapes: 'A shape has as many corners as its degree; the disc is the root.',
  lowered: 'lowered against the major scale',
  raised: 'raised against the major scale',
  moved: 'where a note lay in the mode before; the arrow shows where it went',
  quiet: 'in the scale, but not part of this fingering',
} as const;
