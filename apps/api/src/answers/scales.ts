/**
 * Answers about modes on a root: the scale, what belongs with it, comparisons, routes and searches.
 */
import { familyEntryOf, type ModeEntry, modeEntryOf, modePreference } from '@stillroot/catalog';
import {
  commonCount,
  type DegreeChord,
  distanceBetween,
  formatNote,
  kindestRoot,
  modesFrom,
  movedDegrees,
  type NoteName,
  neighboursOf,
  parentScale,
  pitchClassesOf,
  pitchClassOfNote,
  type Root,
  relativeScales,
  routeBetween,
  type Scale,
  type SymbolChord,
  scalesHolding,
  setOf,
  seventhsOf,
  sharedScales,
  spell,
  triadsOf,
} from '@stillroot/core';
import type { Address } from '../address.ts';
import { pageOf, partOf, type Span } from '../paging.ts';
import { mode as modeAnswer } from './modes.ts';

/** A root and a mode's name: `A Phrygian dominant`. */
export function scaleName(scale: Scale): string {
  return `${scale.root.name} ${modeEntryOf(scale.mode).name}`;
}

export function scale(entry: ModeEntry, root: Root) {
  const spelled = spell(entry.mode, root);
  const head = familyEntryOf(entry.mode).head.mode;
  return {
    ...modeAnswer(entry),
    root: root.name,
    name: scaleName(spelled),
    modeName: entry.name,
    notes: spelled.notes,
    readable: spelled.readable,
    parent: named(parentScale(spelled, head)),
    kindest: kindestRoot(entry.mode, root).name,
    chords: { triads: triadsOf(spelled).map(chord), sevenths: seventhsOf(spelled).map(chord) },
  };
}

/** Which scales by shared notes are asked for. */
export interface RelatedQuery extends Span {
  /** The fewest notes in common. */
  readonly shared: number;
}

export function related(entry: ModeEntry, root: Root, query: RelatedQuery, address: Address) {
  const { mode } = entry;
  const here = spell(mode, root);
  const [, ...parallels] = modesFrom(mode);
  const [, ...relatives] = relativeScales(here);
  const shared = sharedScales(here, query.shared).toSorted(
    (a, b) => b.count - a.count || modePreference(b.scale.mode) - modePreference(a.scale.mode),
  );
  return {
    parallel: parallels.map((other) => ({
      ...withNotes(spell(other, root)),
      moved: movedDegrees(mode.semitones, other.semitones),
    })),
    relative: relatives.map(withNotes),
    neighbours: neighboursOf(mode).map(({ mode: other, moved }) => ({
      ...withNotes(spell(other, root)),
      moved,
    })),
    total: shared.length,
    ...pageOf(address, shared.length, query),
    shared: partOf(shared, query).map(({ scale: other, count }) => ({ ...withNotes(other), count })),
  };
}

export function compare(a: ModeEntry, b: ModeEntry, root: Root) {
  const [one, other] = [spell(a.mode, root), spell(b.mode, root)];
  return {
    root: root.name,
    a: { ...withNotes(one), formula: a.mode.formula },
    b: { ...withNotes(other), formula: b.mode.formula },
    degrees: one.notes.map((note, at) => ({
      degree: at + 1,
      a: note,
      b: other.notes[at] as string,
      by: (b.mode.semitones[at] as number) - (a.mode.semitones[at] as number),
    })),
    moved: movedDegrees(a.mode.semitones, b.mode.semitones),
    distance: distanceBetween(a.mode.semitones, b.mode.semitones),
    shared: commonCount(setOf(pitchClassesOf(one)), setOf(pitchClassesOf(other))),
  };
}

export function route(from: ModeEntry, to: ModeEntry, root: Root) {
  const steps = routeBetween(from.mode, to.mode, modePreference);
  return {
    root: root.name,
    from: from.slug,
    to: to.slug,
    distance: steps.length - 1,
    steps: steps.map(({ mode, moved }) => ({ ...withNotes(spell(mode, root)), moved: moved ?? null })),
  };
}

/** What a scale must hold, and which of those that do are asked for. */
export interface HoldingQuery {
  readonly notes: readonly NoteName[];
  readonly chords: readonly SymbolChord[];
  readonly root: Root | undefined;
  readonly span: Span;
}

export function search({ notes: alone, chords, root, span }: HoldingQuery, address: Address) {
  const notes = [...alone, ...chords.flatMap((one) => one.notes)];
  const asked = new Map(
    [...Map.groupBy(notes, pitchClassOfNote)].map(([at, [first]]) => [at, nameOf(first as NoteName)]),
  );
  const found = scalesHolding(notes, modePreference).filter(
    ({ scale: { root: other } }) => root === undefined || other.pitchClass === root.pitchClass,
  );
  return {
    asked: [...asked.values()],
    ...(chords.length > 0 && {
      chords: chords.map(({ symbol, notes: held }) => ({ symbol, notes: held.map(nameOf) })),
    }),
    total: found.length,
    ...pageOf(address, found.length, span),
    matches: partOf(found, span).map(({ scale: match, missing, extra }) => ({
      ...withNotes(match),
      missing: missing.map((at) => asked.get(at) as string),
      extra,
    })),
  };
}

function nameOf({ letterIndex, alteration }: NoteName): string {
  return formatNote(letterIndex, alteration);
}

function named(one: Scale) {
  return { name: scaleName(one), mode: modeEntryOf(one.mode).slug, root: one.root.name };
}

function withNotes(one: Scale) {
  return { ...named(one), notes: one.notes };
}

function chord({ degree, notes, kind }: DegreeChord) {
  const separator = kind.startsWith('1') ? ' ' : '';
  return { degree, name: `${notes[0]}${separator}${kind === 'maj' ? '' : kind}`, kind, notes };
}
