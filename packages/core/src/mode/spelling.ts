/**
 * Spelling: a mode on a root uses each of the seven letters once, 462 × 21 = 9,702 scales. Where that takes
 * more than a double accidental there is a readable spelling too: letters may repeat, at most one
 * accidental each.
 */
import { MAJOR_SEMITONES, NATURAL_SEMITONES, pitchClassOf } from '../pitch/letter.ts';
import { formatNote } from '../pitch/note.ts';
import { sizeOf } from '../pitch/pitch-class-set.ts';
import { ROOTS, ROOTS_BY_PITCH_CLASS, type Root } from '../pitch/root.ts';
import { type Mode, UNIVERSE } from './universe.ts';

/** A mode on a root, spelled. */
export interface Scale {
  readonly mode: Mode;
  readonly root: Root;
  /** One name per letter, from the root: `A`, `B`, `C`, `D`, `E`, `F`, `G#`. */
  readonly notes: readonly string[];
  /** The same sounds for the eye; equal to `notes` where no more than a double accidental is needed. */
  readonly readable: readonly string[];
  /** Pitch classes of the seven degrees. */
  readonly pitchClasses: readonly number[];
}

/** The widest accidental that notation has a single sign for. */
const WIDEST_WRITTEN = 2;

/** For each letter, how far each degree of its natural major scale is altered: F has a B flat. */
const MAJOR_ALTERATIONS: readonly (readonly number[])[] = NATURAL_SEMITONES.map(
  (rootSemitones, letterIndex) =>
    MAJOR_SEMITONES.map((semitones, at) => {
      const sounding = pitchClassOf(rootSemitones + semitones);
      const natural = NATURAL_SEMITONES[(letterIndex + at) % 7] as number;
      return pitchClassOf(sounding - natural + 6) - 6;
    }),
);

const scales: (Scale | undefined)[] = new Array(UNIVERSE.modes.length * ROOTS.length);

/**
 * The scale of a mode on a root. Spelled the first time it is asked for, looked up after.
 * @example spell(aeolian, rootA).notes // A B C D E F G
 */
export function spell(mode: Mode, root: Root): Scale {
  const at = mode.index * ROOTS.length + root.index;
  let scale = scales[at];
  if (scale === undefined) {
    scale = spellAnew(mode, root);
    scales[at] = scale;
  }
  return scale;
}

/** As {@link spell}, without looking anything up. Plain loops: 9,702 of these are the cost of a cold start. */
export function spellAnew(mode: Mode, root: Root): Scale {
  const { alterations } = mode;
  const major = MAJOR_ALTERATIONS[root.letterIndex] as readonly number[];
  const notes: string[] = new Array(7);
  const pitchClasses = pitchClassesOn(mode, root.pitchClass);
  let isReadable = true;
  for (let at = 0; at < 7; at += 1) {
    const alteration = root.alteration + (alterations[at] as number) + (major[at] as number);
    if (alteration > WIDEST_WRITTEN || alteration < -WIDEST_WRITTEN) isReadable = false;
    notes[at] = formatNote((root.letterIndex + at) % 7, alteration);
  }
  return {
    mode,
    root,
    notes,
    readable: isReadable ? notes : readableNotes(mode, root, pitchClasses),
    pitchClasses,
  };
}

const pitchClassLists: (readonly number[] | undefined)[] = new Array(UNIVERSE.modes.length * 12);

/** The pitch classes of a mode above a pitch class; enharmonic twins share one list. */
function pitchClassesOn(mode: Mode, pitchClass: number): readonly number[] {
  const index = mode.index * 12 + pitchClass;
  const known = pitchClassLists[index];
  if (known) return known;
  const list: number[] = new Array(7);
  for (let at = 0; at < 7; at += 1) list[at] = (pitchClass + (mode.semitones[at] as number)) % 12;
  pitchClassLists[index] = list;
  return list;
}

/** Whether the strict spelling of a scale needs more than a double accidental. */
export function needsReadable(scale: Scale): boolean {
  return scale.readable !== scale.notes;
}

/**
 * The root, or its enharmonic twin where that is kinder: fewer notes beyond a double accidental, then fewer
 * accidentals in all. Between equals the root stays.
 * @example kindestRoot(ionian, aSharp).name // 'Bb'
 */
