/**
 * What the page of a mode without a root says.
 */
import { type FamilyEntry, familyEntryOf, type ModeEntry } from '@stillroot/catalog';
import {
  EVERYDAY_ROOTS,
  invariant,
  type Mode,
  type Neighbour,
  neighboursOf,
  parseRoot,
  type Root,
  type Scale,
  spell,
} from '@stillroot/core';
import { baseWords } from '../words/degrees.ts';
import { modeName } from '../words/names.ts';
import { baseModeOf } from './base-mode.ts';
import { HOME_ROUND } from './paths.ts';
import { type Parallel, parallelsOf } from './scale-page.ts';

/** Everything on the page. */
export interface ModePage {
  readonly mode: Mode;
  readonly name: string;
  readonly systematicName: string;
  /** What it is in words, from its base. */
  readonly inWords: string;
  readonly base: Mode;
  readonly family: FamilyEntry;
  readonly neighbours: readonly Neighbour[];
  readonly parallels: readonly Parallel[];
  readonly onA: Scale;
  readonly roots: readonly Root[];
}

/** The root that examples stand on. */
export const EXAMPLE_ROOT: Root = exampleRoot();

/** Gathers the page. */
export function modePage({ mode, name }: ModeEntry): ModePage {
  const family = familyEntryOf(mode);
  return {
    mode,
    name: modeName(name),
    systematicName: modeName(mode.systematicName),
    inWords: baseWords(mode.base, mode.alterations),
    base: baseModeOf(mode),
    family,
    neighbours: neighboursOf(mode),
    parallels: parallelsOf(mode, family),
    onA: spell(mode, EXAMPLE_ROOT),
    roots: EVERYDAY_ROOTS,
  };
}

function exampleRoot(): Root {
  const root = parseRoot(HOME_ROUND.root);
  invariant(root.ok, 'the front page has a root');
  return root.value;
}
