/**
 * The search: from what was typed to what is found, all in the browser.
 */
import {
  invariant,
  type Mode,
  modesFrom,
  type NoteName,
  type Root,
  relativeScales,
  type Scale,
  scalesHolding,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import type { Naming } from '../words/note-names.ts';
import { type Asked, type AskedDegree, askedBy, LONGEST_TEXT, rootIn, withoutRoot } from './asked.ts';
import { type Found, findByName, type Looseness } from './names.ts';
import { placedIn } from './placed.ts';
import { type Reading, readingsOf } from './readings.ts';
import type { StoredFamily } from './search-file.ts';
import { type InstrumentHit, preferenceOf, type SearchIndex } from './search-index.ts';
import { withoutFret } from './with-fret.ts';
import { partings } from './with-instrument.ts';
import { wordsOf } from './words-of.ts';

/** A mode that was found, perhaps on a root. */
export interface ModeHit {
  readonly mode: Mode;
  readonly scale: Scale | undefined;
  /** The name by which it was found, where that is not the displayed one. */
  readonly alias: string | undefined;
  /** Notes or degrees that were asked for and are not in it. */
  readonly missing: number;
}

/** Everything that was found, each list best first. */
export interface SearchResult {
  readonly asked: Asked;
  readonly modes: readonly ModeHit[];
  readonly families: readonly StoredFamily[];
  readonly instruments: readonly InstrumentHit[];
  /** The instrument that the modes are wanted on, where one was named beside them. */
  readonly on?: InstrumentHit;
  /** The fret that they are wanted from, where one was named. */
  readonly fret?: number;
  /** The text with its notes in English names, where it was read in others. */
  readonly inEnglish?: string;
  /** What to type for the English B, where a B was taken for B flat. */
  readonly withEnglishB?: string;
}

/** What leads to the family of a round, in every language. */
const ROUND_OF = /^\s*(?:(?:the|die|la)\s+)?(?:round\s+of|runde\s+von|ronda\s+de)\s+/i;

/** Open strings are these very notes, not others that begin alike. */
const SLIGHTLY_OFF = 0.5;

/**
 * Finds what a text asks for, from a fret where it names one.
 * @param naming how its reader names notes; what then means nothing is read in English names
 */
export function search(text: string, index: SearchIndex, naming: Naming = 'english'): SearchResult {
  const { text: typed, fret } = withoutFret(text.slice(0, LONGEST_TEXT));
  // Rounds are found by their family.
  const readings = readingsOf(typed.replace(ROUND_OF, ''), naming);
  const result = searchReadings(readings, index, naming);
  return fret === undefined ? result : { ...result, fret };
}

/** A place in a family, else what is typed, or a scale and an instrument, or with slips forgiven. */
function searchReadings(readings: readonly Reading[], index: SearchIndex, naming: Naming): SearchResult {
  const each = <T extends SearchResult | undefined>(find: (text: string) => T): T[] =>
    readings.map(({ text, withEnglishB, isOwn }) => {
      const result = find(text);
      return (
        result && {
          ...result,
          ...(isOwn && { inEnglish: text }),
          ...(withEnglishB !== undefined && { withEnglishB }),
        }
      );
    });
  const forgiving = (looseness: Looseness): SearchResult | undefined =>
    firstOf(each((text) => searchAll(text, index, looseness))) ??
    each((text) => searchOnInstrument(text, index, looseness)).find((result) => result !== undefined);
  return (
    each((text) => searchPlace(text, index)).find((result) => result !== undefined) ??
    // A text that may say two things is better taken as the one in which nothing must be forgiven.
    (naming === 'english' ? undefined : forgiving('none')) ??
    forgiving('few') ??
    firstOf(each((text) => searchAll(text, index, 'more'))) ??
    searchAll(readings[0]?.text ?? '', index, 'none')
  );
}

/** Scales as its notes are read, or what is found as it stands: that is more likely words than a note and words. */
function firstOf(results: readonly SearchResult[]): SearchResult | undefined {
  return (
    results.find(({ modes, families }) => modes.length + families.length > 0) ?? results.findLast(isFound)
  );
}

/**
 * The one mode that a text means, by slug, steps, formula or name, and the root where it names one.
 * @returns undefined where it means none
 */
export function modeMeant(
  text: string,
  index: SearchIndex,
  naming: Naming = 'english',
): { readonly mode: Mode; readonly root: Root | undefined } | undefined {
  const bySlug = UNIVERSE.modes[index.file.modes.findIndex(([, slug]) => slug === text)];
  if (bySlug) return { mode: bySlug, root: undefined };
  const [hit] = search(text, index, naming).modes;
  return hit && { mode: hit.mode, root: hit.scale?.root };
}

/** Where a text names a scale and an instrument, the scale on that instrument; one on a root before others. */
function searchOnInstrument(
  typed: string,
  index: SearchIndex,
  looseness: Looseness,
): SearchResult | undefined {
  const found = partings(typed).flatMap(({ scale, instrument }): SearchResult[] => {
    const [on] = findByName(wordsOf(instrument), index.instruments, looseness);
    if (!on) return [];
    const result = searchAll(scale, index, looseness);
    const isScale = result.asked.for !== 'notes' && result.modes.length > 0;
    const families = result.asked.root ? result.families : [];
    return isScale ? [{ ...result, families, instruments: [], on: on.value }] : [];
  });
  return found.find(({ asked }) => asked.root) ?? found[0];
}

/** The mode at a place of a family: on its own root, or where it lies in a parent whose root was told. */
function searchPlace(typed: string, index: SearchIndex): SearchResult | undefined {
  const placed = placedIn(typed);
  if (!placed) return undefined;
  const { root: parentRoot, rest } = withoutRoot(placed.parent);
  const [family] = findByName(rest, index.families);
  const [sibling] = family ? [] : findByName(rest, index.modes);
  const head = family ? UNIVERSE.modes[family.value[0]] : sibling?.value;
  if (!head) return undefined;
  const root = rootIn(placed.apart[0]);
  const parent = parentRoot && relativeScales(spell(head, parentRoot))[placed.place - 1];
  const mode = modesFrom(head)[placed.place - 1];
  invariant(mode !== undefined, 'a family has seven places');
  return {
    asked: { for: 'name', words: wordsOf(typed), root: root ?? parent?.root },
    modes: [hitOf(mode, root ?? parent?.root)],
    families: family ? [family.value] : [],
    instruments: [],
  };
}

function isFound({ modes, families, instruments }: SearchResult): boolean {
  return modes.length + families.length + instruments.length > 0;
}

function searchAll(typed: string, index: SearchIndex, looseness: Looseness): SearchResult {
  const text = withoutOctaves(typed);
  const asked = askedBy(text);
  const nothing = { asked, modes: [], families: [], instruments: [] };
  if (asked.for === 'name') return byName(text, asked.words, asked, index, looseness);
  if (asked.for === 'notes') {
    const tunings = findByName([wordsOf(text).join('')], index.instruments)
      .filter(({ off }) => off < SLIGHTLY_OFF)
      .map(({ value }) => value);
    return { ...nothing, modes: holding(asked.notes, index), instruments: tunings };
  }
  const modes = asked.for === 'steps' ? [modeOfSteps(asked.steps)] : havingDegrees(asked.degrees, index);
  return { ...nothing, modes: modes.map((mode) => hitOf(mode, asked.root)) };
}

/** Open strings may be typed with their octaves, `B0-E1-A1-D2-G2`; they are looked for without. */
function withoutOctaves(text: string): string {
  const areOpenStrings = /^\s*(?:[a-g][#b♯♭]?\d[\s,-]*){3,}$/i.test(text);
  return areOpenStrings ? text.replaceAll(/\d/g, '') : text;
}

function byName(
  text: string,
  words: readonly string[],
  asked: Asked,
  index: SearchIndex,
  looseness: Looseness,
): SearchResult {
  return {
    asked,
    modes: findByName(words, index.modes, looseness).map((found) => nameHit(found, asked.root, index)),
    families: findByName(words, index.families, looseness).map(({ value }) => value),
    // What could be a root may be a part of an instrument's name: `low B`.
    instruments: findByName(wordsOf(text), index.instruments, looseness).map(({ value }) => value),
  };
}

function nameHit({ value, name }: Found<Mode>, root: Root | undefined, { file }: SearchIndex): ModeHit {
  return { ...hitOf(value, root), alias: name === file.modes[value.index]?.[2] ? undefined : name };
}

function hitOf(mode: Mode, root: Root | undefined): ModeHit {
  return { mode, scale: root && spell(mode, root), alias: undefined, missing: 0 };
}

function holding(notes: readonly NoteName[], index: SearchIndex): readonly ModeHit[] {
  const welcome = (mode: Mode): number => preferenceOf(index, mode) * 10 - mode.base.moved.length;
  return scalesHolding(notes, welcome).map(({ scale, missing }) => ({
    mode: scale.mode,
    scale,
    alias: undefined,
    missing: missing.length,
  }));
}

function modeOfSteps(steps: readonly number[]): Mode {
  const mode = UNIVERSE.modesById.get(steps.join(''));
  invariant(mode !== undefined, 'seven steps that sum to twelve make a mode');
  return mode;
}

/**
 * Modes that sound all the degrees; those that also write them so come first, then the better known, then
 * those with the fewest other degrees altered.
 */
function havingDegrees(degrees: readonly AskedDegree[], index: SearchIndex): readonly Mode[] {
  const written = ({ semitones }: Mode): number =>
    degrees.filter(({ degree, semitones: asked }) => degree && semitones[degree - 1] === asked).length;
  return UNIVERSE.modes
    .filter(({ semitones }) => degrees.every(({ semitones: asked }) => semitones.includes(asked)))
    .toSorted(
      (a, b) =>
        written(b) - written(a) ||
        preferenceOf(index, b) - preferenceOf(index, a) ||
        alteredIn(a) - alteredIn(b),
    );
}

function alteredIn({ alterations }: Mode): number {
  return alterations.filter((alteration) => alteration !== 0).length;
}
