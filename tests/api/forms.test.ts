/**
 * Pictures and text of necks, as addresses with an extension.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask, type Served, serve } from './server.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const NECKS = [
  '/v1/modes/phrygian-dominant/A/fretboard',
  '/v1/modes/phrygian-dominant/A/fingerings',
  '/v1/rounds/harmonic-minor/A',
];

describe('forms', () => {
  test.each(NECKS)('%s.svg is a picture with a title', async (path) => {
    const { status, type, text } = await ask(served.origin, `${path}.svg?instrument=bass-4&labels=notes`);
    expect(status).toBe(200);
    expect(type).toBe('image/svg+xml; charset=utf-8');
    expect(text).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(text).toContain('four-string bass');
    expect(text).toContain('♭');
  });

  test.each(NECKS)('%s.txt is text that says what it is', async (path) => {
    const { status, type, text } = await ask(served.origin, `${path}.txt?instrument=bass-4`);
    expect(status).toBe(200);
    expect(type).toBe('text/plain; charset=utf-8');
    expect(text.split('\n')[0]).toContain('four-string bass, E1 A1 D2 G2');
    expect(text).toMatch(/^G2\|/m);
  });

  test('a left-handed picture differs from a right-handed one and holds the same labels', async () => {
    const path = '/v1/modes/dorian/A/fretboard.svg';
    const right = await ask(served.origin, path);
    const left = await ask(served.origin, `${path}?hand=left`);
    expect(left.text).not.toBe(right.text);
    const labels = (text: string): readonly string[] =>
      [...text.matchAll(/<text y="4"[^>]*>([^<]*)</g)].map((one) => one[1] as string);
    expect(labels(left.text)).toEqual(labels(right.text));
  });

  test('the text of a fingering that no hand can play says why and gives the nearest', async () => {
    const { text } = await ask(
      served.origin,
      '/v1/modes/ionian/F/fingerings.txt?instrument=bass-4&style=three-per-string&fret=1',
    );
    expect(text).toContain('frets 1, 3, 5 at once, 168.2 mm; the reach is 120 mm');
    expect(text).toContain('The nearest that can be played');
  });

  test('HEAD answers as GET does, without the body', async () => {
    const { status, type, text } = await ask(served.origin, '/v1/families', { method: 'HEAD' });
    expect([status, type, text]).toEqual([200, 'application/json; charset=utf-8', '']);
  });
});
