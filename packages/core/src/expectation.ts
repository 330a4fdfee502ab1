/**
 * What would have been right where something typed was wrong: as data, so that it can be said in any language,
 * and in English words.
 */
import { type Reason, reasonInWords } from './fingering/reason.ts';

/** A span of numbers, both ends included. */
interface Span {
  readonly from: number;
  readonly to: number;
}

/** What would have been right. */
export type Expectation =
  /** A note: with or without its octave, in scientific or in Helmholtz notation; or one of the 21 roots. */
  | { readonly kind: 'root' | 'note' | 'pitch' | 'helmholtz-pitch' }
  /** A chord symbol. */
  | { readonly kind: 'chord' }
  /** Open strings: as many as a tuning may have, in one notation, from low to high. */
  | { readonly kind: 'string-count'; readonly most: number; readonly given: number }
  | { readonly kind: 'open-strings' | 'rising-strings' | 'one-notation' }
  | ({ readonly kind: 'semitones'; readonly tuning: string; readonly highestMidi: number } & Span)
  | { readonly kind: 'sounding-to'; readonly highest: string }
  /** A neck: its lengths, frets, strings and capo. */
  | { readonly kind: 'one-length' }
  | ({ readonly kind: 'length-mm' } & Span)
  | ({ readonly kind: 'fret-count' } & Span)
  | { readonly kind: 'first-fret'; readonly fret: number }
  | { readonly kind: 'capo-fret'; readonly highest: number }
  | { readonly kind: 'fret'; readonly highest: number }
  | { readonly kind: 'string-numbers'; readonly count: number }
  | { readonly kind: 'string-below-capo'; readonly fret: number }
  /** What is played: something that can be, of a length that can be written. */
  | { readonly kind: 'playable-round'; readonly reason: Reason }
  | { readonly kind: 'playable-fingering'; readonly reason?: Reason }
  /** Notes that a file of MusicXML can hold: its octaves end there. */
  | { readonly kind: 'musicxml-octaves' }
  | { readonly kind: 'notes' }
  | {
      readonly kind: 'piece-length';
      readonly mostNotes: number;
      readonly mostBars: number;
      readonly notes: number;
      readonly bars: number;
    }
  | ({ readonly kind: 'tempo' } & Span)
  | ({ readonly kind: 'meter'; readonly units: readonly number[] } & Span)
  | { readonly kind: 'vamp'; readonly most: number }
  | ({ readonly kind: 'whole-number' } & Span)
  | { readonly kind: 'one-of'; readonly choices: readonly string[] };

/** What would have been right, in English words. */
export function expectationInWords(expected: Expectation): string {
  switch (expected.kind) {
    case 'root':
      return 'one of the 21 roots: a letter from A to G, alone or with one b or # (F# may be written Fs)';
    case 'note':
      return 'a letter from A to G, then b or # (or s for #), such as A, Bb, F#';
    case 'pitch':
      return 'a note and its octave (middle C is C4), such as E2, F#1 or Bb3';
    case 'helmholtz-pitch':
      return "a note in Helmholtz notation, such as E, (which is E1), E (E2), e (E3) or e' (E4)";
    case 'chord':
      return 'a chord symbol, such as Am, E7, Bbmaj7, C#m7b5, Dsus4, G7(b9) or D/F#';
    case 'string-count':
      return `1 to ${expected.most} open strings, low to high, such as E2-A2-D3-G3-B3-E4; this has ${expected.given}`;
    case 'open-strings':
      return "open strings, low to high, in scientific (E2-A2-D3-G3-B3-E4), Helmholtz (E A d g b e') or letters (E A D G B E or EADGBE)";
    case 'rising-strings':
      return 'strings that each lie above the one before and end by G9, or octaves (E2-A2-D3)';
    case 'one-notation':
      return 'an octave number as at other strings here, such as E2: one notation for all strings';
    case 'semitones':
      return `a whole number of semitones from ${expected.from} to ${expected.to}, so that ${expected.tuning} stays within MIDI notes 0 to ${expected.highestMidi}`;
    case 'sounding-to':
      return `open strings whose last fret sounds no higher than ${expected.highest}`;
    case 'one-length':
      return 'one length or the lengths of the outer strings, not both';
    case 'length-mm':
      return `a length in millimetres from ${expected.from} to ${expected.to}`;
    case 'fret-count':
      return `a whole number of frets from ${expected.from} to ${expected.to}`;
    case 'first-fret':
      return `enough for the first fret of this neck, which is number ${expected.fret}`;
    case 'capo-fret':
      return `a fret of this neck from 0 (none) to ${expected.highest}`;
    case 'fret':
      return `a fret of this neck from 0 (the open strings) to ${expected.highest}`;
    case 'string-numbers':
      return `strings of this neck by number, 1 to ${expected.count}`;
    case 'string-below-capo':
      return `at least one string that reaches below fret ${expected.fret}`;
    case 'playable-round':
      return `a round that can be played: ${reasonInWords(expected.reason)}`;
    case 'playable-fingering':
      return `a fingering that can be played: ${expected.reason ? reasonInWords(expected.reason) : 'there is none'}`;
    case 'musicxml-octaves':
      return 'notes in the octaves 0 to 9, the only ones that MusicXML has';
    case 'notes':
      return 'a fingering of at least one note';
    case 'piece-length':
      return `a piece of at most ${expected.mostNotes} notes and ${expected.mostBars} bars; this has ${expected.notes} notes and ${expected.bars} bars`;
    case 'tempo':
      return `a number from ${expected.from} to ${expected.to}: beats a minute`;
    case 'meter':
      return `${expected.from} to ${expected.to} beats over ${expected.units.join(', ')}, such as 4/4 or 7/8`;
    case 'vamp':
      return `1 to ${expected.most} degrees from 1 to 7, such as 1,4`;
    case 'whole-number':
      return `a whole number from ${expected.from} to ${expected.to}`;
    case 'one-of':
      return `one of ${expected.choices.join(', ')}`;
  }
}
