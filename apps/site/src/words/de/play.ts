/**
 * Die Texte des Mitspielens. German.
 */
import type * as English from '../en/play.ts';
import type { SameShape } from '../languages.ts';
import { counted } from './numbers.ts';

export const PLAY: SameShape<typeof English.PLAY> = {
  title: 'Mitspielen',
  play: 'Abspielen',
  pause: 'Pause',
  settings: 'Tempo, Muster, was klingt und wie laut',
  score: 'Noten und Tabulatur',
  previousMode: 'Voriger Modus',
  nextMode: 'Nächster Modus',
  previousNote: 'Voriger Ton',
  nextNote: 'Nächster Ton',
  slower: 'Langsamer',
  faster: 'Schneller',
  volume: 'Lautstärke',
  bpm: 'Schläge pro Minute',
  round: 'Durchgang',
  countingIn: 'Einzählen',
  failed: 'Das Mitspielen konnte nicht geladen werden. Versuche es später noch einmal.',
  noSound: 'Dieser Browser gibt Seiten keinen Ton. Noten, Tabulatur und Dateien funktionieren trotzdem.',
  controls: 'Wiedergabe',

  time: 'Tempo und Takt',
  line: 'Was gespielt wird',
  ladder: 'Tempoleiter',
  sounds: 'Was klingt',
  files: 'Herunterladen',

  tempo: 'Tempo, Schläge pro Minute',
  value: 'Notenwert',
  meter: 'Taktart',
  countIn: 'Takte zum Einzählen',
  pattern: 'Muster',
  seed: 'Zufallsfolge Nr.',
  repeats: 'Wiederholungen je Modus',
  rest: 'Schläge Pause zwischen Modi',
  loop: 'Wiederholt wird',
  step: 'Steigt um',
  top: 'Bis',
  every: 'Nach so vielen Durchgängen',
  backing: 'Unter den Tönen',
  metronome: 'Metronom',
  metronomeOn: 'durchgehend',
  metronomeOff: 'nur zum Einzählen',
  ladderHint: 'Schläge pro Minute; 0 bleibt bei einem Tempo.',

  wav: 'Ton (.wav)',
  midi: 'MIDI (.mid)',
  musicXml: 'Partitur (.musicxml)',
  text: 'Tabulatur (.txt)',
  svg: 'Noten und Tabulatur (.svg)',
  fileFailed: 'Die Datei konnte nicht erstellt werden.',
  rendering: 'Der Ton wird berechnet …',
  filesLead: 'Einmal durch, mit Tempo, Muster und Begleitung, wie hier gewählt.',

  keys: 'Tasten, solange der Fokus auf Abspielen oder daneben liegt: Die Leertaste spielt und hält an; ← und → gehen Ton für Ton, mit der Umschalttaste Modus für Modus; Pos1 geht an den Anfang; + und − ändern das Tempo.',
  hearing:
    'Der Ton beginnt leise; ein Link kann ihn nie lauter machen. Halte ihn leise, im Kopfhörer noch leiser, und gönne den Ohren Ruhe. Wenn sie nach dem Spielen klingeln oder sich dumpf anfühlen, suche ärztlichen Rat.',
  practice:
    'Nur allgemeine Hinweise. Steigere das Tempo schrittweise, mache Pausen, und höre auf, wenn Schmerzen, Taubheit oder Kribbeln auftreten. Bei Beschwerden suche ärztlichen Rat, am besten bei jemandem, der Musizierende behandelt; in Fragen der Technik hilft eine ausgebildete Lehrkraft.',

  scoreLabel: 'Noten und Tabulatur:',
  scoreLead: 'Geschrieben, wie es hier gespielt wird, jedes Vorzeichen an seinem Ton.',
  scoreFailed: 'Noten und Tabulatur konnten nicht gezeichnet werden.',
  capo: 'Kapodaster am Bund',
  tooLong: 'Nur die ersten Takte sind gezeichnet; die Dateien enthalten alle.',
  notMix: 'vier Zahlen von 0 bis 100 wie 80-60-60-50',
};

export const PATTERN_NAMES: SameShape<typeof English.PATTERN_NAMES> = {
  up: 'aufwärts',
  down: 'abwärts',
  'up-and-down': 'auf und ab',
  thirds: 'in Terzen',
  fourths: 'in Quarten',
  'groups-of-three': 'in Dreiergruppen',
  'groups-of-four': 'in Vierergruppen',
  'random-walk': 'zufällig, Schritt für Schritt',
  'degree-and-root': 'jede Stufe, vom Grundton beantwortet',
};

export const VALUE_NAMES: SameShape<typeof English.VALUE_NAMES> = {
  whole: 'Ganze',
  half: 'Halbe',
  quarter: 'Viertel',
  eighth: 'Achtel',
  sixteenth: 'Sechzehntel',
  'thirty-second': 'Zweiunddreißigstel',
  'dotted-whole': 'punktierte Ganze',
  'dotted-half': 'punktierte Halbe',
  'dotted-quarter': 'punktierte Viertel',
  'dotted-eighth': 'punktierte Achtel',
  'dotted-sixteenth': 'punktierte Sechzehntel',
  'dotted-thirty-second': 'punktierte Zweiunddreißigstel',
  'whole-triplet': 'Triolen in Ganzen',
  'half-triplet': 'Triolen in Halben',
  'quarter-triplet': 'Vierteltriolen',
  'eighth-triplet': 'Achteltriolen',
  'sixteenth-triplet': 'Sechzehnteltriolen',
  'thirty-second-triplet': 'Zweiunddreißigsteltriolen',
};

export const BACKING_NAMES: SameShape<typeof English.BACKING_NAMES> = {
  drone: 'ein Bordun auf dem Grundton',
  vamp: 'ein Vamp aus den Akkorden des Modus',
  both: 'Bordun und Vamp',
  none: 'nichts',
};

export const LOOP_NAMES: SameShape<typeof English.LOOP_NAMES> = {
  round: 'alles',
  mode: 'der Modus, der erklingt',
  once: 'nichts: einmal gespielt',
};

export const VOICE_NAMES: SameShape<typeof English.VOICE_NAMES> = {
  notes: 'Töne',
  drone: 'Bordun',
  chords: 'Akkorde',
  clicks: 'Klicks',
};

export const timingWords: typeof English.timingWords = ({ pattern, noteValue, timing, countInTicks }) => {
  const { tempoBpm, meter, ticksPerBar } = timing;
  const bars = countInTicks / ticksPerBar;
  const countIn = bars === 0 ? '' : `, nach ${counted(bars, 'Takt', 'Takten')} Einzählen`;
  return `${PATTERN_NAMES[pattern]}, ${VALUE_NAMES[noteValue]}, ${tempoBpm} Schläge pro Minute im ${meter.beats}/${meter.unit}-Takt${countIn}`;
};
