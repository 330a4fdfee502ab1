/**
 * Spelling: a mode on a root uses each of the seven letters once, 462 × 21 = 9,702 scales. Where that takes
 * more than a double accidental there is a readable spelling too: letters may repeat, at most one
 * accidental each.
 */
import { MAJOR_ALTERATIONS, NATURAL_SEMITONES } from '../pitch/letter.ts';
import { formatNote, NOTE_NAMES, noteIndex } from '../pitch/note.ts';
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
}

/** The widest accidental that notation has a single sign for. */
const WIDEST_WRITTEN = 2;

/** For each root, where the names of the degrees of its major scale stand among all names. */
const MAJOR_NOTES: readonly (readonly number[])[] = ROOTS.map(({ letterIndex, alteration }) =>
  (MAJOR_ALTERATIONS[letterIndex] as readonly number[]).map((altered, at) =>
    noteIndex((letterIndex + at) % 7, altered + alteration),
  ),
);

/** A letter and the widest accidental. */
const LONGEST_WRITTEN = 1 + WIDEST_WRITTEN;

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
  const unaltered = MAJOR_NOTES[root.index] as readonly number[];
  const notes: string[] = new Array(7);
  let isReadable = true;
  for (let at = 0; at < 7; at += 1) {
    const name = NOTE_NAMES[(unaltered[at] as number) + (alterations[at] as number)] as string;
    if (name.length > LONGEST_WRITTEN) isReadable = false;
    notes[at] = name;
  }
  return { mode, root, notes, readable: isReadable ? notes : readableNotes(mode, root) };
}

const pitchClassLists: (readonly number[] | undefined)[] = new Array(UNIVERSE.modes.length * 12);

/** The pitch classes of the seven degrees of a scale. Enharmonic twins share one list. */
export function pitchClassesOf({ mode, root: { pitchClass } }: Scale): readonly number[] {
  const index = mode.index * 12 + pitchClass;
  const known = pitchClassLists[index];
  if (known) return known;
  const list = mode.semitones.map((semitones) => (pitchClass + semitones) % 12);
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
  let best = root;
  let least = unkindness(mode, root);
  for (const twin of ROOTS_BY_PITCH_CLASS[root.pitchClass] as readonly Root[]) {
    const rank = unkindness(mode, twin);
    if (rank >= least) continue;
    best = twin;
    least = rank;
  }
  return best;
}

/** The kindest root of a pitch class for a mode; between equals the natural, then the flat. */
export function kindestRootOf(mode: Mode, pitchClass: number): Root {
  return kindestRoot(mode, PLAINEST_ROOTS[pitchClass] as Root);
}

/** Of each pitch class the natural; where there is none, the flat. */
const PLAINEST_ROOTS: readonly Root[] = ROOTS_BY_PITCH_CLASS.map(
  (twins) =>
    twins.find((root) => root.alteration === 0) ??
    twins.find((root) => root.alteration < 0) ??
    (twins[0] as Root),
);

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
function readableNotes(mode: Mode, root: Root): readonly string[] {
  const { semitones, alterations } = mode;
  let fixedLetters = 1 << root.letterIndex;
  // Bit n stands for degree n + 1: whether it is a black key, and whether it leans to the sharp.
  let black = 0;
  let leaning = 0;
  for (let at = 1; at < 7; at += 1) {
    const pitchClass = (root.pitchClass + (semitones[at] as number)) % 12;
    if (!isBlack(pitchClass)) {
      fixedLetters |= 1 << letterAtOrBelow(pitchClass);
      continue;
    }
    black |= 1 << at;
    if ((alterations[at] as number) > 0) leaning |= 1 << at;
  }
  // No choice can use more letters than there are notes, nor turn fewer than one once the leaning is left.
  const fewestRepeats = 7 - Math.min(7, sizeOf(fixedLetters) + sizeOf(black));
  let chosen = leaning;
  let fewest = Number.POSITIVE_INFINITY;
  // Each part of the black keys in turn, from none of them to all.
  for (let turned = 0, left = 1 << sizeOf(black); left > 0; left -= 1, turned = (turned - black) & black) {
    if (fewest <= fewestRepeats * 10 + 1) break;
    const sharps = turned ^ leaning;
    let letters = fixedLetters;
    for (let at = 1; at < 7; at += 1) {
      if (!(black & (1 << at))) continue;
      const below = letterAtOrBelow((root.pitchClass + (semitones[at] as number)) % 12);
      letters |= sharps & (1 << at) ? 1 << below : 2 << below;
    }
    const rank = (7 - sizeOf(letters)) * 10 + sizeOf(turned);
    if (rank < fewest) {
      fewest = rank;
      chosen = sharps;
    }
  }
  const notes: string[] = new Array(7);
  notes[0] = root.name;
  for (let at = 1; at < 7; at += 1) {
    const below = letterAtOrBelow((root.pitchClass + (semitones[at] as number)) % 12);
    if (!(black & (1 << at))) notes[at] = formatNote(below, 0);
    else notes[at] = chosen & (1 << at) ? formatNote(below, 1) : formatNote(below + 1, -1);
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
