/**
 * What the page of a family says.
 */
import type { FamilyEntry, ModeEntry } from '@stillroot/catalog';
import {
  type DegreeChord,
  EVERYDAY_ROOTS,
  type Root,
  type Scale,
  seventhsOf,
  spell,
  triadsOf,
} from '@stillroot/core';
import { EXAMPLE_ROOT } from './mode-page.ts';

/** Everything on the page. */
export interface FamilyPage {
  /** The mode on the first degree, on A. */
  readonly parent: Scale;
  /** The seven on A. */
  readonly onA: readonly { readonly entry: ModeEntry; readonly scale: Scale }[];
  readonly brightest: ModeEntry;
  readonly darkest: ModeEntry;
  readonly triads: readonly DegreeChord[];
  readonly sevenths: readonly DegreeChord[];
  readonly roots: readonly Root[];
}

/** Gathers the page. */
export function familyPage(family: FamilyEntry): FamilyPage {
  const parent = spell(family.head.mode, EXAMPLE_ROOT);
  const byBrightness = family.modes.toSorted((a, b) => b.mode.brightness - a.mode.brightness);
  return {
    parent,
    onA: family.modes.map((entry) => ({ entry, scale: spell(entry.mode, EXAMPLE_ROOT) })),
    brightest: byBrightness[0] ?? family.head,
    darkest: byBrightness.at(-1) ?? family.head,
    triads: triadsOf(parent),
    sevenths: seventhsOf(parent),
    roots: EVERYDAY_ROOTS,
  };
}
