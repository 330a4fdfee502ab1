/**
 * Tunings typed by hand: open strings from the lowest-sounding side to string 1.
 */
import { type Pitch, parsePitch } from '../pitch/pitch.ts';
import { fail, type Result, succeed } from '../problem.ts';
import type { Course, Tuning } from './instrument.ts';

/** The most strings a neck may have. */
export const MOST_STRINGS = 14;

/**
 * Reads open strings, low to high, joined by hyphens, commas or spaces; a course of several strings joins
 * them with a slash.
 * @example parseTuning('B1-E2-A2-D3-G3-B3-E4') // seven strings
 * @example parseTuning('G3/G3-D4/D4-A4/A4-E5/E5') // four courses
 */
export function parseTuning(text: string, field = 'tuning'): Result<Tuning> {
  const words = text
    .trim()
    .split(/\s*[-,\s]\s*/)
    .filter((word) => word !== '');
  if (words.length < 1 || words.length > MOST_STRINGS) {
    return fail(
      field,
      text,
      `1 to ${MOST_STRINGS} open strings, low to high, such as E2-A2-D3-G3-B3-E4; this has ${words.length}`,
    );
  }
  const courses: Course[] = [];
  for (const [at, word] of words.entries()) {
    const course = parseCourse(word, `${field}[${at}]`);
    if (!course.ok) return course;
    courses.push(course.value);
  }
  const id = courses.map((course) => course.map((pitch) => pitch.name).join('/')).join('-');
  return succeed({ id, name: courses.map(([pitch]) => pitch.name).join(' '), courses });
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

/** The principal open pitches, low to high: `E2`, `A2`, `D3` ... */
export function openStringNames(tuning: Tuning): readonly string[] {
  return tuning.courses.map(([principal]) => principal.name);
}
