import { describe, expect, test } from 'vitest';
import {
  isLessonPage,
  type Lesson,
  NO_LESSON,
  openedPages,
  pageAfter,
  readLesson,
  writeLesson,
} from './lesson-link.ts';

const LESSON: Lesson = {
  title: 'Week 3: modes & moods, 100 % “legato”',
  note: 'First slowly.\nThen +10 = faster; see #2?',
  pages: [
    '/rounds/harmonic-minor/d/?instrument=bass-4&tuning=drop-d&fret=5&order=brightness',
    '/modes/dorian/a/?tuning=G3%2FG3-D4%2FD4&names=german',
    '/',
  ],
};

describe('a lesson in a link', () => {
  test('is read as it was written', () => {
    expect(readLesson(`#${writeLesson(LESSON)}`)).toEqual({ lesson: LESSON, faults: [] });
  });

  test('is the same however an address bar or a mail has encoded it', () => {
    const address = new URL(`https://example.org/lesson/#${writeLesson(LESSON)}`);
    expect(readLesson(address.hash).faults).toEqual([]);
    const harder = writeLesson(LESSON).replaceAll('/', '%2F').replaceAll('?', '%3f');
    expect(readLesson(harder)).toEqual({ lesson: LESSON, faults: [] });
  });

  test('without anything in it is no link', () => {
    expect(writeLesson(NO_LESSON)).toBe('');
    expect(readLesson('')).toEqual({ lesson: NO_LESSON, faults: [] });
  });
});

describe('a spoilt link', () => {
  const whole = writeLesson(LESSON);

  test('that was cut anywhere is told, and read as far as it goes', () => {
    for (let length = 1; length < whole.length; length += 1) {
      const { lesson, faults } = readLesson(whole.slice(0, length));
      expect(faults).toContainEqual({ kind: 'changed' });
      expect(LESSON.title.startsWith(lesson.title) || lesson.title.includes('%')).toBe(true);
    }
    expect(readLesson(whole.slice(0, -30)).lesson).toMatchObject({ title: LESSON.title, note: LESSON.note });
  });

  test('that leads elsewhere is not followed', () => {
    const { lesson, faults } = readLesson('page=https://example.com/&page=//example.com/&page=/rounds/');
    expect(lesson.pages).toEqual(['/rounds/']);
    expect(faults).toContainEqual({ kind: 'not-page', text: 'https://example.com/' });
  });

  test('with codes that are none keeps them as they are', () => {
    expect(readLesson('title=%E4%zz%').lesson.title).toBe('%E4%zz%');
  });

  test('with more pages than a lesson has is cut', () => {
    const { lesson, faults } = readLesson(Array.from({ length: 50 }, () => 'page=/map/').join('&'));
    expect(lesson.pages).toHaveLength(40);
    expect(faults).toContainEqual({ kind: 'too-many' });
  });
});

describe('the pages of a lesson are opened', () => {
  test('at the round, where that is on the front page', () => {
    expect(openedPages(['/', '/de/?instrument=bass-4', '/es/#families', '/rounds/major/c/'])).toEqual([
      '/#round',
      '/de/?instrument=bass-4#round',
      '/es/#families',
      '/rounds/major/c/',
    ]);
  });

  test('for the hand of the page before, where nothing is said of it and a neck is drawn', () => {
    expect(
      openedPages([
        '/modes/dorian/a/',
        '/rounds/melodic-minor/c/?hand=left',
        '/modes/dorian/c/?instrument=bass-4#whole',
        '/map/',
        '/de/',
        '/compare/?hand=right',
        '/modes/ionian/c/',
      ]),
    ).toEqual([
      '/modes/dorian/a/',
      '/rounds/melodic-minor/c/?hand=left',
      '/modes/dorian/c/?instrument=bass-4&hand=left#whole',
      '/map/',
      '/de/?hand=left#round',
      '/compare/?hand=right',
      '/modes/ionian/c/?hand=right',
    ]);
  });

  test.each([
    [['/rounds/major/c/?hand=left'], '/modes/dorian/d/', '/modes/dorian/d/?hand=right'],
    [['/rounds/major/c/?hand=left'], '/modes/dorian/d/?hand=left', '/modes/dorian/d/?hand=left'],
    [['/rounds/major/c/'], '/modes/dorian/d/', '/modes/dorian/d/'],
    [['/rounds/major/c/?hand=left'], '/map/', '/map/'],
    [[], '/modes/dorian/d/', '/modes/dorian/d/'],
  ])('as they were added: behind %s, %s is written as %s', (pages, page, written) => {
    expect(pageAfter(pages, page)).toBe(written);
    const opened = openedPages([...pages, written]).at(-1);
    expect(opened?.includes('hand=left')).toBe(page.includes('hand=left'));
  });
});

test.each([
  ['/', true],
  ['/?family=major&root=c', true],
  ['/de/families/major/?names=german', true],
  ['/rounds/major/c/?capo=2#turn3', true],
  ['/v1/rounds/major/C', false],
  ['/lesson/', false],
  ['javascript:alert(1)', false],
  ['//example.com/', false],
  ['/rounds/../v1/', false],
  ['/rounds/major/c/"onclick=', false],
])('%s is a page of a lesson: %s', (text, is) => {
  expect(isLessonPage(text)).toBe(is);
});
