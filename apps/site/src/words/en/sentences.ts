/**
 * Sentences and phrases with something to fill in. Names are given as they are to stand in the text, and
 * may be links. British English.
 */
import { capitalised, counted, joined, numberWord, ordinal, ordinalWord } from './numbers.ts';

/** What is counted, one and several. */
export const NOUNS = {
  mode: ['mode', 'modes'],
  note: ['note', 'notes'],
  semitone: ['semitone', 'semitones'],
  step: ['step', 'steps'],
  tuning: ['tuning', 'tunings'],
  family: ['family', 'families'],
} as const;

/** `third mode` */
export function modeAt(degree: number): string {
  return `${ordinalWord(degree)} mode`;
}

/** `Dorian with a raised 4th; the fourth mode of the family harmonic minor.` */
export function placeInFamily(inWords: string, degree: number, family: string): string {
  return `${inWords}; the ${modeAt(degree)} of the family ${family}.`;
}

/** `The fourth mode of E harmonic minor` */
export function placeInParent(degree: number, parent: string): string {
  return `The ${modeAt(degree)} of ${parent}`;
}

/** `The parent scale of the family harmonic minor` */
export function placeOfParent(family: string): string {
  return `The parent scale of the family ${family}`;
}

/** `The fourth mode of E harmonic minor; in the round of harmonic minor from A.` */
export function withRound(place: string, family: string, root: string, path: string): string {
  return `${place}; in <a href="${path}">the round of ${family} from ${root}</a>.`;
}

/** A scale and how many of its seven notes another has. */
export interface NotesShared {
  readonly count: number;
  readonly name: string;
}

/** `six notes in common with A Dorian, all seven with E harmonic minor` */
export function notesShared(scales: readonly NotesShared[]): string {
  return scales
    .map(({ count, name }, at) => {
      const notes = count === 7 ? 'all seven' : numberWord(count);
      return `${notes}${at === 0 ? ' notes in common' : ''} with ${name}`;
    })
    .join(', ');
}

/** `on A` */
export function onRoot(root: string): string {
  return `on ${root}`;
}

/** `Read from Dorian` */
export function derivedFrom(base: string): string {
  return `Read from ${base}`;
}

/** `Harmonic minor, a family of modes` */
export function familyTitle(name: string): string {
  return `${name}, a family of modes`;
}

/** What a family's page says, in one sentence. */
export function familyDescription(name: string, modes: readonly string[]): string {
  return `The family of ${name}: its seven modes, ${joined(modes)}.`;
}

/** What a round's page says, in one sentence. */
export function roundDescription(title: string, root: string): string {
  return `${title}: its seven modes on ${root}, in one area of the neck, with the notes that move between them.`;
}

/** What an instrument's page says, in one sentence. */
export function instrumentDescription(name: string, tunings: number): string {
  return `${name}: ${counted(tunings, ...NOUNS.tuning)}, its neck and its notes, and rounds to play on it.`;
}

/** How much moves in an order of the seven modes. */
export function movedInAll(notes: number, semitones: number): string {
  return `${counted(notes, ...NOUNS.note)} moved in all, by ${counted(semitones, ...NOUNS.semitone)}.`;
}

/** Which modes of a family are the brightest and the darkest. */
export function brightAndDark(brightest: string, darkest: string): string {
  return `The brightest of them is ${brightest}; the darkest is ${darkest}.`;
}

/** `Dorian and Phrygian` */
export function pairName(first: string, second: string): string {
  return `${first} and ${second}`;
}

/** `From Dorian to Phrygian: 2 falls a semitone.` */
export function movesFromTo(first: string, second: string, moves: string): string {
  return `From ${first} to ${second}: ${moves}.`;
}

/** `From A Dorian to A Phrygian: 2 falls a semitone (B → B♭); six notes in common.` */
export function againstFirst(first: string, other: string, what: string, inCommon: number): string {
  const notes = inCommon === 1 ? 'note' : 'notes';
  return `From ${first} to ${other}: ${what}; ${numberWord(inCommon)} ${notes} in common.`;
}

/** `Lydian to Locrian`, in a list of routes */
export function routeName(from: string, to: string): string {
  return capitalised(`${from} to ${to}`);
}

/** `From Lydian to Locrian on A` */
export function routeOn(from: string, to: string, root: string): string {
  return `From ${from} to ${to} on ${root}`;
}

/** What a strip shows: the degrees of a mode on the semitones of an octave, and its steps. */
export function stripWords(semitones: readonly number[], steps: readonly number[]): string {
  return `Degrees on semitones ${semitones.join(' ')}; steps ${steps.join(' ')}`;
}

/** Where a mode stands on the map: `4th mode of harmonic minor, brightness −1` */
export function mapPlace(degree: number, family: string, brightness: string): string {
  return `${ordinal(degree)} mode of ${family}, brightness ${brightness}`;
}

/** `Steps of 1 and 2 semitones: 2 2 2 2 2 1 1` */
export function stepsOf(sizes: readonly string[], all: string): string {
  return `Steps of ${joined(sizes)} semitones: ${all}`;
}

/** `7 scales found.` */
export function found(what: string): string {
  return `${what} found.`;
}

/** A source that was cited from memory. */
export const FROM_MEMORY = ', from memory';

/** `The 12 best known of 34.` */
export function bestKnownOf(shown: number, all: number): string {
  return `The ${shown} best known of ${all}.`;
}
