/**
 * Nombres de modos, escalas e instrumentos. Spanish. The church modes and the minor and major scales are
 * called so in Spanish textbooks; names of single modes follow the English ones (common practice, no source).
 * Church modes are masculine, as «modo» is; scales are feminine, as «escala» is.
 */
import type * as English from '../en/names.ts';
import { signs } from '../signs.ts';

const CHURCH: Readonly<Record<string, string>> = {
  Ionian: 'jónico',
  Dorian: 'dórico',
  Phrygian: 'frigio',
  Lydian: 'lidio',
  Mixolydian: 'mixolidio',
  Aeolian: 'eólico',
  Locrian: 'locrio',
  Ultraphrygian: 'ultrafrigio',
  Ultralocrian: 'ultralocrio',
};

const NAMES: Readonly<Record<string, string>> = {
  major: 'mayor',
  minor: 'menor',
  'natural minor': 'menor natural',
  'harmonic minor': 'menor armónica',
  'melodic minor': 'menor melódica',
  'harmonic major': 'mayor armónica',
  'melodic major': 'mayor melódica',
  'double harmonic': 'doble armónica',
  'double harmonic major': 'doble armónica mayor',
  'Neapolitan minor': 'menor napolitana',
  'Neapolitan major': 'mayor napolitana',
  'Hungarian minor': 'menor húngara',
  'Hungarian major': 'mayor húngara',
  'Romanian minor': 'menor rumana',
  'Romanian major': 'mayor rumana',
  Persian: 'persa',
  Enigmatic: 'enigmática',
  'Enigmatic descending': 'enigmática descendente',
  altered: 'alterada',
  'altered dominant': 'alterada dominante',
  'leading whole-tone': 'tonos enteros con sensible',
  'half diminished': 'semidisminuida',
  'major Locrian': 'locrio mayor',
  'super Locrian': 'superlocrio',
  'Phrygian dominant': 'frigio dominante',
  'Lydian dominant': 'lidio dominante',
  'Locrian dominant': 'locrio dominante',
  'Lydian augmented': 'lidio aumentado',
  'Lydian augmented dominant': 'lidio aumentado dominante',
  'Mixolydian augmented': 'mixolidio aumentado',
  'Lydian minor': 'lidio menor',
};

