/**
 * Los textos para tocar con acompañamiento. Spanish.
 */
import type * as English from '../en/play.ts';
import type { SameShape } from '../languages.ts';
import { counted } from './numbers.ts';

export const PLAY: SameShape<typeof English.PLAY> = {
  title: 'Tocar con acompañamiento',
  play: 'Reproducir',
  pause: 'Pausa',
  settings: 'Tempo, patrón, qué suena y a qué volumen',
  score: 'Partitura y tablatura',
  previousMode: 'Modo anterior',
  nextMode: 'Modo siguiente',
  previousNote: 'Nota anterior',
  nextNote: 'Nota siguiente',
  slower: 'Más lento',
  faster: 'Más rápido',
  volume: 'Volumen',
  bpm: 'pulsos por minuto',
  round: 'vuelta',
  countingIn: 'compás previo',
  failed: 'No se pudo cargar el acompañamiento. Inténtalo más tarde.',
  noSound:
    'Este navegador no da sonido a las páginas. La partitura, la tablatura y los archivos funcionan igual.',
  controls: 'Reproductor',

  time: 'Tempo y compás',
  line: 'Qué se toca',
  ladder: 'Escalera de tempo',
  sounds: 'Qué suena',
  files: 'Descargar',

  tempo: 'Tempo, pulsos por minuto',
  value: 'Figura',
  meter: 'Compás',
  countIn: 'Compases previos',
  pattern: 'Patrón',
  seed: 'Paseo al azar n.º',
  repeats: 'Repeticiones de cada modo',
  rest: 'Pulsos de silencio entre modos',
  loop: 'Se repite',
  step: 'Sube en',
  top: 'Hasta',
  every: 'Tras este número de vueltas',
  backing: 'Acompañamiento',
  metronome: 'Metrónomo',
  metronomeOn: 'todo el tiempo',
  metronomeOff: 'solo en los compases previos',
  ladderHint: 'Pulsos por minuto; 0 se queda en un tempo.',

  wav: 'Sonido (.wav)',
  midi: 'MIDI (.mid)',
  musicXml: 'Partitura (.musicxml)',
  text: 'Tablatura (.txt)',
  svg: 'Partitura y tablatura (.svg)',
  fileFailed: 'No se pudo crear el archivo.',
  rendering: 'Se está calculando el sonido …',
  filesLead: 'Una vez entera, con el tempo, el patrón y el acompañamiento elegidos aquí.',

  keys: 'Teclas, mientras el foco está en Reproducir o a su lado: la barra espaciadora toca y detiene; ← y → van nota a nota, con Mayús modo a modo; Inicio vuelve al principio; + y − cambian el tempo.',
  hearing:
    'El sonido empieza bajo; un enlace nunca puede subirlo. Mantenlo bajo, más aún con auriculares, y deja descansar los oídos. Si después de tocar te zumban los oídos o los sientes tapados, consulta a un médico.',
  practice:
    'Solo información general. Sube el tempo poco a poco, haz pausas y para si sientes dolor, entumecimiento u hormigueo. Si hay síntomas, consulta a un médico, mejor si trata a músicos; para la técnica, pregunta a un profesor cualificado.',

  scoreLabel: 'Partitura y tablatura:',
  scoreLead: 'Escrito como se toca aquí, cada alteración junto a su nota.',
  scoreFailed: 'No se pudieron dibujar la partitura y la tablatura.',
  capo: 'Cejilla en el traste',
  tooLong: 'Solo están dibujados los primeros compases; los archivos los contienen todos.',
  notMix: 'cuatro números de 0 a 100 como 80-60-60-50',
};

export const PATTERN_NAMES: SameShape<typeof English.PATTERN_NAMES> = {
  up: 'hacia arriba',
  down: 'hacia abajo',
  'up-and-down': 'arriba y abajo',
  thirds: 'por terceras',
  fourths: 'por cuartas',
  'groups-of-three': 'en grupos de tres',
  'groups-of-four': 'en grupos de cuatro',
  'random-walk': 'un paseo al azar',
  'degree-and-root': 'cada grado, con la tónica por respuesta',
};

export const VALUE_NAMES: SameShape<typeof English.VALUE_NAMES> = {
  whole: 'redondas',
  half: 'blancas',
  quarter: 'negras',
  eighth: 'corcheas',
  sixteenth: 'semicorcheas',
  'thirty-second': 'fusas',
  'dotted-whole': 'redondas con puntillo',
  'dotted-half': 'blancas con puntillo',
  'dotted-quarter': 'negras con puntillo',
  'dotted-eighth': 'corcheas con puntillo',
  'dotted-sixteenth': 'semicorcheas con puntillo',
  'dotted-thirty-second': 'fusas con puntillo',
  'whole-triplet': 'tresillos de redondas',
  'half-triplet': 'tresillos de blancas',
  'quarter-triplet': 'tresillos de negras',
  'eighth-triplet': 'tresillos de corcheas',
  'sixteenth-triplet': 'tresillos de semicorcheas',
  'thirty-second-triplet': 'tresillos de fusas',
};

export const BACKING_NAMES: SameShape<typeof English.BACKING_NAMES> = {
  drone: 'un bordón sobre la tónica',
  vamp: 'un vamp con los acordes del modo',
  both: 'bordón y vamp',
  none: 'nada',
};

export const LOOP_NAMES: SameShape<typeof English.LOOP_NAMES> = {
  round: 'todo',
  mode: 'el modo que suena',
  once: 'nada: se toca una vez',
};

export const VOICE_NAMES: SameShape<typeof English.VOICE_NAMES> = {
  notes: 'Notas',
  drone: 'Bordón',
  chords: 'Acordes',
  clicks: 'Clics',
};

export const timingWords: typeof English.timingWords = ({ pattern, noteValue, timing, countInTicks }) => {
  const { tempoBpm, meter, ticksPerBar } = timing;
  const bars = countInTicks / ticksPerBar;
  const countIn = bars === 0 ? '' : `, tras ${counted(bars, 'compás previo', 'compases previos')}`;
  return `${PATTERN_NAMES[pattern]}, ${VALUE_NAMES[noteValue]}, ${tempoBpm} pulsos por minuto en ${meter.beats}/${meter.unit}${countIn}`;
};
