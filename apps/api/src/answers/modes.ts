/**
 * Answers about families and modes, without a root.
 */
import { CATALOGUE, type FamilyEntry, familyEntryOf, type ModeEntry, searchModes } from '@stillroot/catalog';

export function families() {
  return { total: CATALOGUE.families.length, families: CATALOGUE.families.map(family) };
}

export function family(entry: FamilyEntry) {
  const { id, slug, name, aliases } = entry;
  return { id, slug, name, aliases, steps: [...id].map(Number), modes: entry.modes.map(modeSummary) };
}

export function modes(search: {
  name?: string | undefined;
  contains?: readonly string[] | undefined;
  limit: number;
}) {
  const { name, contains, limit } = search;
  const found = searchModes({
    limit,
    ...(name !== undefined && { name }),
    ...(contains !== undefined && { contains }),
  });
  return {
    total: found.length,
    modes: found.map((entry) => ({ ...modeSummary(entry), family: familyPlace(entry) })),
  };
}

export function mode(entry: ModeEntry) {
  const { steps, semitones, formula, brightness, base, systematicName, id } = entry.mode;
  return {
    id,
    slug: entry.slug,
    name: entry.name,
    systematicName,
    aliases: entry.aliases,
    names: entry.names.map(({ name, sources, tradition, isRecalled }) => ({
      name,
      sources: sources.map(({ author, title, year }) => [author, title, year].filter(Boolean).join(', ')),
      ...(tradition !== undefined && { tradition }),
      recalled: isRecalled,
    })),
    steps,
    semitones,
    formula,
    brightness,
    family: familyPlace(entry),
    base,
  };
}

function modeSummary({ mode: { id, formula }, slug, name, degree, aliases }: ModeEntry) {
  return { id, slug, name, degree, formula, aliases };
}

function familyPlace(entry: ModeEntry) {
  const { id, slug, name } = familyEntryOf(entry.mode);
  return { id, slug, name, degree: entry.degree };
}