/** The name of a mode or a family, with signs: `dórico ♯4`. */
export const modeName: typeof English.modeName = (name) => {
  const [, words = name, degrees = ''] = /^(.*?)((?: (?:[b#]+|nat)[1-7])*)$/.exec(name) ?? [];
  return signs((NAMES[words] ?? CHURCH[words] ?? words) + degrees);
};

/** All ways in which the name of a mode or a family is written, the displayed one first; of a mode it is masculine. */
export const nameForms: typeof English.nameForms = (name) => {
  const shown = modeName(name);
  return [...new Set([shown, shown.replace(/^((?:menor|mayor|doble) \p{L}+)a(?!\p{L})/u, '$1o')])];
};

/** The name of a mode on a root: `A dórico ♯4`. */
export const scaleOn: typeof English.scaleOn = (rootName, name) => `${signs(rootName)} ${modeName(name)}`;

const TRIADS: ReadonlyMap<string, string> = new Map([
  ['maj', 'mayor'],
  ['min', 'menor'],
  ['dim', 'disminuido'],
  ['aug', 'aumentado'],
]);

/** A chord on a root: triads in words, chords of four notes by the signs that are the same everywhere. */
export const chordName: typeof English.chordName = (rootName, kind) =>
  `${signs(rootName)}${kind.startsWith('1 ') ? ', grados' : ''} ${TRIADS.get(kind) ?? signs(kind)}`;

const INSTRUMENTS: Readonly<Record<string, string>> = {
  'guitar-6': 'guitarra de seis cuerdas',
  'guitar-7': 'guitarra de siete cuerdas',
  'guitar-8': 'guitarra de ocho cuerdas',
  'guitar-9': 'guitarra de nueve cuerdas',
  'guitar-12': 'guitarra de doce cuerdas',
  'guitar-baritone': 'guitarra barítono',
  'guitar-tenor': 'guitarra tenor',
  requinto: 'guitarra requinto',
  'guitar-russian-7': 'guitarra rusa de siete cuerdas',
  'bass-4': 'bajo de cuatro cuerdas',
  'bass-5': 'bajo de cinco cuerdas',
  'bass-6': 'bajo de seis cuerdas',
  'bass-6-octave': 'bajo de seis cuerdas en afinación de guitarra',
  'ukulele-soprano': 'ukelele soprano',
  'ukulele-concert': 'ukelele de concierto',
  'ukulele-tenor': 'ukelele tenor',
  'ukulele-baritone': 'ukelele barítono',
  mandolin: 'mandolina',
  'octave-mandolin': 'mandolina octava',
  mandocello: 'mandoloncelo',
  'bouzouki-irish': 'buzuki irlandés',
  'bouzouki-greek-3': 'buzuki griego de tres órdenes',
  'bouzouki-greek-4': 'buzuki griego de cuatro órdenes',
  'cittern-modern': 'cistro de cinco órdenes',
  'cittern-renaissance': 'cistro renacentista',
  'banjo-5': 'banjo de cinco cuerdas',
  'banjo-tenor': 'banjo tenor',
  'banjo-plectrum': 'banjo de púa',
  'banjo-ukulele': 'banjo-ukelele',
  'cuatro-venezolano': 'cuatro venezolano',
  'cuatro-puertorriqueno': 'cuatro puertorriqueño',
  'tres-cubano': 'tres cubano',
  'vihuela-mexicana': 'vihuela mexicana',
  'balalaika-prima': 'balalaica prima',
  'domra-3': 'domra de tres cuerdas',
  'domra-4': 'domra de cuatro cuerdas',
  'lute-renaissance-6': 'laúd renacentista de seis órdenes',
  'vihuela-renaissance': 'vihuela renacentista',
  'dulcimer-mountain': 'dulcémele de los Apalaches',
  'dulcimer-stick': 'dulcémele de mango',
};

/** The name of an instrument, as it stands within a sentence; those not listed are called alike. */
export const instrumentName: typeof English.instrumentName = ({ id, name }) => INSTRUMENTS[id] ?? name;

/** How players speak of them (common practice, no source). */
const ALIASES: Readonly<Record<string, readonly string[]>> = {
  'guitar-6': [
    'guitarra',
    'guitarra eléctrica',
    'guitarra acústica',
    'guitarra clásica',
    'guitarra española',
  ],
  'bass-4': ['bajo', 'bajo eléctrico', 'guitarra baja'],
  'ukulele-soprano': ['ukelele', 'ukulele'],
  'cittern-modern': ['cistro'],
  'domra-3': ['domra'],
  'banjo-5': ['banyo'],
  'bouzouki-greek-3': ['buzuki'],
  'dulcimer-mountain': ['dulcémele'],
  'balalaika-prima': ['balalaica'],
};

const NUMBER_WORDS: readonly (readonly [word: RegExp, digits: string])[] = [
  [/\btres(?= (?:cuerdas|órdenes))/, '3'],
  [/\bcuatro(?= (?:cuerdas|órdenes))/, '4'],
  [/\bcinco(?= (?:cuerdas|órdenes))/, '5'],
  [/\bseis(?= (?:cuerdas|órdenes))/, '6'],
  [/\bsiete(?= (?:cuerdas|órdenes))/, '7'],
  [/\bocho(?= (?:cuerdas|órdenes))/, '8'],
  [/\bnueve(?= (?:cuerdas|órdenes))/, '9'],
  [/\bdoce(?= (?:cuerdas|órdenes))/, '12'],
];

/** What else players call an instrument, also with figures for numbers: `guitarra de 7 cuerdas`. */
export const instrumentAliases: typeof English.instrumentAliases = (instrument) => {
  const name = instrumentName(instrument);
  const inFigures = NUMBER_WORDS.flatMap(([word, digits]) =>
    word.test(name) ? [name.replace(word, digits)] : [],
  );
  return [...(ALIASES[instrument.id] ?? []), ...inFigures];
};
