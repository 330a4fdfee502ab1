/**
 * Which pages are there in which languages. The site is whole in English; its editions in other languages
 * leave out scales and rounds on a root, thousands of pages that hold little text, so that all of it stays
 * light; and the descriptions of the API's problems.
 */
import { LANGUAGES, type LanguageCode } from '../words/languages.ts';

/** A page in another language. */
export interface Edition {
  readonly code: LanguageCode;
  /** The language's name in its own words. */
  readonly name: string;
  readonly path: string;
}

/** The path of a page as the English edition has it: `/de/map/` is `/map/`. */
export function englishPath(path: string): string {
  const base = LANGUAGES.find((one) => one.base !== '/' && path.startsWith(one.base))?.base ?? '/';
  return path.slice(base.length - 1);
}

/** Whether a page, by its English path, has no other edition. */
export function isEnglishOnly(path: string): boolean {
  return /^\/modes\/[^/]+\/[^/]+\/|^\/rounds\/[^/]+\/|^\/problems\//.test(path);
}

/** Whether a page is a frame that other sites show within theirs. */
export function isFrame(path: string): boolean {
  return englishPath(path).startsWith('/embed/');
}

/** All editions of a page, its own among them; none but itself where it is there in English only. */
export function editionsOf(path: string): readonly Edition[] {
  const english = englishPath(path);
  const languages = isEnglishOnly(english) ? LANGUAGES.slice(0, 1) : LANGUAGES;
  return languages.map(({ code, name, base }) => ({ code, name, path: base + english.slice(1) }));
}

/**
 * Where a reader goes on in each language: to the same page, or to the nearest one that is there. A scale
 * has its mode, which is shown on any root; a round has the front page, which turns to any family and root.
 */
export function nearestEditions(path: string): readonly Edition[] {
  const english = englishPath(path);
  if (!isEnglishOnly(english)) return editionsOf(path);
  const [, room, slug, root] = english.split('/');
  const nearest =
    room === 'modes'
      ? `/modes/${slug}/?root=${root}`
      : room === 'rounds'
        ? `/?family=${slug}&root=${root}`
        : '/';
  return LANGUAGES.map(({ code, name, base }) => ({
    code,
    name,
    path: code === 'en' ? english : base + nearest.slice(1),
  }));
}
