import { expect, test } from 'vitest';
import { editionsOf, englishPath, nearestEditions } from './editions.ts';

const paths = (editions: ReturnType<typeof editionsOf>): readonly string[] =>
  editions.map(({ path }) => path);

test.each([
  ['/de/map/', '/map/'],
  ['/es/', '/'],
  ['/modes/dorian/', '/modes/dorian/'],
  ['/despair/', '/despair/'],
])('%s is %s in English', (path, english) => {
  expect(englishPath(path)).toBe(english);
});

test('a page is there in every language, whichever of them is asked', () => {
  const all = ['/families/major/', '/de/families/major/', '/es/families/major/'];
  for (const path of all) expect(paths(editionsOf(path))).toEqual(all);
  expect(paths(editionsOf('/'))).toEqual(['/', '/de/', '/es/']);
});

test.each(['/modes/dorian/a/', '/rounds/major/c/', '/problems/bad-input/'])(
  '%s is there in English only',
  (path) => {
    expect(paths(editionsOf(path))).toEqual([path]);
  },
);

test('from a scale one goes to its mode on that root, from a round to the front page with the same round', () => {
  expect(paths(nearestEditions('/modes/dorian/a/'))).toEqual([
    '/modes/dorian/a/',
    '/de/modes/dorian/?root=a',
    '/es/modes/dorian/?root=a',
  ]);
  expect(paths(nearestEditions('/rounds/major/c/'))).toEqual([
    '/rounds/major/c/',
    '/de/?family=major&root=c',
    '/es/?family=major&root=c',
  ]);
});
