/**
 * Sätze und Wendungen, in die etwas einzusetzen ist. German.
 */
import type * as English from '../en/sentences.ts';
import type { SameShape } from '../languages.ts';
import { counted, joined, numberWord, ordinal, ordinalWord } from './numbers.ts';

export const NOUNS: SameShape<typeof English.NOUNS> = {
  mode: ['Modus', 'Modi'],
  note: ['Ton', 'Töne'],
  semitone: ['Halbton', 'Halbtöne'],
  step: ['Schritt', 'Schritte'],
  tuning: ['Stimmung', 'Stimmungen'],
  family: ['Familie', 'Familien'],
};

export const modeAt: typeof English.modeAt = (degree) => `${ordinalWord(degree)}r Modus`;

export const placeInFamily: typeof English.placeInFamily = (inWords, degree, family) =>
  `${inWords}; der ${ordinalWord(degree)} Modus der Familie ${family}.`;

export const placeInParent: typeof English.placeInParent = (degree, parent) =>
  `Der ${ordinalWord(degree)} Modus von ${parent}`;

export const placeOfParent: typeof English.placeOfParent = (family) => `Die Stammskala der Familie ${family}`;

export const withRound: typeof English.withRound = (place, family, root, path) =>
  `${place}; in der <a href="${path}" hreflang="en">Runde „${family}“ auf ${root}</a>.`;

export const notesShared: typeof English.notesShared = (scales) =>
  scales
    .map(({ count, name }, at) => {
      if (count === 1) return at === 0 ? `ein Ton gemeinsam mit ${name}` : `einer mit ${name}`;
      const notes = count === 7 ? 'alle sieben' : numberWord(count);
      return at === 0 ? `${notes} Töne gemeinsam mit ${name}` : `${notes} mit ${name}`;
    })
    .join(', ');

export const onRoot: typeof English.onRoot = (root) => `auf ${root}`;

export const derivedFrom: typeof English.derivedFrom = (base) => `Abgeleitet von ${base}`;

export const familyTitle: typeof English.familyTitle = (name) => `${name}, eine Familie von Modi`;

export const familyDescription: typeof English.familyDescription = (name, modes) =>
  `Die Familie ${name} und ihre sieben Modi: ${joined(modes)}.`;

export const roundDescription: typeof English.roundDescription = (title, root) =>
  `${title}: ihre sieben Modi auf ${root} in einer Lage des Griffbretts, mit den Tönen, die sich dazwischen bewegen.`;

export const instrumentDescription: typeof English.instrumentDescription = (name, tunings) =>
  `${name}: ${counted(tunings, ...NOUNS.tuning)}, das Griffbrett mit seinen Tönen, und Runden zum Spielen.`;

export const movedInAll: typeof English.movedInAll = (notes, semitones) =>
  `Insgesamt ${notes === 1 ? 'bewegt sich' : 'bewegen sich'} ${counted(notes, ...NOUNS.note)}, um ${counted(semitones, ...NOUNS.semitone)}.`;

export const brightAndDark: typeof English.brightAndDark = (brightest, darkest) =>
  `Am hellsten ist ${brightest}, am dunkelsten ${darkest}.`;

export const pairName: typeof English.pairName = (first, second) => `${first} und ${second}`;

export const movesFromTo: typeof English.movesFromTo = (first, second, moves) =>
  `Von ${first} zu ${second}: ${moves}.`;

export const againstFirst: typeof English.againstFirst = (first, other, what, inCommon) =>
  `Von ${first} zu ${other}: ${what}; ${inCommon === 1 ? 'ein gemeinsamer Ton' : `${numberWord(inCommon)} gemeinsame Töne`}.`;

export const routeName: typeof English.routeName = (from, to) => `Von ${from} zu ${to}`;

export const routeOn: typeof English.routeOn = (from, to, root) => `${routeName(from, to)} auf ${root}`;

export const stripWords: typeof English.stripWords = (semitones, steps) =>
  `Stufen auf den Halbtönen ${semitones.join(' ')}; Schritte ${steps.join(' ')}`;

export const mapPlace: typeof English.mapPlace = (degree, family, brightness) =>
  `${ordinal(degree)} Modus der Familie ${family}, Helligkeit ${brightness}`;

export const stepsOf: typeof English.stepsOf = (sizes, all) =>
  `Schritte von ${joined(sizes)} ${sizes.length === 1 && sizes[0] === '1' ? 'Halbton' : 'Halbtönen'}: ${all}`;

export const found: typeof English.found = (what) => `${what} gefunden.`;

export const FROM_MEMORY: SameShape<typeof English.FROM_MEMORY> = ', aus dem Gedächtnis';

export const bestKnownOf: typeof English.bestKnownOf = (shown, all) =>
  `Die ${shown} bekanntesten von ${all}.`;
