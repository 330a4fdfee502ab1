/**
 * Modes and families joined to their names.
 */
import { distanceBetween, type Family, invariant, type Mode, UNIVERSE } from '@stillroot/core';
import type { Filed } from './data-files.ts';
import type { Conflict, FamilyEntry, ModeEntry, Source } from './entries.ts';
import type { FamilyFile } from './family-file.ts';
import { mergeNamings, type Naming } from './mode-names.ts';
import { modeKey } from './name-key.ts';
import { slugOf } from './slug.ts';

/** What modes and families are built from. */
interface Ingredients {
  readonly families: readonly Filed<FamilyFile>[];
  readonly namings: readonly Naming[];
  readonly conflicts: readonly Conflict[];
  readonly sourcesById: ReadonlyMap<string, Source>;
}

/** Every family with its seven modes: the named ones in their order, then the simplest heads first. */
export function buildFamilies(ingredients: Ingredients): readonly FamilyEntry[] {
  const filesById = new Map(
    ingredients.families.map(({ value }) => [UNIVERSE.modesById.get(value.head)?.familyId ?? '', value]),
  );
  const namingsBySteps = Map.groupBy(ingredients.namings, ({ steps }) => steps);
  const entries = UNIVERSE.families.map((family) => {
    const file = filesById.get(family.id);
    const head = file ? family.modes.find(({ id }) => id === file.head) : simplestOf(family.modes);
    invariant(head !== undefined, `family ${family.id} has a head`);
    const modes = family.modes.map((_, at): ModeEntry => {
      const mode = family.modes[(head.rotation + at) % 7] as Mode;
      return buildMode(mode, at + 1, namingsBySteps.get(mode.id) ?? [], file, ingredients);
    });
    return buildFamily(family, modes, file);
  });
  const orders = new Map(ingredients.families.map(({ value }, at) => [value.slug, at]));
  return entries.toSorted(
    (a, b) =>
      (orders.get(a.slug) ?? orders.size) - (orders.get(b.slug) ?? orders.size) ||
      bySimplicity(a.head.mode, b.head.mode),
  );
}

function buildMode(
  mode: Mode,
  degree: number,
  namings: readonly Naming[],
  file: FamilyFile | undefined,
  { conflicts, sourcesById }: Ingredients,
): ModeEntry {
  const names = mergeNamings(namings, sourcesById);
  const named = file?.modes[degree - 1];
  const tradeName = named?.displaysSystematicName === true ? undefined : named?.names[0]?.name;
  const name = tradeName ?? mode.systematicName;
  const byKey = new Map(
    [...names.map((one) => one.name), mode.systematicName].map((one) => [modeKey(one), one]),
  );
  byKey.delete(modeKey(name));
  return {
    mode,
    slug: slugOf(name),
    name,
    names,
    aliases: [...byKey.values()],
    isTradeNamed: tradeName !== undefined,
    degree,
    conflicts: conflicts.filter(({ uses }) => uses.some((use) => use.mode === mode)),
  };
}

function buildFamily(family: Family, modes: readonly ModeEntry[], file: FamilyFile | undefined): FamilyEntry {
  const head = modes[0] as ModeEntry;
  return {
    family,
    id: family.id,
    slug: file?.slug ?? head.slug,
    name: file?.name ?? head.name,
    aliases: file?.aliases.map(({ name }) => name) ?? [],
    isTradeNamed: file !== undefined,
    isEveryday: file?.isEveryday ?? false,
    head,
    modes,
    ...(file?.note === undefined ? {} : { note: file.note }),
  };
}

function simplestOf(modes: readonly Mode[]): Mode | undefined {
  return modes.toSorted(bySimplicity)[0];
}

/** The fewest moved degrees from the base, then the least total movement, then the brightest. */
function bySimplicity(a: Mode, b: Mode): number {
  return (
    a.base.moved.length - b.base.moved.length ||
    totalMovement(a) - totalMovement(b) ||
    b.brightness - a.brightness ||
    a.index - b.index
  );
}

function totalMovement({ base }: Mode): number {
  return distanceBetween(
    base.moved.map(({ by }) => by),
    base.moved.map(() => 0),
  );
}
