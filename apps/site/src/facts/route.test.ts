import { findMode, modeEntryOf, modePreference } from '@stillroot/catalog';
import { distanceBetween, parseRoot } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { routeHtml } from '../markup/route.ts';
import { scalesOnRoute } from './route.ts';
import { ROUTE_PAIRS } from './route-pairs.ts';

function routeOf(from: string, to: string, rootName = 'A') {
  const root = parseRoot(rootName);
  const [first, last] = [findMode(from), findMode(to)];
  if (!root.ok || !first || !last) throw new Error(`no route from ${from} to ${to}`);
  return scalesOnRoute(first.mode, last.mode, root.value, modePreference);
}

describe('a route', () => {
  // Each church mode from the one before by lowering a single note: the order of the circle of fifths
  // (common practice, no source).
  test('from Lydian to Locrian goes through all church modes', () => {
    const stops = routeOf('Lydian', 'Locrian');
    expect(stops.map(({ scale }) => modeEntryOf(scale.mode).name)).toEqual([
      'Lydian',
      'Ionian',
      'Mixolydian',
      'Dorian',
      'Aeolian',
      'Phrygian',
      'Locrian',
    ]);
    expect(stops.map(({ moved }) => moved?.degree)).toEqual([undefined, 4, 7, 3, 6, 2, 5]);
  });

  test('says each step in words and names both notes', () => {
    expect(routeHtml(routeOf('Dorian', 'Aeolian'), modeEntryOf)).toContain(
      '6 falls a semitone: <b>F♯ → F</b>',
    );
  });

  test('from a mode to itself has nothing to move', () => {
    const stops = routeOf('Dorian', 'Dorian');
    expect(stops).toHaveLength(1);
    expect(routeHtml(stops, modeEntryOf)).not.toContain('class="moved"');
  });
});

describe('routes with a page of their own', () => {
  test.each(ROUTE_PAIRS.map((pair) => [pair.slug, pair] as const))(
    '%s is as long as its distance',
    (_, { from, to }) => {
      const stops = routeOf(from.name, to.name);
      expect(stops).toHaveLength(distanceBetween(from.mode.semitones, to.mode.semitones) + 1);
      expect(stops.at(-1)?.scale.mode).toBe(to.mode);
    },
  );
});
