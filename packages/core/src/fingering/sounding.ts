/**
 * What sounds in the areas of a neck, as bits by MIDI number: worked out once for a neck, since every search
 * for a scale looks at all of them.
 */
import type { Neck } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import { type Area, areasOfWidth, markArea, newMarks, type OpenStrings } from './area.ts';

/** The areas of one width, and 128 bits for each of them. */
export interface Soundings {
  readonly areas: readonly Area[];
  readonly bits: Int32Array;
}

const WORDS = 4;
const WORD_BITS = 32;

/** By neck, use of open strings and width. */
const known = new WeakMap<Neck, Record<OpenStrings, Soundings[]>>();

/** What sounds in every area of `width` slots, in the order of {@link areasOfWidth}. */
export function soundings(neck: Neck, width: number, openStrings: OpenStrings): Soundings {
  const ofNeck = known.get(neck) ?? { 'near-the-nut': [], anywhere: [], never: [] };
  const made = ofNeck[openStrings][width] ?? listen(neck, width, openStrings);
  ofNeck[openStrings][width] = made;
  known.set(neck, ofNeck);
  return made;
}

/** The semitones above a root, as bits, that an octave of all the given scales takes, both roots included. */
export function octaveBits(scales: readonly Scale[]): number {
  let bits = 1 << 12;
  for (const { mode } of scales) for (const semitones of mode.semitones) bits |= 1 << semitones;
  return bits;
}

/** How many octaves on end sound in an area, from a root upwards. */
export function octavesFrom({ bits }: Soundings, area: number, octave: number, rootMidi: number): number {
  let octaves = 0;
  for (let midi = rootMidi; midi + 12 < WORDS * WORD_BITS; midi += 12) {
    const at = area * WORDS + (midi >>> 5);
    const shift = midi % WORD_BITS;
    let sounding = (bits[at] as number) >>> shift;
    // The octave goes on in the next word.
    if (shift + 12 >= WORD_BITS) sounding |= (bits[at + 1] as number) << (WORD_BITS - shift);
    if ((sounding & octave) !== octave) break;
    octaves += 1;
  }
  return octaves;
}

function listen(neck: Neck, width: number, openStrings: OpenStrings): Soundings {
  const areas = areasOfWidth(neck, width, openStrings);
  const bits = new Int32Array(areas.length * WORDS);
  const marks = newMarks();
  for (const [at, area] of areas.entries()) {
    markArea(neck, area, openStrings, marks);
    for (const [midi, mark] of marks.entries()) {
      const word = at * WORDS + (midi >>> 5);
      bits[word] = (bits[word] as number) | (mark << (midi % WORD_BITS));
    }
  }
  return { areas, bits };
}
