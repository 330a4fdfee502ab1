/**
 * A scale and the fret that it is wanted from in one text: `A Dorian from fret 5`, `E Phrygian, 7th fret`.
 */

/** A text without the fret that it names. */
export interface WithoutFret {
  readonly text: string;
  /** The fret; undefined where none is named. */
  readonly fret: number | undefined;
}

const LEADS = String.raw`(?:(?:from|at|in|on|around|ab|am|im|bei|desde|en)\s+)?(?:(?:the|dem|el)\s+)?`;
const FRET = '(?:fret|bund|traste)';

/** The number after its noun or before it, in every language. */
const NAMED = [
  new RegExp(String.raw`(?:^|[\s,;]+)${LEADS}${FRET}\s*(\d{1,2})(?=[\s,;]|$)`, 'i'),
  new RegExp(String.raw`(?:^|[\s,;]+)${LEADS}(\d{1,2})(?:st|nd|rd|th|\.?º|\.)?\s+${FRET}(?=[\s,;]|$)`, 'i'),
];

/** Takes the fret out of a text; a second one stays. */
export function withoutFret(text: string): WithoutFret {
  for (const pattern of NAMED) {
    const found = pattern.exec(text);
    if (!found) continue;
    const [named, fret] = found;
    const [before, after] = [text.slice(0, found.index), text.slice(found.index + named.length)];
    return { text: `${before.trim()} ${after.trim()}`.trim(), fret: Number(fret) };
  }
  return { text, fret: undefined };
}
