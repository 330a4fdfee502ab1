/**
 * Tunings in scientific notation, as data files and addresses hold them: open strings from the
 * lowest-sounding side to string 1. What a person types may be looser: see `read-tuning.ts`.
 */
import { type Pitch, parsePitch } from '../pitch/pitch.ts';
import { fail, type Result, succeed } from '../problem.ts';
import type { Course, Instrument, Tuning } from './instrument.ts';

/** The most strings a neck may have. */
export const MOST_STRINGS = 14;

/** What parts strings: hyphens, commas, spaces. The hyphen of octave −1, as in `C-1`, parts nothing. */
const BETWEEN_STRINGS = /(?:[,\s]|(?<=[\s\d,-]|^)-|-(?!1(?:[-,\s/]|$)))+/;

/**
 * Reads open strings, low to high, joined by hyphens, commas or spaces; a course of several strings joins
 * them with a slash.
 * @example parseTuning('B1-E2-A2-D3-G3-B3-E4') // seven strings
 * @example parseTuning('G3/G3-D4/D4-A4/A4-E5/E5') // four courses
 */
export function parseTuning(text: string, field = 'tuning'): Result<Tuning> {
  const words = splitStrings(text);
  const problem = checkStringCount(words.length, text, field);
  if (problem) return problem;
  const courses: Course[] = [];
  for (const [at, word] of words.entries()) {
    const course = parseCourse(word, `${field}[${at}]`);
    if (!course.ok) return course;
    courses.push(course.value);
  }
  return succeed(tuningOf(courses));
}

/** Reads one string, or the strings of a course joined by slashes. */
export function parseCourse(text: string, field = 'course'): Result<Course> {
  const pitches: Pitch[] = [];
  for (const word of text.split('/')) {
    const pitch = parsePitch(word, field);
    if (!pitch.ok) return pitch;
    pitches.push(pitch.value);
  }
  return succeed(pitches as unknown as Course);
}

/** A tuning that is named by its open strings, in scientific notation. */
export function tuningOf(courses: readonly Course[]): Tuning {
  const id = courses.map((course) => course.map(({ name }) => name).join('/')).join('-');
  return { id, name: courses.map(([principal]) => principal.name).join(' '), courses };
}

/**
 * A tuning as its instrument knows it, where it is one of the instrument's own: with that one's id and name,
 * spelled as it was given. Strings given singly are those of the course that they stand for.
 * @example ownTuning(guitar, parsed('D2-A2-D3-G3-B3-E4'))?.id // 'drop-d'
 */
export function ownTuning({ tunings }: Pick<Instrument, 'tunings'>, tuning: Tuning): Tuning | undefined {
  if (tunings.includes(tuning)) return tuning;
  const { courses } = tuning;
  const isSingle = courses.every((course) => course.length === 1);
  const isAlike = (own: Tuning, of: keyof Pitch): boolean =>
    own.courses.length === courses.length &&
    own.courses.every((course, at) => {
      const given = courses[at] as Course;
      const compared = isSingle ? course.slice(0, 1) : course;
      return (
        compared.length === given.length && compared.every((pitch, each) => pitch[of] === given[each]?.[of])
      );
    });
  const own = tunings.find((one) => isAlike(one, 'midi'));
  return own && !isAlike(own, 'name') ? { ...own, courses } : own;
}

/** The principal open pitches, low to high: `E2`, `A2`, `D3` ... */
export function openStringNames(tuning: Tuning): readonly string[] {
  return tuning.courses.map(([principal]) => principal.name);
}

/** The strings of a tuning in scientific notation. */
export function splitStrings(text: string): readonly string[] {
  return text.split(BETWEEN_STRINGS).filter((word) => word !== '');
}

/** A problem where there are too few strings or too many. */
export function checkStringCount(count: number, text: string, field: string): Result<never> | undefined {
  if (count >= 1 && count <= MOST_STRINGS) return undefined;
  return fail(field, text, { kind: 'string-count', most: MOST_STRINGS, given: count });
}
