/**
 * Vamps: two triads of a mode, in turn, that let its colour be heard.
 */
import { type DegreeChord, triadsOf } from '../harmony/chords.ts';
import { CHURCH_MODES, movedDegrees } from '../mode/base.ts';
import type { Scale } from '../mode/spelling.ts';

const [IONIAN] = CHURCH_MODES;
const AEOLIAN = CHURCH_MODES.find(({ name }) => name === 'Aeolian');

/** The chords that are heard most readily, then the others. */
const KINDS: readonly string[] = ['maj', 'min'];

/**
 * The degrees of a mode's vamp: the triad on 1, and the one that best tells the mode from plain major or
 * minor. That is, of the triads that hold a degree at which the mode differs from Ionian (where its third is
 * major) or Aeolian (where it is minor): a major one rather than a minor, those rather than others; then the
 * one with the most such degrees; then the lowest. Ionian and Aeolian themselves are told by 4 and by 6, at
 * which Lydian and Dorian differ from them.
 * @example vampDegrees(aDorian) // [1, 4]
 */
export function vampDegrees(scale: Scale): readonly number[] {
  const { semitones } = scale.mode;
  const isMajor = (semitones[2] as number) >= 4;
  const plain = (isMajor ? IONIAN : AEOLIAN)?.semitones ?? semitones;
  const moved = movedDegrees(plain, semitones).map(({ degree }) => degree);
  const telling = new Set(moved.length > 0 ? moved : [isMajor ? 4 : 6]);
  const [, ...others] = triadsOf(scale);
  const ranked = others
    .map((chord) => ({ chord, told: degreesOf(chord).filter((degree) => telling.has(degree)).length }))
    .filter(({ told }) => told > 0)
    .toSorted((a, b) => rankOf(a.chord) - rankOf(b.chord) || b.told - a.told);
  return [1, ...ranked.slice(0, 1).map(({ chord }) => chord.degree)];
}

/** The degrees of the scale that a chord is made of, from its root up. */
export function degreesOf({ degree, notes }: DegreeChord): readonly number[] {
  return notes.map((_, third) => ((degree - 1 + 2 * third) % 7) + 1);
}

function rankOf({ kind }: DegreeChord): number {
  const at = KINDS.indexOf(kind);
  return at < 0 ? KINDS.length : at;
}
