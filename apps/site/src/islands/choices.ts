/**
 * What a reader chose, as it stands in an address. Defaults are left out, so that a plain address means
 * the plain page; what cannot be read is taken as not chosen.
 */
import type { Order, Style } from '@stillroot/core';
import type { Labels } from '@stillroot/notation';

/** Everything that can be chosen. */
export interface Choices {
  /** An id of the catalogue; empty for the page's own. */
  readonly instrument: string;
  /** An id of the instrument's tunings, or open strings; empty for its usual one. */
  readonly tuning: string;
  /** The capo's fret; 0 for none. */
  readonly capo: number;
  readonly labels: Labels | undefined;
  readonly hand: 'right' | 'left';
  readonly style: Style;
  /** Anywhere where absent. */
  readonly fret: number | undefined;
  /** In millimetres; core's own where absent. */
  readonly reach: number | undefined;
  readonly order: Order;
}

/** The names of choices in an address, in the order in which they stand there. */
export const CHOICE_KEYS = [
  'instrument',
  'tuning',
  'capo',
  'labels',
  'hand',
  'style',
  'fret',
  'reach',
  'order',
] as const satisfies readonly (keyof Choices)[];

// Written again rather than taken from core, so that the first script stays small; the types keep them true.
const LABELS = ['degrees', 'notes', 'fingers'] as const satisfies readonly Labels[];
const HANDS = ['right', 'left'] as const;
const STYLES = [
  'position',
  'three-per-string',
  'one-string',
  'two-octaves',
  'whole-range',
  'across-the-neck',
] as const satisfies readonly Style[];
const ORDERS = ['parent', 'brightness', 'fewest-moves'] as const satisfies readonly Order[];

/** Longer texts are no choice of anybody's. */
const LONGEST = 120;

/** Reads choices from a query. */
export function readChoices(query: URLSearchParams): Choices {
  const text = (key: string): string => (query.get(key) ?? '').trim().slice(0, LONGEST);
  return {
    instrument: text('instrument'),
    tuning: text('tuning'),
    capo: numberIn(text('capo')) ?? 0,
    labels: oneOf(LABELS, text('labels')),
    hand: oneOf(HANDS, text('hand')) ?? 'right',
    style: oneOf(STYLES, text('style')) ?? 'position',
    fret: numberIn(text('fret')),
    reach: numberIn(text('reach')),
    order: oneOf(ORDERS, text('order')) ?? 'parent',
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

/** Whether a query chooses anything. */
export function choosesAnything(query: URLSearchParams): boolean {
  return CHOICE_KEYS.some((key) => query.has(key));
}

/**
 * An address of this site with choices carried along. One that already chooses is left alone, and so is
 * one that is not a page.
 */
export function carryChoices(href: string, choices: URLSearchParams, origin: string): string {
  const address = new URL(href, origin);
  const isPage = address.origin === new URL(origin).origin && address.pathname.endsWith('/');
  if (!isPage || choosesAnything(address.searchParams)) return href;
  for (const [key, value] of choices) address.searchParams.set(key, value);
  return address.pathname + address.search + address.hash;
}

function oneOf<T extends string>(values: readonly T[], text: string): T | undefined {
  return values.find((value) => value === text);
}

function numberIn(text: string): number | undefined {
  const number = text === '' ? Number.NaN : Number(text);
  return Number.isFinite(number) && number >= 0 ? number : undefined;
}
