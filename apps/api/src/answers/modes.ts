/**
 * Answers about families and modes, without a root.
 */
import { CATALOGUE, type FamilyEntry, familyEntryOf, type ModeEntry, searchModes } from '@stillroot/catalog';
import type { Address } from '../address.ts';
import { pageOf, partOf, type Span } from '../paging.ts';

export function families(span: Span, address: Address) {
  const { families: all } = CATALOGUE;
  return {
    total: all.length,
    ...pageOf(address, all.length, span),
    families: partOf(all, span).map(family),
  };
}

export function family(entry: FamilyEntry) {
  const { id, slug, name, aliases } = entry;
  return { id, slug, name, aliases, steps: [...id].map(Number), modes: entry.modes.map(modeSummary) };
}

/** What modes are searched by. */
export interface ModesQuery extends Span {
  readonly name?: string | undefined;
  readonly contains?: readonly string[] | undefined;
}

export function modes(search: ModesQuery, address: Address) {
  const { name, contains } = search;
  const found = searchModes({
    limit: CATALOGUE.modes.length,
    ...(name !== undefined && { name }),
    ...(contains !== undefined && { contains }),
  });
  return {
    total: found.length,
    ...pageOf(address, found.length, search),
    modes: partOf(found, search).map((entry) => ({ ...modeSummary(entry), family: familyPlace(entry) })),
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
