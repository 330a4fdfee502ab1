/**
 * Answers about instruments and their tunings.
 */
import { CATALOGUE, type InstrumentEntry, searchInstruments } from '@stillroot/catalog';
import { openStringNames } from '@stillroot/core';

export function instruments({ q, limit }: { readonly q?: string | undefined; readonly limit: number }) {
  const found = searchInstruments({ text: q ?? '', limit });
  return {
    total: CATALOGUE.instruments.length,
    instruments: found.map(({ instrument: entry, tunings }) => ({
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
