/**
 * Chord symbols: a root, a kind, a number, what is altered, added or left out, and a bass note.
 *
 * What each kind holds is that of MusicXML 4.0 (`kind-value`), but that a thirteenth has an eleventh only where
 * it is written (common practice, no source). The ways to write a kind are common practice, too: `m`, `min` or
 * `-`; `maj7`, `M7` or `Δ`; `dim` or `°`; `aug` or `+`; `m7b5` or `ø`.
 */
import { toAscii } from '../pitch/accidental.ts';
import { MAJOR_ALTERATIONS } from '../pitch/letter.ts';
import { type NoteName, parseNote } from '../pitch/note.ts';
import { fail, type Result, succeed } from '../problem.ts';

/** A chord that is called by a symbol. */
export interface SymbolChord {
  /** The symbol, with ASCII accidentals and without spaces about it. */
  readonly symbol: string;
  /** By degree from the root upwards, and spelled so; a bass note that is none of them comes last. */
  readonly notes: readonly NoteName[];
}

/** A degree, 1 to 13, and how many semitones it lies above that of the major scale. */
interface Part {
  readonly degree: number;
  readonly alteration: number;
}

/** How a quality is written, and its triad. */
const QUALITIES = {
  minor: ['[Mm]in|mi|m(?!a(?!dd))|-', parts([1, 0], [3, -1], [5, 0])],
  diminished: ['dim|o|°|º', parts([1, 0], [3, -1], [5, -1])],
  augmented: ['aug|\\+', parts([1, 0], [3, 0], [5, 1])],
  halfDiminished: ['ø|Ø', parts([1, 0], [3, -1], [5, -1])],
} as const;
type Quality = keyof typeof QUALITIES;
const NAMED = Object.keys(QUALITIES) as Quality[];
const MAJOR = parts([1, 0], [3, 0], [5, 0]);

