/**
 * Where each mode lies on the map. A column is a family, from even steps to uneven ones; a row is a
 * brightness. No two modes share a place, since no two rotations of a family are equally bright; neighbours
 * are always one row apart; and the seven of every family lie about the row of Dorian: their brightnesses
 * sum to −14 whatever the family. (The seven sums of semitones hold each interval of each pair of notes
 * once with its complement, so they sum to 12 · 21 = 252, and those of the major scale do so too.)
 */
import { CATALOGUE, type FamilyEntry, familyEntryOf, type ModeEntry } from '@stillroot/catalog';
import { invariant, type Mode, UNIVERSE } from '@stillroot/core';

/** A family on the map. */
export interface MapColumn {
  readonly family: FamilyEntry;
  /** 0 to 65 from the left. */
  readonly column: number;
  /** From the brightest to the darkest. */
  readonly modes: readonly ModeEntry[];
  /** The family whose steps are these in reverse; itself for some. */
  readonly mirror: FamilyEntry;
}

/** Families whose steps are of the same sizes. */
export interface MapBand {
  /** The sizes in semitones, the largest first: `3222111`. */
  readonly sizes: string;
  readonly columns: readonly MapColumn[];
}

/** The brightest and the darkest row. */
export const BRIGHTEST: number = Math.max(...UNIVERSE.modes.map(({ brightness }) => brightness));
export const DARKEST: number = Math.min(...UNIVERSE.modes.map(({ brightness }) => brightness));

/** The row that every family lies about: that of Dorian. */
export const MIDDLE_BRIGHTNESS = -2;

/** All families in bands, from the most even steps to the most uneven; mirror images side by side. */
export const MAP_BANDS: readonly MapBand[] = layBands();

/** The family whose modes are those of another with their steps in reverse. */
export function mirrorOf(family: FamilyEntry): FamilyEntry {
  const reversed = UNIVERSE.modesById.get([...family.id].toReversed().join(''));
  invariant(reversed !== undefined, `the reverse of ${family.id} is a mode`);
  return familyEntryOf(reversed);
}

/** Whether a mode is read with lowered degrees, with raised ones, or with neither more than the other. */
export function leaning({ base }: Mode): 'lowered' | 'raised' | 'plain' {
  const sum = base.moved.reduce((all, { by }) => all + by, 0);
  if (sum === 0) return 'plain';
  return sum < 0 ? 'lowered' : 'raised';
}

function layBands(): readonly MapBand[] {
  const ordered = CATALOGUE.families.toSorted(
    (a, b) =>
      unevenness(a) - unevenness(b) ||
      spread(a) - spread(b) ||
      Math.min(...placesOfPair(a)) - Math.min(...placesOfPair(b)) ||
      placesOfPair(a)[0] - placesOfPair(b)[0],
  );
  const columns = ordered.map((family, column) => ({
    family,
    column,
    modes: family.modes.toSorted((a, b) => b.mode.brightness - a.mode.brightness),
    mirror: mirrorOf(family),
  }));
  const bySizes = Map.groupBy(columns, ({ family }) => sizesOf(family));
  return [...bySizes].map(([sizes, columnsOfBand]) => ({ sizes, columns: columnsOfBand }));
}

function sizesOf({ id }: FamilyEntry): string {
  return [...id].toSorted().toReversed().join('');
}

/** The sum of the squares of the steps: the least for steps as equal as seven can be. */
function unevenness({ id }: FamilyEntry): number {
  return [...id].reduce((sum, step) => sum + Number(step) ** 2, 0);
}

/** How far the modes of a family lie from the middle row. */
function spread({ modes }: FamilyEntry): number {
  return modes.reduce((sum, { mode }) => sum + (mode.brightness - MIDDLE_BRIGHTNESS) ** 2, 0);
}

/** Where a family and its mirror image stand in the catalogue, which begins with the best known. */
function placesOfPair(family: FamilyEntry): readonly [own: number, mirror: number] {
  return [CATALOGUE.families.indexOf(family), CATALOGUE.families.indexOf(mirrorOf(family))];
}