export function kindestRoot(mode: Mode, root: Root): Root {
  const twins = ROOTS_BY_PITCH_CLASS[root.pitchClass] as readonly Root[];
  return twins.reduce((best, twin) => (unkindness(mode, twin) < unkindness(mode, best) ? twin : best), root);
}

/** The kindest root of a pitch class for a mode; between equals the natural, then the flat. */
export function kindestRootOf(mode: Mode, pitchClass: number): Root {
  const twins = ROOTS_BY_PITCH_CLASS[pitchClass] as readonly Root[];
  const first = twins.find((root) => root.alteration === 0) ?? twins.find((root) => root.alteration < 0);
  return kindestRoot(mode, first ?? (twins[0] as Root));
}

/** Notes beyond a double accidental, then accidentals in all; a scale never has a hundred. */
function unkindness(mode: Mode, root: Root): number {
  const major = MAJOR_ALTERATIONS[root.letterIndex] as readonly number[];
  let rank = 0;
  for (let at = 0; at < 7; at += 1) {
    const size = Math.abs(root.alteration + (mode.alterations[at] as number) + (major[at] as number));
    rank += size > WIDEST_WRITTEN ? 100 + size : size;
  }
  return rank;
}

/**
 * White keys by their letter; each black key as the sharp below or the flat above, so that the fewest
 * letters repeat; between equals, on the side to which the degree is altered. The root keeps its name.
 */
function readableNotes(mode: Mode, root: Root, pitchClasses: readonly number[]): readonly string[] {
  let fixedLetters = 1 << root.letterIndex;
  const blackDegrees: number[] = [];
  // Bit n says that the n-th black key is a sharp: first as its degree leans, then as chosen.
  let leaning = 0;
  for (let at = 1; at < 7; at += 1) {
    const pitchClass = pitchClasses[at] as number;
    if (!isBlack(pitchClass)) {
      fixedLetters |= 1 << letterAtOrBelow(pitchClass);
      continue;
    }
    if ((mode.alterations[at] as number) > 0) leaning |= 1 << blackDegrees.length;
    blackDegrees.push(at);
  }
  // No choice can use more letters than there are notes, nor turn fewer than one once the leaning is left.
  const fewestRepeats = 7 - Math.min(7, sizeOf(fixedLetters) + blackDegrees.length);
  let chosen = leaning;
  let fewest = Number.POSITIVE_INFINITY;
  for (let turned = 0; turned < 1 << blackDegrees.length; turned += 1) {
    if (fewest <= fewestRepeats * 10 + 1) break;
    const choice = turned ^ leaning;
    let letters = fixedLetters;
    for (let bit = 0; bit < blackDegrees.length; bit += 1) {
      const below = letterAtOrBelow(pitchClasses[blackDegrees[bit] as number] as number);
      letters |= choice & (1 << bit) ? 1 << below : 2 << below;
    }
    const rank = (7 - sizeOf(letters)) * 10 + sizeOf(turned);
    if (rank < fewest) {
      fewest = rank;
      chosen = choice;
    }
  }
  const notes: string[] = new Array(7);
  notes[0] = root.name;
  for (let at = 1; at < 7; at += 1) notes[at] = formatNote(letterAtOrBelow(pitchClasses[at] as number), 0);
  for (let bit = 0; bit < blackDegrees.length; bit += 1) {
    const at = blackDegrees[bit] as number;
    const below = letterAtOrBelow(pitchClasses[at] as number);
    notes[at] = chosen & (1 << bit) ? formatNote(below, 1) : formatNote(below + 1, -1);
  }
  return notes;
}

/** The letter of each white key, and of the white key below each black one, by pitch class. */
const LETTERS_AT_OR_BELOW: readonly number[] = [0, 0, 1, 1, 2, 3, 3, 4, 4, 5, 5, 6];

function letterAtOrBelow(pitchClass: number): number {
  return LETTERS_AT_OR_BELOW[pitchClass] as number;
}

function isBlack(pitchClass: number): boolean {
  return NATURAL_SEMITONES[letterAtOrBelow(pitchClass)] !== pitchClass;
}
