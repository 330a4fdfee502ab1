/**
 * What the page of a family's round on a root says.
 */
import { type FamilyEntry, modeEntryOf } from '@stillroot/catalog';
import {
  distanceBetween,
  type Mode,
  ORDERS,
  type Order,
  orderModes,
  type Root,
  type Round,
  roundOf,
} from '@stillroot/core';
import { roundHtml } from '../markup/round.ts';
import { roundTitle } from '../words/titles.ts';
import { GUITAR_NECK } from './guitar.ts';
import { movedBetween } from './related.ts';

/** One order of the seven modes and how much moves in it. */
export interface OrderLine {
  readonly order: Order;
  readonly modes: readonly Mode[];
  readonly movedNotes: number;
  readonly movedSemitones: number;
}

/** Everything on the page. */
export interface RoundPage {
  readonly family: FamilyEntry;
  readonly root: Root;
  readonly title: string;
  readonly round: Round;
  readonly html: string;
  readonly orders: readonly OrderLine[];
}

/** Gathers the page. */
export function roundPage(family: FamilyEntry, root: Root, headingLevel: 2 | 3 = 2): RoundPage {
  const head = family.head.mode;
  const round = roundOf(GUITAR_NECK, head, root);
  const view = { round, neck: GUITAR_NECK, head, nameOf: modeEntryOf, headingLevel, isPlayed: true } as const;
  return {
    family,
    root,
    title: roundTitle(family.name, root),
    round,
    html: roundHtml({ ...view, labels: 'degrees', leftHanded: false }),
    orders: ordersOf(family),
  };
}

const orderLines = new Map<FamilyEntry, readonly OrderLine[]>();

/** The three orders of a family, which are the same on every root. */
function ordersOf(family: FamilyEntry): readonly OrderLine[] {
  const known = orderLines.get(family);
  if (known) return known;
  const lines = ORDERS.map((order): OrderLine => {
    const modes = orderModes(family.head.mode, order);
    const pairs = modes.slice(1).map((mode, at) => [modes[at] ?? mode, mode] as const);
    return {
      order,
      modes,
      movedNotes: pairs.reduce((sum, [from, to]) => sum + movedBetween(from, to).length, 0),
      movedSemitones: pairs.reduce((sum, [a, b]) => sum + distanceBetween(a.semitones, b.semitones), 0),
    };
  });
  orderLines.set(family, lines);
  return lines;
}
