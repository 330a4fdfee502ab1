import { expect, test } from 'vitest';
import { drawFingering, drawFretboard } from './drawing.ts';
import { scaleOf } from './given.ts';
import { neckSvg } from './neck-svg.ts';
import { fingeringAt, NECKS } from './neck-svg-picture.ts';

const { guitar, capoed, banjo, fanned } = NECKS;
const aeolian = scaleOf('A', '2122122');
const phrygian = scaleOf('A', '1222122');
// Its notes are lowered up to six times, so that their labels are long.
const flattest = scaleOf('Fb', '1111116');

/** A drawing brought to what a page has of it: classes for styles and places, glyphs by shorter names. */
function asOnPage(svg: string): string {
  const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? [];
  return svg
    .replace(' xmlns="http://www.w3.org/2000/svg"', '')
    .replace(' class="neck"', ` class="neck" width="${width}" height="${height}"`)
    .replaceAll(' style="font-size:9px"', ' class="small"')
    .replaceAll(' style="text-anchor:start"', '')
    .replaceAll('"#degree-', '"#d')
    .replaceAll('class="mark plain', 'class="mark')
    .replaceAll('<text y="4"', '<text')
    .replaceAll('<text y="7.5" class="small"', '<text class="small low"')
    .replaceAll('<text transform="translate(0 7.5)scale(0.85)"', '<text class="low"');
}

test.each([
  ['a whole neck', drawFretboard(guitar, aeolian, 'x')],
  ['notes with many accidentals', drawFretboard(fanned, flattest, 'x', 'notes')],
  ['long degrees', drawFretboard(banjo, flattest, 'x')],
  ['a capo', drawFretboard(capoed, aeolian, 'x')],
  [
    'an area with moves',
    drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x', { before: aeolian }),
  ],
])('%s is the same drawing on a page, styled by classes alone', (_what, drawing) => {
  for (const handedness of ['right', 'left'] as const) {
    const onPage = neckSvg(drawing, { handedness, onPage: true });
    expect(onPage).toBe(asOnPage(neckSvg(drawing, { handedness })));
    expect(onPage).not.toContain('style=');
  }
});

test('long labels are small on a page, and low in a triangle', () => {
  const onPage = neckSvg(drawFretboard(banjo, flattest, 'x', 'notes'), { onPage: true });
  expect(onPage).toContain('<text class="small low">');
  expect(onPage).toContain('<text class="small">');
});
