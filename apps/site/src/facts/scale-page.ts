/**
 * What the page of a mode on a root says.
 */
import { type FamilyEntry, familyEntryOf, type ModeEntry, modeEntryOf } from '@stillroot/catalog';
import {
  type DegreeChord,
  degreeIn,
  type FingeringAnswer,
  fingeringsOf,
  kindestRoot,
  type Mode,
  type MovedDegree,
  type Neighbour,
  needsReadable,
  neighboursOf,
  parentScale,
  type Root,
  relativeScales,
  type Scale,
  seventhsOf,
  spell,
  triadsOf,
} from '@stillroot/core';
import { scaleName } from '../markup/names.ts';
import { baseWords } from '../words/degrees.ts';
import { notesShared } from '../words/sentences.ts';
import { baseModeOf } from './base-mode.ts';
import { canonicalPath } from './canonical.ts';
import { GUITAR_NECK } from './guitar.ts';
import { movedBetween, notesInCommon, type Sharing, scalesSharingSix } from './related.ts';

/** A mode of the same family on the same root. */
export interface Parallel {
  readonly mode: Mode;
  readonly degree: number;
  readonly moved: readonly MovedDegree[];
}

/** Everything on the page. */
export interface ScalePage {
  readonly scale: Scale;
  readonly name: string;
  readonly canonical: string;
  /** The sentence that says what it is. */
  readonly sentence: string;
  readonly family: FamilyEntry;
  readonly parent: Scale;
  /** 1 to 7. */
  readonly degreeOfParent: number;
  /** The same sounds from a kinder root, where there is one. */
  readonly twin: Scale | undefined;
  readonly hasReadable: boolean;
  readonly triads: readonly DegreeChord[];
  readonly sevenths: readonly DegreeChord[];
  readonly parallels: readonly Parallel[];
  readonly relatives: readonly Scale[];
  readonly neighbours: readonly Neighbour[];
  readonly sharingSix: Sharing;
  readonly answer: FingeringAnswer;
}

/** Gathers the page. */
export function scalePage(entry: ModeEntry, root: Root): ScalePage {
  const { mode } = entry;
  const scale = spell(mode, root);
  const family = familyEntryOf(mode);
  const head = family.head.mode;
  const parent = parentScale(scale, head);
  const kindest = kindestRoot(mode, root);
  return {
    scale,
    name: scaleName(root, entry.name),
    canonical: canonicalPath(mode, root),
    sentence: sentenceOf(scale, parent),
    family,
    parent,
    degreeOfParent: degreeIn(head, mode),
    twin: kindest === root ? undefined : spell(mode, kindest),
    hasReadable: needsReadable(scale),
    triads: triadsOf(scale),
    sevenths: seventhsOf(scale),
    parallels: parallelsOf(mode, family),
    relatives: relativeScales(scale).slice(1),
    neighbours: neighboursOf(mode),
    sharingSix: scalesSharingSix(scale),
    answer: bestFingering(scale),
  };
}

/** The modes of a family as seen from one of them on the same root. */
export function parallelsOf(mode: Mode, family: FamilyEntry): readonly Parallel[] {
  return family.modes
    .filter((other) => other.mode !== mode)
    .map((other) => ({ mode: other.mode, degree: other.degree, moved: movedBetween(mode, other.mode) }));
}

/** `Dorian with a raised 4th; six notes in common with A Dorian, all seven with E harmonic minor.` */
function sentenceOf(scale: Scale, parent: Scale): string {
  const { mode, root } = scale;
  const base = baseModeOf(mode);
  const withBase =
    base === mode ? [] : [{ count: notesInCommon(scale, spell(base, root)), name: nameOf(base, root) }];
  const withParent = parent.mode === mode ? [] : [{ count: 7, name: nameOf(parent.mode, parent.root) }];
  const common = notesShared([...withBase, ...withParent]);
  return `${[baseWords(mode.base, mode.alterations), ...(common === '' ? [] : [common])].join('; ')}.`;
}

function nameOf(mode: Mode, root: Root): string {
  return scaleName(root, modeEntryOf(mode).name);
}

const answers = new Map<string, FingeringAnswer>();

/** The best fingering in position on the static pages' neck. Twins are fingered alike, so each sound is solved once. */
function bestFingering(scale: Scale): FingeringAnswer {
  const key = `${scale.mode.index} ${scale.root.pitchClass}`;
  const known = answers.get(key);
  if (known) return withNotesOf(scale, known);
  const answer = fingeringsOf(GUITAR_NECK, scale, { limit: 1 });
  answers.set(key, answer);
  return answer;
}

function withNotesOf(scale: Scale, answer: FingeringAnswer): FingeringAnswer {
  const fingerings = answer.fingerings.map((fingering) => ({
    ...fingering,
    notes: fingering.notes.map((note) => ({ ...note, note: scale.notes[note.degree - 1] ?? note.note })),
  }));
  return { ...answer, fingerings };
}
