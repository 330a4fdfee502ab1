/**
 * Namen von Modi, Skalen und Instrumenten. German. The church modes are called so in German textbooks; minor
 * and major scales as German books of jazz and guitar write them (Sikora, Neue Jazz-Harmonielehre; Haunschild,
 * Die neue Harmonielehre; both recalled): `Harmonisch Moll`, which is the same in every case, so that names
 * can be put after any preposition. Names of single modes follow the English ones (common practice, no source).
 */
import type * as English from '../en/names.ts';
import { signs } from '../signs.ts';

const CHURCH: Readonly<Record<string, string>> = {
  Ionian: 'Ionisch',
  Dorian: 'Dorisch',
  Phrygian: 'Phrygisch',
  Lydian: 'Lydisch',
  Mixolydian: 'Mixolydisch',
  Aeolian: 'Äolisch',
  Locrian: 'Lokrisch',
  Ultraphrygian: 'Ultraphrygisch',
  Ultralocrian: 'Ultralokrisch',
};

const NAMES: Readonly<Record<string, string>> = {
  major: 'Dur',
  minor: 'Moll',
  'natural minor': 'Natürlich Moll',
  'harmonic minor': 'Harmonisch Moll',
  'melodic minor': 'Melodisch Moll',
  'harmonic major': 'Harmonisch Dur',
  'melodic major': 'Melodisch Dur',
  'double harmonic': 'Doppelharmonisch',
  'double harmonic major': 'Doppelharmonisch Dur',
  'Neapolitan minor': 'Neapolitanisch Moll',
  'Neapolitan major': 'Neapolitanisch Dur',
  'Hungarian minor': 'Ungarisch Moll',
  'Hungarian major': 'Ungarisch Dur',
  'Romanian minor': 'Rumänisch Moll',
  'Romanian major': 'Rumänisch Dur',
  Persian: 'Persisch',
  Enigmatic: 'Enigmatisch',
  'Enigmatic descending': 'Enigmatisch abwärts',
  altered: 'Alteriert',
  'altered dominant': 'Alteriert dominant',
  'leading whole-tone': 'Ganztönig mit Leitton',
  'half diminished': 'Halbvermindert',
  'major Locrian': 'Lokrisch mit großer Terz',
  'super Locrian': 'Superlokrisch',
  'Phrygian dominant': 'Phrygisch dominant',
  'Lydian dominant': 'Lydisch dominant',
  'Locrian dominant': 'Lokrisch dominant',
  'Lydian augmented': 'Lydisch übermäßig',
  'Lydian augmented dominant': 'Lydisch übermäßig dominant',
  'Mixolydian augmented': 'Mixolydisch übermäßig',
  'Lydian minor': 'Lydisch Moll',
};

