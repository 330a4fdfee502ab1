/**
 * Making the catalogue plain, for pages that carry it to the browser.
 */
import type { Catalogue, InstrumentEntry } from './entries.ts';
import type { PlainCatalogue, PlainInstrument } from './plain-types.ts';

/** The catalogue as a value that JSON can hold. */
export function plainCatalogue(catalogue: Catalogue): PlainCatalogue {
  return {
    families: catalogue.families.map(({ slug, name, modes }) => ({
      slug,
      name,
      modes: modes.map(({ mode }) => mode.id),
    })),
    modes: catalogue.modes.map(({ mode, slug, name }) => ({ id: mode.id, slug, name })),
    instruments: catalogue.instruments.map(plainInstrument),
  };
}

/** One instrument as a value that JSON can hold. */
export function plainInstrument(entry: InstrumentEntry): PlainInstrument {
  return {
    id: entry.id,
    name: entry.name,
    kind: entry.kind,
    aliases: entry.aliases,
    scaleLengthMm: entry.scaleLengthMm,
    frets: entry.frets,
    handFrame: entry.handFrame,
    ...(entry.partialFrets === undefined ? {} : { partialFrets: entry.partialFrets }),
    shortStrings: entry.shortStrings,
    soundingMinusWrittenSemitones: entry.soundingMinusWrittenSemitones,
    midiProgram: entry.midiProgram,
    tunings: entry.tunings.map(({ id, name, courses }) => ({
      id,
      name,
      courses: courses.map((course) => course.map((pitch) => pitch.name).join('/')),
    })),
  };
}
