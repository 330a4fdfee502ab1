/**
 * Notes, degrees and step patterns read without core: a second way to every number, so that a fault in core
 * cannot hide in its own check.
 */

/** A note of the scale of letters: 0 (C) to 6 (B), semitones of its accidentals, pitch class 0 (C) to 11 (B). */
export interface ReadNote {
  readonly letter: number;
  readonly accidentals: number;
  readonly pitchClass: number;
}

const LETTER_POSITIONS: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };
const MAJOR_SCALE = [0, 2, 4, 5, 7, 9, 11];

/** Reads `F##`, `Bb`, `C`; throws on anything else. */
export function readNote(name: string): ReadNote {
  const [letter = '', ...signs] = name;
  const position = LETTER_POSITIONS[letter];
  const flats = signs.filter((sign) => sign === 'b').length;
  const sharps = signs.filter((sign) => sign === '#').length;
  if (position === undefined || (flats !== signs.length && sharps !== signs.length)) {
    throw new Error(`not a note: ${name}`);
  }
  const accidentals = sharps - flats;
  return {
    letter: 'CDEFGAB'.indexOf(letter),
    accidentals,
    pitchClass: (position + accidentals + 24) % 12,
  };
}

/** The pitch classes of notes separated by spaces. */
export function soundsOf(notes: string): readonly number[] {
  return notes.split(' ').map((note) => readNote(note).pitchClass);
}

/** Semitones above the root of a formula such as `1 b2 b3 4 5 b6 bb7`; throws where it is not seven degrees. */
export function semitonesOfFormula(formula: string): readonly number[] {
  const degrees = formula.split(' ');
  if (degrees.length !== 7) throw new Error(`not seven degrees: ${formula}`);
  return degrees.map((degree, at) => {
    const number = Number(degree.replace(/[b#]/g, ''));
    if (number !== at + 1) throw new Error(`degree ${at + 1} is missing: ${formula}`);
    return (MAJOR_SCALE[at] ?? 0) + degree.split('#').length - degree.split('b').length;
  });
}

/** The distances from each note to the next, the last one up to the octave. */
export function stepsOf(semitones: readonly number[]): readonly number[] {
  return semitones.map((semitone, at) => (semitones[at + 1] ?? 12) - semitone);
}

/** Numbers written with spaces between. */
export function numbersOf(text: string): readonly number[] {
  return text.split(' ').map(Number);
}

/** Every choice of six of the eleven semitones above a root, root included: one for each seven-note mode. */
export function everySevenNotes(): readonly (readonly number[])[] {
  const choices: number[][] = [];
  for (let bits = 0; bits < 2 ** 11; bits += 1) {
    const above = Array.from({ length: 11 }, (_, at) => at + 1).filter((semitone) =>
      Boolean(bits & (1 << (semitone - 1))),
    );
    if (above.length === 6) choices.push([0, ...above]);
  }
  return choices;
}

/** The seven ways to begin a step pattern. */
export function rotationsOf(steps: readonly number[]): readonly (readonly number[])[] {
  return steps.map((_, from) => steps.map((_step, at) => steps[(from + at) % steps.length] ?? 0));
}

/** Each note above the first, in semitones. */
export function semitonesOfSteps(steps: readonly number[]): readonly number[] {
  return steps.map((_, at) => steps.slice(0, at).reduce((sum, step) => sum + step, 0));
}

/** How often each interval class, 1 to 6, lies between two of the notes. */
export function intervalVectorOf(pitchClasses: readonly number[]): readonly number[] {
  const vector = [0, 0, 0, 0, 0, 0];
  for (const [at, one] of pitchClasses.entries()) {
    for (const other of pitchClasses.slice(at + 1)) {
      const apart = Math.abs(one - other) % 12;
      const intervalClass = Math.min(apart, 12 - apart);
      vector[intervalClass - 1] = (vector[intervalClass - 1] ?? 0) + 1;
    }
  }
  return vector;
}