/** The name of a mode or a family, with signs: `Dorisch ♯4`. */
export const modeName: typeof English.modeName = (name) => {
  const [, words = name, degrees = ''] = /^(.*?)((?: (?:[b#]+|nat)[1-7])*)$/.exec(name) ?? [];
  return signs((NAMES[words] ?? CHURCH[words] ?? words) + degrees);
};

/** All ways in which the name of a mode or a family is written, the displayed one first; in prose it is declined. */
export const nameForms: typeof English.nameForms = (name) => {
  const shown = modeName(name);
  const inProse = shown.replace(
    /^(\p{Lu}\p{L}+(?:isch|lich)) (?=Moll|Dur)/u,
    (_, word: string) => `${word.toLowerCase()}es `,
  );
  return [...new Set([shown, inProse])];
};

/** The name of a mode on a root: `A Dorisch ♯4`; the two everyday ones as keys are named, `C-Dur` and `a-Moll`. */
export const scaleOn: typeof English.scaleOn = (rootName, name) => {
  const root = signs(rootName);
  if (name === 'major') return `${root}-Dur`;
  if (name === 'minor') return `${root.toLowerCase()}-Moll`;
  return `${root} ${modeName(name)}`;
};

const TRIADS: ReadonlyMap<string, (root: string) => string> = new Map([
  ['maj', (root) => `${root}-Dur`],
  ['min', (root) => `${root.toLowerCase()}-Moll`],
  ['dim', (root) => `${root} vermindert`],
  ['aug', (root) => `${root} übermäßig`],
]);

/** A chord on a root: triads in words, chords of four notes by the signs that are the same everywhere. */
export const chordName: typeof English.chordName = (rootName, kind) => {
  const root = signs(rootName);
  return TRIADS.get(kind)?.(root) ?? `${root}${kind.startsWith('1 ') ? ', Stufen' : ''} ${signs(kind)}`;
};

const INSTRUMENTS: Readonly<Record<string, string>> = {
  'guitar-6': 'sechssaitige Gitarre',
  'guitar-7': 'siebensaitige Gitarre',
  'guitar-8': 'achtsaitige Gitarre',
  'guitar-9': 'neunsaitige Gitarre',
  'guitar-12': 'zwölfsaitige Gitarre',
  'guitar-baritone': 'Baritongitarre',
  'guitar-tenor': 'Tenorgitarre',
  requinto: 'Requinto-Gitarre',
  'guitar-russian-7': 'russische siebensaitige Gitarre',
  'bass-4': 'viersaitiger Bass',
  'bass-5': 'fünfsaitiger Bass',
  'bass-6': 'sechssaitiger Bass',
  'bass-6-octave': 'sechssaitiger Bass in Gitarrenstimmung',
  'ukulele-soprano': 'Sopran-Ukulele',
  'ukulele-concert': 'Konzert-Ukulele',
  'ukulele-tenor': 'Tenor-Ukulele',
  'ukulele-baritone': 'Bariton-Ukulele',
  mandolin: 'Mandoline',
  mandola: 'Mandola',
  'octave-mandolin': 'Oktavmandoline',
  mandocello: 'Mandoloncello',
  'bouzouki-irish': 'irische Bouzouki',
  'bouzouki-greek-3': 'dreichörige griechische Bouzouki',
  'bouzouki-greek-4': 'vierchörige griechische Bouzouki',
  'cittern-modern': 'fünfchörige Cister',
  'cittern-renaissance': 'Renaissance-Cister',
  'banjo-5': 'fünfsaitiges Banjo',
  'banjo-tenor': 'Tenorbanjo',
  'banjo-plectrum': 'Plektrumbanjo',
  'banjo-ukulele': 'Banjo-Ukulele',
  'cuatro-venezolano': 'venezolanisches Cuatro',
  'cuatro-puertorriqueno': 'puerto-ricanisches Cuatro',
  'tres-cubano': 'kubanisches Tres',
  'vihuela-mexicana': 'mexikanische Vihuela',
  'balalaika-prima': 'Prim-Balalaika',
  'domra-3': 'dreisaitige Domra',
  'domra-4': 'viersaitige Domra',
  'lute-renaissance-6': 'sechschörige Renaissancelaute',
  'vihuela-renaissance': 'Renaissance-Vihuela',
  'dulcimer-mountain': 'Mountain Dulcimer',
  'dulcimer-stick': 'Stick Dulcimer',
};

/** The name of an instrument, as it stands within a sentence; those not listed are called alike. */
export const instrumentName: typeof English.instrumentName = ({ id, name }) => INSTRUMENTS[id] ?? name;

/** How players speak of them (common practice, no source). */
const ALIASES: Readonly<Record<string, readonly string[]>> = {
  'guitar-6': [
    'Gitarre',
    'Sechssaiter',
    'E-Gitarre',
    'Konzertgitarre',
    'klassische Gitarre',
    'Westerngitarre',
    'Akustikgitarre',
  ],
  'guitar-7': ['Siebensaiter'],
  'guitar-8': ['Achtsaiter'],
  'guitar-9': ['Neunsaiter'],
  'guitar-12': ['Zwölfsaiter'],
  'bass-4': ['Bass', 'E-Bass', 'Bassgitarre', 'Viersaiter'],
  'bass-5': ['Fünfsaiter'],
  'bass-6': ['sechssaitige Bassgitarre'],
  'ukulele-soprano': ['Ukulele'],
  'bouzouki-greek-3': ['Bouzouki'],
  'cittern-modern': ['Cister'],
  'lute-renaissance-6': ['Laute'],
  'domra-3': ['Domra'],
};

const NUMBER_WORDS: readonly (readonly [word: RegExp, digits: string])[] = [
  [/^(drei)(?=saitig|chörig)/i, '3'],
  [/^(vier)(?=saitig|chörig)/i, '4'],
  [/^(fünf)(?=saitig|chörig)/i, '5'],
  [/^(sechs)(?=saitig|chörig)/i, '6'],
  [/^(sieben)(?=saitig|chörig)/i, '7'],
  [/^(acht)(?=saitig|chörig)/i, '8'],
  [/^(neun)(?=saitig|chörig)/i, '9'],
  [/^(zwölf)(?=saitig|chörig)/i, '12'],
];

/** What else players call an instrument, also with figures for numbers: `7-saitige Gitarre`. */
export const instrumentAliases: typeof English.instrumentAliases = (instrument) => {
  const name = instrumentName(instrument);
  const inFigures = NUMBER_WORDS.flatMap(([word, digits]) =>
    word.test(name) ? [name.replace(word, `${digits}-`)] : [],
  );
  return [...(ALIASES[instrument.id] ?? []), ...inFigures];
};
