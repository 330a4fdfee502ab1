/**
 * Answers about instruments and their tunings.
 */
import { CATALOGUE, type InstrumentEntry } from '@stillroot/catalog';
import { openStringNames } from '@stillroot/core';

export function instruments() {
  return { total: CATALOGUE.instruments.length, instruments: CATALOGUE.instruments.map(instrument) };
}

export function instrument(entry: InstrumentEntry) {
  const {
    id,
    name,
    aliases,
    strings,
    scaleLengthMm,
    scaleLengthRangeMm,
    frets,
    handFrame,
    partialFrets,
    shortStrings,
  } = entry;
  return {
    id,
    name,
    aliases,
    strings,
    scaleLengthMm,
    scaleLengthRangeMm,
    frets,
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
  };
}