const DEGREE = '(?:[2-7]|9|11|13)';
const CHANGE = `sus[24]?|[(,]?(?:(?:add|no|omit)[b#]?|[b#+-])${DEGREE}\\)?|[(,]${DEGREE}\\)?`;
/** A fifth alone is only of a chord without a quality: `C-5` lowers it. */
const SYMBOL = new RegExp(
  [
    '^(?<root>[A-Ga-g](?:bb?|##?|s(?!us))?)',
    `(?:(?<power>5)|(?:${NAMED.map((quality) => `(?<${quality}>${QUALITIES[quality][0]})`).join('|')})?`,
    '(?<major>\\(?(?:[Mm]aj|ma|M|Δ))?(?<number>6/?9|13|11|[679])?\\)?',
    `(?<changes>(?:${CHANGE})*))`,
    '(?:/(?<bass>[A-G](?:bb?|##?)?))?$',
  ].join(''),
);
/** Degrees written out, as chords without a usual name are called. */
const FORMULA = /^(?<root>[A-G](?:b*|#*)) (?<degrees>1(?: (?:b{0,5}|#{0,5})[2-7])+)$/;

/** No symbol is longer. */
const LONGEST_SYMBOL = 24;

/**
 * Reads a chord symbol.
 * @param field what to call the input in a problem
 * @example parseChord('Am7')     // A C E G
 * @example parseChord('C7(b9)')  // C E G Bb Db
 * @example parseChord('C 1 b3 bb5') // C Eb Gbb
 */
export function parseChord(text: string, field = 'chord'): Result<SymbolChord> {
  const symbol = toAscii(text.trim());
  const said = symbol.length > LONGEST_SYMBOL ? undefined : (FORMULA.exec(symbol) ?? SYMBOL.exec(symbol));
  if (!said?.groups) return fail(field, text, { kind: 'chord' });
  const { root: above = '', bass: below, degrees } = said.groups;
  const root = parseNote(above, field);
  if (!root.ok) return root;
  const held = degrees === undefined ? partsOf(said.groups) : partsWritten(degrees);
  const notes = held.map((part) => noteOf(root.value, part));
  if (below === undefined) return succeed({ symbol, notes });
  const bass = parseNote(below, field);
  if (!bass.ok) return bass;
  return succeed({
    symbol,
    notes: notes.some((note) => isSame(note, bass.value)) ? notes : [...notes, bass.value],
  });
}

/** What parts chords: commas, and spaces; but neither in parentheses nor before a degree (`C 1 b3 bb5`). */
const BETWEEN_CHORDS = /(?:,|\s+(?!\s|(?:b{1,5}|#{1,5})?[1-7](?:[\s,]|$)))(?![^(]*\))/;

/**
 * The words of a text that chord symbols would be, read or not.
 * @example chordSymbolsIn('Dm7, G7(b9,b13) Cmaj7') // Dm7 and G7(b9,b13) and Cmaj7
 */
export function chordSymbolsIn(text: string): readonly string[] {
  return text.split(BETWEEN_CHORDS).filter((symbol) => symbol !== '');
}

/** What a chord holds, from the groups of its symbol. */
function partsOf(groups: Readonly<Record<string, string | undefined>>): readonly Part[] {
  const { power, changes = '' } = groups;
  if (power !== undefined) return parts([1, 0], [5, 0]);
  const quality = NAMED.find((one) => groups[one] !== undefined);
  const triad = quality ? QUALITIES[quality][1] : MAJOR;
  const all = [...changes.matchAll(/sus[24]?|(?:add|no|omit)?[b#+-]?\d+/g)].reduce<readonly Part[]>(
    (held, [change]) => changed(held, change),
    [...triad, ...stackedOn(quality, groups)],
  );
  return all.toSorted((a, b) => a.degree - b.degree || a.alteration - b.alteration);
}

/** What a number stacks on a triad: a sixth, or thirds up to a seventh, ninth, eleventh or thirteenth. */
function stackedOn(
  quality: Quality | undefined,
  { major, number = '' }: Readonly<Record<string, string | undefined>>,
): readonly Part[] {
  if (number.startsWith('6')) return number === '6' ? parts([6, 0]) : parts([6, 0], [9, 0]);
  // A triangle alone is a major seventh, and a slashed circle a seventh; `maj` alone is a triad.
  if (number === '' && !major?.endsWith('Δ') && quality !== 'halfDiminished') return [];
  const seventh = major ? 0 : quality === 'diminished' ? -2 : -1;
  const upper = { '9': [9], '11': [9, 11], '13': [9, 13] }[number] ?? [];
  return parts([7, seventh], ...upper.map((degree) => [degree, 0] as const));
}

/** A chord with its third suspended, or with one degree altered, added or left out. */
function changed(held: readonly Part[], change: string): readonly Part[] {
  const degree = Number(/\d*$/.exec(change)?.[0]);
  if (change.startsWith('sus')) return [...without(held, 3), ...parts([degree || 4, 0])];
  if (/^(?:no|omit)/.test(change)) return without(held, degree);
  const alteration = /[b-]\d/.test(change) ? -1 : /[#+]\d/.test(change) ? 1 : 0;
  // It takes the place of the same degree unaltered, so that a flat and a sharp ninth may both be there.
  const others = held.filter((part) => part.degree !== degree || part.alteration !== 0);
  return [...others, { degree, alteration }];
}

function partsWritten(degrees: string): readonly Part[] {
  return degrees.split(' ').map((written) => {
    const size = written.length - 1;
    return { degree: Number(written.at(-1)), alteration: written.startsWith('b') ? -size : size };
  });
}

function noteOf(root: NoteName, { degree, alteration }: Part): NoteName {
  const at = (degree - 1) % 7;
  const ofMajor = MAJOR_ALTERATIONS[root.letterIndex]?.[at] as number;
  return { letterIndex: (root.letterIndex + at) % 7, alteration: root.alteration + ofMajor + alteration };
}

function without(held: readonly Part[], degree: number): readonly Part[] {
  return held.filter((part) => part.degree !== degree);
}

function parts(...pairs: readonly (readonly [number, number])[]): readonly Part[] {
  return pairs.map(([degree, alteration]) => ({ degree, alteration }));
}

function isSame(one: NoteName, other: NoteName): boolean {
  return one.letterIndex === other.letterIndex && one.alteration === other.alteration;
}
