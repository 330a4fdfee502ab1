/**
 * Namen von Modi, Skalen und Instrumenten. German. The church modes and the minor and major scales are
 * called so in German textbooks; names of single modes follow the English ones (common practice, no source).
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
  'natural minor': 'natürliches Moll',
  'harmonic minor': 'harmonisches Moll',
  'melodic minor': 'melodisches Moll',
  'harmonic major': 'harmonisches Dur',
  'double harmonic': 'doppelharmonisch',
  'double harmonic major': 'doppelharmonisches Dur',
  'Neapolitan minor': 'neapolitanisches Moll',
  'Neapolitan major': 'neapolitanisches Dur',
  'Hungarian minor': 'ungarisches Moll',
  'Hungarian major': 'ungarisches Dur',
  'Romanian major': 'rumänisches Dur',
  Persian: 'Persisch',
  Enigmatic: 'Enigmatisch',
  'Enigmatic descending': 'Enigmatisch abwärts',
  altered: 'alteriert',
  'altered dominant': 'alteriert dominant',
  'leading whole-tone': 'Ganztonleiter mit Leitton',
  'half diminished': 'halbvermindert',
  'major Locrian': 'Lokrisch mit großer Terz',
  'super Locrian': 'Superlokrisch',
  'Phrygian dominant': 'Phrygisch dominant',
  'Lydian dominant': 'Lydisch dominant',
  'Locrian dominant': 'Lokrisch dominant',
  'Lydian augmented': 'Lydisch übermäßig',
  'Lydian augmented dominant': 'Lydisch übermäßig dominant',
  'Mixolydian augmented': 'Mixolydisch übermäßig',
  'Lydian minor': 'Lydisch-Moll',
};

/** The name of a mode or a family, with signs: `Dorisch ♯4`. */
export const modeName: typeof English.modeName = (name) => {
  const [, words = name, degrees = ''] = /^(.*?)((?: (?:[b#]+|nat)[1-7])*)$/.exec(name) ?? [];
  return signs((NAMES[words] ?? CHURCH[words] ?? words) + degrees);
};

/** The name of a mode on a root: `A Dorisch ♯4`. */
export const scaleOn: typeof English.scaleOn = (rootName, name) => `${signs(rootName)} ${modeName(name)}`;

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
