/**
 * A neck as MusicXML's tablature staff: its open strings, its capo, and how it numbers the frets. There,
 * fret numbers count from the open string, and a capo raises all strings; so that a note's pitch is its
 * string's tuning, plus the capo, plus the fret. What a neck has beyond that is said in words.
 */
import { formatMidi, type Neck, type NeckString, type PlayedNote } from '@stillroot/core';
import { type WrittenPitch, writtenPitch } from './written-pitch.ts';

/** A tablature staff. */
export interface TabStaff {
  /** What each string is tuned to, string 1 first. */
  readonly tuning: readonly WrittenPitch[];
  /** Semitones by which a capo over all strings raises them; 0 for none. */
  readonly capo: number;
  /** The number of a note's fret; undefined where it is no whole number. */
  readonly fretOf: (note: PlayedNote) => number | undefined;
  /** What the staff cannot show. */
  readonly remarks: readonly TabRemark[];
}

/** What a tablature staff cannot show: where a capo lies, and over which strings only; what courses consist of. */
export type TabRemark =
  | { readonly kind: 'capo'; readonly fret: number; readonly strings: readonly number[] | undefined }
  | { readonly kind: 'courses'; readonly courses: string };

/** A remark in English. */
export function remarkInWords(remark: TabRemark): string {
  if (remark.kind === 'courses') return `Courses ${remark.courses}: the first string of each is written`;
  const over = remark.strings ? `, over strings ${remark.strings.join(', ')} only` : '';
  return `Capo at fret ${remark.fret}${over}`;
}

/** The tablature staff of a neck. */
export function tabStaff(neck: Neck): TabStaff {
  const kind = capoKind(neck);
  const capo = kind === 'whole' ? neck.capoFret : 0;
  return {
    tuning: neck.strings.map((string) => stringTuning(neck, string, kind)),
    capo,
    fretOf: ({ string, fret }) => {
      if (!Number.isInteger(fret)) return undefined;
      if (kind === 'partial' && fret === 0) return neck.capoStrings.includes(string) ? neck.capoFret : 0;
      return fret === 0 ? 0 : fret - capo;
    },
    remarks: remarksOn(neck, kind),
  };
}

/**
 * Whole: over every string, on a neck with every fret. Partial: over some of the strings of such a neck.
 * Unwritten: on a neck that lacks frets, where no number counts semitones.
 */
type CapoKind = 'none' | 'whole' | 'partial' | 'unwritten';

function capoKind({ capoFret, capoStrings, strings, slots }: Neck): CapoKind {
  if (capoStrings.length === 0) return 'none';
  if (slots.some(({ fret, semitones }) => fret !== semitones)) return 'unwritten';
  return strings.every(({ startSlot }) => startSlot >= capoFret) ? 'whole' : 'partial';
}

function stringTuning(neck: Neck, { number, openMidi }: NeckString, kind: CapoKind): WrittenPitch {
  const principal = neck.tuning.courses[neck.strings.length - number]?.[0];
  const lowered =
    kind === 'whole' || (kind === 'partial' && neck.capoStrings.includes(number)) ? neck.capoFret : 0;
  const midi = openMidi - lowered;
  const name = (principal?.midi === midi ? principal.name : formatMidi(midi)).replace(/-?\d+$/, '');
  return writtenPitch(name, midi);
}

function remarksOn(neck: Neck, kind: CapoKind): readonly TabRemark[] {
  const { capoFret, capoStrings, tuning } = neck;
  const doubled = tuning.courses.filter((course) => course.length > 1);
  const courses = tuning.courses.map((course) => course.map(({ name }) => name).join('/')).join(' ');
  return [
    ...(kind === 'partial' ? [{ kind: 'capo', fret: capoFret, strings: capoStrings } as const] : []),
    ...(kind === 'unwritten' ? [{ kind: 'capo', fret: capoFret, strings: undefined } as const] : []),
    ...(doubled.length > 0 ? [{ kind: 'courses', courses } as const] : []),
  ];
}
