/**
 * Lessons as links: a title, a note and pages with all that was chosen on them. All of it stands behind the
 * `#` of an address, which browsers send to no server, with a sum by which a link that was cut or changed is
 * told. What can be read of a spoilt link is read.
 */

/** A lesson. */
export interface Lesson {
  readonly title: string;
  readonly note: string;
  /** Paths on this site with their queries, in the order of the lesson. */
  readonly pages: readonly string[];
}

/** What is wrong with a link. */
export type LessonFault =
  | { readonly kind: 'changed' }
  | { readonly kind: 'too-many' }
  | { readonly kind: 'not-page'; readonly text: string };

/** A lesson as far as it could be read. */
export interface LessonReading {
  readonly lesson: Lesson;
  readonly faults: readonly LessonFault[];
}

export const NO_LESSON: Lesson = { title: '', note: '', pages: [] };
export const LESSON_LIMITS = { title: 120, note: 2000, pages: 40, page: 1000 } as const;

const ROOMS = 'rounds|modes|families|instruments|compare|routes|map|search';
const PAGE = new RegExp(
  `^/(?:[a-z]{2}/)?(?:(?:${ROOMS})/(?:[a-z0-9-]+/){0,2})?(?:\\?[^#\\s<>"]*)?(?:#[^\\s<>"]*)?$`,
);

/** Whether a text is the path of a page that a lesson can hold. */
export function isLessonPage(text: string): boolean {
  return text.length <= LESSON_LIMITS.page && PAGE.test(text);
}

const HOME = /^\/(?:[a-z]{2}\/)?(?:\?|$)/;
const WITH_NECKS = /^\/(?:[a-z]{2}\/)?(?:(?:(?:rounds|modes|instruments)\/[a-z0-9-]+|compare)\/|\?|$)/;

/**
 * The pages as they are opened, on whatever device: the front page at its round, below what it says of the site;
 * and a page that says nothing of the hand with that of the page before it.
 */
export function openedPages(pages: readonly string[]): readonly string[] {
  let hand: string | undefined;
  return pages.map((page) => {
    const own = handOf(page);
    const isSilent = own === undefined && hand !== undefined && WITH_NECKS.test(page);
    hand = own ?? hand;
    const handed = isSilent ? saying(page, `hand=${hand}`) : page;
    return HOME.test(page) && !page.includes('#') ? `${handed}#round` : handed;
  });
}

/** A page that is added behind others: where it is for the right hand, that is said behind one for the left. */
export function pageAfter(pages: readonly string[], page: string): string {
  const opened = openedPages([...pages, page]).at(-1) ?? page;
  return handOf(page) === undefined && handOf(opened) === 'left' ? saying(page, 'hand=right') : page;
}

/** A lesson as what stands behind the `#`; empty where there is nothing in it. */
export function writeLesson(lesson: Lesson): string {
  const { title, note, pages } = lesson;
  if (title === '' && note === '' && pages.length === 0) return '';
  const parts = [
    ['sum', sumOf(lesson)],
    ...(title === '' ? [] : [['title', title]]),
    ...(note === '' ? [] : [['note', note]]),
    ...pages.map((page) => ['page', page]),
  ];
  return parts.map(([key, value = '']) => `${key}=${escaped(value)}`).join('&');
}

/** Reads what stands behind the `#`. */
export function readLesson(hash: string): LessonReading {
  const parts = hash
    .replace(/^#/, '')
    .split('&')
    .map((part) => {
      const at = part.indexOf('=');
      return at < 0 ? ([part, ''] as const) : ([part.slice(0, at), unescaped(part.slice(at + 1))] as const);
    });
  const all = (key: string): readonly string[] =>
    parts.flatMap(([name, value]) => (name === key ? [value] : []));
  const whole: Lesson = { title: all('title')[0] ?? '', note: all('note')[0] ?? '', pages: all('page') };
  const pages = whole.pages.filter(isLessonPage);
  const isEmpty = hash.replace(/^#/, '') === '';
  return {
    lesson: {
      title: whole.title.slice(0, LESSON_LIMITS.title),
      note: whole.note.slice(0, LESSON_LIMITS.note),
      pages: pages.slice(0, LESSON_LIMITS.pages),
    },
    faults: [
      ...(isEmpty || all('sum')[0] === sumOf(whole) ? [] : [{ kind: 'changed' } as const]),
      ...whole.pages.flatMap((text) => (isLessonPage(text) ? [] : [{ kind: 'not-page', text } as const])),
      ...(pages.length > LESSON_LIMITS.pages ? [{ kind: 'too-many' } as const] : []),
    ],
  };
}

/** The hand that a page names; undefined where it names none. */
function handOf(page: string): string | undefined {
  return /[?&]hand=(left|right)\b/.exec(page)?.[1];
}

/** A page with one more choice in its address. */
function saying(page: string, choice: string): string {
  const [path = '', anchor] = page.split('#');
  return path + (path.includes('?') ? '&' : '?') + choice + (anchor === undefined ? '' : `#${anchor}`);
}

/** Percent-encoded, but for what may stand behind a `#` and parts nothing here (RFC 3986, 3.5). */
function escaped(text: string): string {
  return encodeURIComponent(text)
    .replaceAll('%20', '+')
    .replace(/%(?:2F|3A|2C|3F|3D|40|3B)/g, decodeURIComponent);
}

/** What cannot be decoded stays as it is. */
function unescaped(text: string): string {
  return text.replaceAll('+', ' ').replace(/(?:%[0-9A-Fa-f]{2})+/g, (codes) => {
    try {
      return decodeURIComponent(codes);
    } catch {
      return codes;
    }
  });
}

/** The 32-bit FNV-1a sum of a lesson, in base 36: it tells slips, and keeps no secret. */
function sumOf({ title, note, pages }: Lesson): string {
  let sum = 0x811c9dc5;
  for (const byte of new TextEncoder().encode([title, note, ...pages].join('\n'))) {
    sum = Math.imul(sum ^ byte, 0x01000193);
  }
  return (sum >>> 0).toString(36);
}
