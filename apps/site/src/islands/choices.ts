/**
 * What a reader chose, as it stands in an address. Defaults are left out, so that a plain address means
 * the plain page; what cannot be read is taken as not chosen, and kept aside to be told.
 */
import type { HandSizeName, OpenStrings, Order, Sharing, Style } from '@stillroot/core';
import type { Labels } from '@stillroot/notation';
import type { Naming } from '../words/note-names.ts';
import { CHOICE_KEYS, type ChoiceKey } from './choice-keys.ts';

// Written again rather than taken from core, so that what every page may fetch stays small; the types keep them true.
/** What is chosen from a list; the first is the default, but for labels, which each page has its own of. */
export const LISTS = {
  labels: ['degrees', 'notes', 'fingers'] as const satisfies readonly Labels[],
  hand: ['right', 'left'],
  style: [
    'position',
    'three-per-string',
    'one-string',
    'two-octaves',
    'whole-range',
    'across-the-neck',
  ] as const satisfies readonly Style[],
  open: ['near-the-nut', 'anywhere', 'never'] as const satisfies readonly OpenStrings[],
  handSize: ['medium', 'small', 'large'] as const satisfies readonly HandSizeName[],
  order: ['parent', 'brightness', 'fewest-moves'] as const satisfies readonly Order[],
  sharing: ['one-area', 'own-areas'] as const satisfies readonly Sharing[],
  compare: ['above', 'base', 'first'],
  names: [
    'english',
    'german',
    'romance',
    'dutch',
    'scandinavian',
    'numbers',
  ] as const satisfies readonly Naming[],
  accidentals: ['signs', 'ascii'],
} as const;

type ListKey = keyof typeof LISTS;

/** What the arrows of a round are drawn against: the mode above, the mode's base, or the first mode. */
export type Against = (typeof LISTS.compare)[number];

/** Everything that can be chosen. */
export interface Choices extends Readonly<{ [K in Exclude<ListKey, 'labels'>]: (typeof LISTS)[K][number] }> {
  /** An id of the catalogue; empty for the page's own. */
  readonly instrument: string;
  /** An id of the instrument's tunings, or open strings as they were typed; empty for its usual one. */
  readonly tuning: string;
  /** By so many semitones every string is tuned up, or down below zero. */
  readonly transpose: number;
  /** The capo's fret; 0 for none. */
  readonly capo: number;
  /** The strings under the capo, as they were typed: `1,2,3`, `1-3`; empty for all. */
  readonly capoStrings: string;
  /** The last fret; the instrument's own where absent. */
  readonly frets: number | undefined;
  /** In millimetres: one length, or those of the lowest and the highest string: `686-648`. */
  readonly scaleLength: string;
  readonly labels: Labels | undefined;
  /** Which of the few best fingerings, from 1. */
  readonly answer: number;
  /** Anywhere where absent. */
  readonly fret: number | undefined;
  /** In millimetres; that of the size of the hand where absent. */
  readonly reach: number | undefined;
  /** What stood in the address and could not be read. */
  readonly unread: Readonly<Partial<Record<ChoiceKey, string>>>;
}

/** Choices that mean something on one instrument only: those before the labels, and where to begin. */
const NECK_KEYS: readonly string[] = [...CHOICE_KEYS.slice(0, 7), 'fret'];

/** How many of the best fingerings a reader can step through. */
export const MOST_ANSWERS = 5;

/** Longer texts are no choice of anybody's. */
const LONGEST = 120;

const NUMBER = /^[-−+]?\d{1,4}(?:[.,]\d{1,4})?$/;

/** Reads choices from a query. */
export function readChoices(query: URLSearchParams): Choices {
  const unread: Partial<Record<ChoiceKey, string>> = {};
  const text = (key: ChoiceKey): string => (query.get(key) ?? '').trim().slice(0, LONGEST);
  const number = (key: ChoiceKey, least = 0): number | undefined => {
    const value = numberIn(text(key));
    if (value !== undefined && value >= least) return value;
    if (text(key) !== '') unread[key] = text(key);
    return undefined;
  };
  const listed = <K extends ListKey>(key: K): (typeof LISTS)[K][number] | undefined => {
    const values: readonly (typeof LISTS)[K][number][] = LISTS[key];
    const found = values.find((value) => value === text(key));
    if (found === undefined && text(key) !== '') unread[key] = text(key);
    return found;
  };
  return {
    instrument: text('instrument'),
    tuning: text('tuning'),
    transpose: number('transpose', -99) ?? 0,
    capo: number('capo') ?? 0,
    capoStrings: text('capoStrings'),
    frets: number('frets', 1),
    scaleLength: text('scaleLength'),
    labels: listed('labels'),
    hand: listed('hand') ?? 'right',
    style: listed('style') ?? 'position',
    answer: Math.min(number('answer', 1) ?? 1, MOST_ANSWERS),
    fret: number('fret'),
    open: listed('open') ?? 'near-the-nut',
    handSize: listed('handSize') ?? 'medium',
    reach: number('reach'),
    order: listed('order') ?? 'parent',
    sharing: listed('sharing') ?? 'one-area',
    compare: listed('compare') ?? 'above',
    names: listed('names') ?? 'english',
    accidentals: listed('accidentals') ?? 'signs',
    unread,
  };
}

/** Writes choices as a query, without the defaults. */
export function writeChoices(choices: Choices): URLSearchParams {
  const query = new URLSearchParams();
  const defaults = readChoices(query);
  for (const key of CHOICE_KEYS) {
    const value = choices[key];
    if (value !== undefined && value !== defaults[key]) query.set(key, String(value));
  }
  return query;
}

/**
 * An address of this site with choices carried along. What it chooses already is left alone, and where that
 * is another instrument, nothing that belongs to this one is carried; which of several fingerings is shown
 * stays on its page.
 */
export function carryChoices(href: string, choices: URLSearchParams, origin: string): string {
  const address = new URL(href, origin);
  const isPage = address.origin === new URL(origin).origin && address.pathname.endsWith('/');
  if (!isPage) return href;
  const { searchParams } = address;
  const own = ['instrument', 'tuning'].some((key) => searchParams.has(key));
  const isOther =
    own && (searchParams.has('tuning') || searchParams.get('instrument') !== choices.get('instrument'));
  for (const [key, value] of choices) {
    const stays = key === 'answer' || searchParams.has(key) || (isOther && NECK_KEYS.includes(key));
    if (!stays) searchParams.set(key, value);
  }
  return address.pathname + address.search + address.hash;
}

function numberIn(text: string): number | undefined {
  const plain = text.replace('½', '.5').replace('−', '-').replace(',', '.');
  return NUMBER.test(plain) ? Number(plain) : undefined;
}
