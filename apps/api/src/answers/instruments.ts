/**
 * Answers about instruments and their tunings.
 */
import { CATALOGUE, type InstrumentEntry, searchInstruments } from '@stillroot/catalog';
import { openStringNames } from '@stillroot/core';
import type { Address } from '../address.ts';
import { pageOf, partOf, type Span } from '../paging.ts';

export function instruments(query: Span & { readonly q?: string | undefined }, address: Address) {
  const { q } = query;
  const total = CATALOGUE.instruments.length;
  const found = searchInstruments({ text: q ?? '', limit: total });
  return {
    total,
    foundTotal: found.length,
    ...pageOf(address, found.length, query),
    instruments: partOf(found, query).map(({ instrument: entry, tunings }) => ({
      ...instrument(entry),
      ...(q !== undefined && { found: tunings.map(({ id }) => id) }),
    })),
    notServed: CATALOGUE.notServed.map(({ id, name, aliases, reason }) => ({ id, name, aliases, reason })),
  };
}

export function instrument(entry: InstrumentEntry) {
  const {
    id,
    name,
    aliases,
    kind,
    strings,
    scaleLengthMm,
    scaleLengthRangeMm,
    frets,
    fretsRange,
    clef,
    soundingMinusWrittenSemitones,
    handFrame,
    partialFrets,
    shortStrings,
    recalled,
    note,
  } = entry;
  return {
    id,
    name,
    aliases,
    kind,
    strings,
    scaleLengthMm,
    scaleLengthRangeMm,
    frets,
    fretsRange,
    clef,
    soundingMinusWrittenSemitones,
    handFrame,
    ...(partialFrets && { partialFrets }),
    shortStrings,
    tunings: entry.tunings.map((tuning) => ({
      id: tuning.id,
      name: tuning.name,
      strings: openStringNames(tuning),
      courses: tuning.courses.map((course) => course.map((pitch) => pitch.name)),
      reentrant: tuning.isReentrant,
    })),
    sources: entry.sources.map(({ author, title, year }) => [author, title, year].filter(Boolean).join(', ')),
    recalled,
    ...(note !== undefined && { note }),
  };
}
