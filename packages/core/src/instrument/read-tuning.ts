/**
 * Tunings as people type them: with octaves by number (`E2-A2-D3-G3`), by case and strokes
 * (`E, A, D G`), or in letters alone (`DADGAD`), whose octaves are guessed and shown. How notations are told
 * apart stands in `tuning-words.ts`, how octaves are guessed in `open-octaves.ts`.
 */
import { parseNote } from '../pitch/note.ts';
import { type Pitch, parsePitch } from '../pitch/pitch.ts';
import { parseHelmholtz } from '../pitch/pitch-helmholtz.ts';
import { fail, type Result, succeed } from '../problem.ts';
import type { Instrument, Tuning } from './instrument.ts';
import { octavesFor } from './open-octaves.ts';
import { checkStringCount, tuningOf } from './tuning.ts';
import { readingsOf, type TuningNotation, type TuningWords } from './tuning-words.ts';

/** A tuning and how its text was taken. */
export interface TuningReading {
  /** Named by its open strings, in scientific notation. */
  readonly tuning: Tuning;
  readonly notation: TuningNotation;
  /** Whether its octaves were not written but guessed. */
  readonly guessed: boolean;
  /** What else the text could have meant; absent where it could mean nothing else. */
  readonly alternative?: Omit<TuningReading, 'alternative'>;
}

/** What helps to read a tuning. */
export interface ReadTuningOptions {
  /** The instrument that it is for. */
  readonly instrument?: Pick<Instrument, 'tunings'>;
  /** What to call the text in a problem. */
  readonly field?: string;
}

/**
 * Reads 1 to 14 open strings, low to high, parted by hyphens, commas or spaces; strings of a course are joined
 * by slashes.
 * @example readTuning('DADGAD', { instrument: guitar }) // D2 A2 D3 G3 A3 D4, guessed
 * @example readTuning('E, A, D G') // E1 A1 D2 G2, in Helmholtz notation
 */
export function readTuning(text: string, options: ReadTuningOptions = {}): Result<TuningReading> {
  const { instrument, field = 'tuning' } = options;
  const [likeliest, ...others] = readingsOf(text, instrument?.tunings[0].courses.length);
  const problem = checkStringCount(likeliest.words.length, text, field);
  if (problem) return problem;
  const read = readWords(likeliest, text, field, instrument);
  if (!read.ok) return read;
  const alternative = others
    .map((words) => readWords(words, text, field, instrument))
    .find((other) => other.ok && other.value.tuning.id !== read.value.tuning.id);
  return succeed({ ...read.value, ...(alternative?.ok && { alternative: alternative.value }) });
}

function readWords(
  { notation, words }: TuningWords,
  text: string,
  field: string,
  instrument: ReadTuningOptions['instrument'],
): Result<TuningReading> {
  if (notation === 'letters') return readLetters(words, text, field, instrument);
  const courses = eachString(words, field, notation === 'scientific' ? parseNumbered : parseHelmholtz);
  return courses.ok ? succeed({ tuning: tuningOf(courses.value), notation, guessed: false }) : courses;
}

function readLetters(
  words: readonly string[],
  text: string,
  field: string,
  instrument: ReadTuningOptions['instrument'],
): Result<TuningReading> {
  const letters = eachString(words, field, parseNote);
  // A single word that is no note may have been meant as many strings, or as anything.
  if (!letters.ok) return words.length > 1 ? letters : fail(field, text, { kind: 'open-strings' });
  const courses = octavesFor(letters.value, instrument);
  if (courses) return succeed({ tuning: tuningOf(courses), notation: 'letters', guessed: true });
  return fail(field, text, { kind: 'rising-strings' });
}

/** A pitch in scientific notation. A word that is one in Helmholtz notation shows that the two were mixed. */
function parseNumbered(word: string, field: string): Result<Pitch> {
  const pitch = parsePitch(word, field);
  if (pitch.ok || !parseHelmholtz(word).ok) return pitch;
  return fail(field, word, { kind: 'one-notation' });
}

/** Reads each string of each course. */
function eachString<T>(
  words: readonly string[],
  field: string,
  parse: (word: string, field: string) => Result<T>,
): Result<readonly (readonly [T, ...T[]])[]> {
  const courses: (readonly [T, ...T[]])[] = [];
  for (const [at, word] of words.entries()) {
    const strings: T[] = [];
    for (const string of word.split('/')) {
      const read = parse(string, `${field}[${at}]`);
      if (!read.ok) return read;
      strings.push(read.value);
    }
    courses.push(strings as unknown as readonly [T, ...T[]]);
  }
  return succeed(courses);
}
