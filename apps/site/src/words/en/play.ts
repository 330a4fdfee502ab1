/**
 * The texts of the play-along, in one place, so that other languages can follow. British English.
 */
import type { NoteValue, Pattern, Piece } from '@stillroot/core';
import { timingText } from '@stillroot/notation';
import type { Voice } from '../../sound/mix.ts';

export const PLAY = {
  title: 'Play along',
  play: 'Play',
  pause: 'Pause',
  settings: 'Tempo, pattern, what sounds and how loud',
  score: 'Staff and tablature',
  previousMode: 'Previous mode',
  nextMode: 'Next mode',
  previousNote: 'Previous note',
  nextNote: 'Next note',
  slower: 'Slower',
  faster: 'Faster',
  volume: 'Volume',
  bpm: 'beats a minute',
  round: 'round',
  countingIn: 'counting in',
  failed: 'The play-along could not be fetched. Try again later.',
  noSound: 'This browser gives no sound to pages. Staff, tablature and files work all the same.',
  controls: 'Player',

  time: 'In time',
  line: 'What is played',
  ladder: 'Tempo ladder',
  sounds: 'What sounds',
  files: 'Take it along',

  tempo: 'Tempo, beats a minute',
  value: 'Note value',
  meter: 'Time signature',
  countIn: 'Bars of count-in',
  pattern: 'Pattern',
  seed: 'Which walk',
  repeats: 'Times each mode',
  rest: 'Beats of rest between modes',
  loop: 'Goes round',
  step: 'Climbs by',
  top: 'Up to',
  every: 'After rounds',
  backing: 'Under the notes',
  metronome: 'Metronome',
  metronomeOn: 'all the time',
  metronomeOff: 'count-in only',
  ladderHint: 'Beats a minute; 0 stays at one tempo.',

  wav: 'Sound (.wav)',
  midi: 'MIDI (.mid)',
  musicXml: 'Score (.musicxml)',
  text: 'Tablature (.txt)',
  svg: 'Staff and tablature (.svg)',
  fileFailed: 'The file could not be made.',
  rendering: 'Rendering the sound …',
  filesLead: 'Once through, with the tempo, pattern and backing chosen here.',

  keys: 'Keys, while the focus is on Play or beside it: space plays and pauses; ← and → go by notes, with Shift by modes; Home goes back to the beginning; + and − change the tempo.',
  hearing:
    'Sound starts quietly; a link can never make it louder. Keep it low, lower still in headphones, and rest your ears. If they ring or feel muffled after playing, see an audiologist or physician.',
  practice:
    'General information only. Raise the tempo step by step, take breaks, and stop if you feel pain, numbness or tingling. For symptoms see a licensed clinician, ideally one who treats musicians; for technique ask a qualified teacher.',

  scoreLabel: 'Staff and tablature of',
  scoreLead: 'Written as it is played here, every accidental at its note.',
  scoreFailed: 'Staff and tablature could not be drawn.',
  capo: 'Capo at fret',
  tooLong: 'Only the first bars are drawn; the files hold them all.',
  notMix: 'four numbers from 0 to 100 such as 80-60-60-50',
} as const;

export const PATTERN_NAMES: Readonly<Record<Pattern, string>> = {
  up: 'up',
  down: 'down',
  'up-and-down': 'up and down',
  thirds: 'in thirds',
  fourths: 'in fourths',
  'groups-of-three': 'in groups of three',
  'groups-of-four': 'in groups of four',
  'random-walk': 'a random walk',
  'degree-and-root': 'each degree, answered by the root',
};

export const VALUE_NAMES: Readonly<Record<NoteValue, string>> = {
  whole: 'whole notes',
  half: 'half notes',
  quarter: 'quarter notes',
  eighth: 'eighth notes',
  sixteenth: 'sixteenth notes',
  'thirty-second': 'thirty-second notes',
  'dotted-whole': 'dotted whole notes',
  'dotted-half': 'dotted half notes',
  'dotted-quarter': 'dotted quarter notes',
  'dotted-eighth': 'dotted eighth notes',
  'dotted-sixteenth': 'dotted sixteenth notes',
  'dotted-thirty-second': 'dotted thirty-second notes',
  'whole-triplet': 'whole-note triplets',
  'half-triplet': 'half-note triplets',
  'quarter-triplet': 'quarter-note triplets',
  'eighth-triplet': 'eighth-note triplets',
  'sixteenth-triplet': 'sixteenth-note triplets',
  'thirty-second-triplet': 'thirty-second-note triplets',
};

export const BACKING_NAMES = {
  drone: 'a drone on the root',
  vamp: 'a vamp of the mode’s own chords',
  both: 'drone and vamp',
  none: 'nothing',
} as const;

export const LOOP_NAMES = {
  round: 'all of it',
  mode: 'the mode that is heard',
  once: 'nothing: played once',
} as const;

export const VOICE_NAMES: Readonly<Record<Voice, string>> = {
  notes: 'Notes',
  drone: 'Drone',
  chords: 'Chords',
  clicks: 'Clicks',
};

/** What is played, how fast, in what time. */
export function timingWords(piece: Piece): string {
  return timingText(piece);
}
