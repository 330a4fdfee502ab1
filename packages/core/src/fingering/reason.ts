/**
 * Why something cannot be played: as data, so that it can be said in any language, and in English words.
 */

/** Why a scale has no fingering, or why a round cannot be played or not by all seven. */
export type Reason =
  /** In a tuning, the frets of an instrument do not have these notes. */
  | { readonly kind: 'notes-missing'; readonly notes: readonly string[] }
  /** A fret was asked for that lies beyond the last. */
  | { readonly kind: 'beyond-the-neck'; readonly fret: number; readonly lastFret: number }
  /** In position: no octave lies anywhere, or in an area that begins at the fret. */
  | { readonly kind: 'no-octave'; readonly fret?: number }
  /** Two octaves, or the whole range: too little lies on the neck, or from the fret upwards. */
  | { readonly kind: 'no-two-octaves' | 'no-whole-octave'; readonly fret?: number }
  /** Along one string: none has an octave. */
  | { readonly kind: 'no-octave-on-a-string' }
  /** Three to a string: there is one string only. */
  | { readonly kind: 'one-string-only' }
  /** Three to a string: the open strings do not rise from one to the next. */
  | { readonly kind: 'strings-do-not-rise' }
  /** Three to a string: the neck ends before the scale does. */
  | { readonly kind: 'off-the-neck' }
  /** Three to a string: these frets of a string at once are wider than the hand. */
  | {
      readonly kind: 'too-wide';
      readonly string: number;
      readonly frets: readonly number[];
      readonly spanMm: number;
      readonly reachMm: number;
    }
  /** Three to a string: these frets of a string need more fingers, each in its place, than a hand has. */
  | { readonly kind: 'too-many-fingers'; readonly string: number; readonly frets: readonly number[] }
  /** Across the neck: some frets lie in no area that holds the scale. */
  | { readonly kind: 'gap-in-chain' }
  /** A round across the neck: that is a chain of areas for one scale. */
  | { readonly kind: 'chain-is-for-one-scale' }
  /** A round: each mode can be played, all seven in one area cannot. */
  | { readonly kind: 'no-shared-area' }
  /** A round: only so many can be played, since the neck lacks notes of the others. */
  | { readonly kind: 'modes-left-out'; readonly playable: number };

/** Every kind of reason, for those who read them by program. */
export const REASON_KINDS = [
  'notes-missing',
  'beyond-the-neck',
  'no-octave',
  'no-two-octaves',
  'no-whole-octave',
  'no-octave-on-a-string',
  'one-string-only',
  'strings-do-not-rise',
  'off-the-neck',
  'too-wide',
  'too-many-fingers',
  'gap-in-chain',
  'chain-is-for-one-scale',
  'no-shared-area',
  'modes-left-out',
] as const satisfies readonly Reason['kind'][];

/** A reason in English words, without a full stop, to be put after a colon. */
export function reasonInWords(reason: Reason): string {
  switch (reason.kind) {
    case 'notes-missing':
      return `in this tuning the frets of this instrument do not have ${reason.notes.join(', ')}`;
    case 'beyond-the-neck':
      return `this neck ends at fret ${reason.lastFret}, below fret ${reason.fret}`;
    case 'no-octave': {
      const where =
        reason.fret === undefined ? 'anywhere on this neck' : `in an area that begins at fret ${reason.fret}`;
      return `there is no octave from root to root ${where}`;
    }
    case 'no-two-octaves':
      return `there are no two octaves from root to root ${fromFret(reason.fret)}`;
    case 'no-whole-octave':
      return `there is no whole octave ${fromFret(reason.fret)}`;
    case 'no-octave-on-a-string':
      return 'no string has a whole octave of it from root to root';
    case 'one-string-only':
      return 'three to a string needs at least two strings';
    case 'strings-do-not-rise':
      return 'three to a string needs open strings that rise from one to the next, and these do not (the tuning is re-entrant or has two strings alike)';
    case 'off-the-neck':
      return 'three to a string runs off the neck from there';
    case 'too-wide':
      return `string ${reason.string} asks the hand to cover frets ${reason.frets.join(', ')} at once, ${reason.spanMm} mm; the reach is ${reason.reachMm} mm`;
    case 'too-many-fingers':
      return `string ${reason.string} asks for a finger of its own on each of frets ${reason.frets.join(', ')}, which no hand of this reach has`;
    case 'gap-in-chain':
      return 'some frets lie in no area that holds all notes of the scale between its lowest and its highest';
    case 'chain-is-for-one-scale':
      return 'across the neck is a chain of areas for one scale, and a round stays in one area';
    case 'no-shared-area':
      return 'no one area of this neck holds all seven modes from this root';
    case 'modes-left-out':
      return `only ${reason.playable} of the seven can be played: the others need notes that this neck does not have`;
  }
}

function fromFret(fret: number | undefined): string {
  return fret === undefined ? 'on this neck' : `from fret ${fret} upwards`;
}
