import { describe, expect, test } from 'vitest';
import { drawFingering, drawFretboard } from './drawing.ts';
import { scaleOf } from './given.ts';
import { neckSvg } from './neck-svg.ts';
import { fingeringAt, NECKS, pictureOf, wholeNeck } from './neck-svg-picture.ts';

const { guitar, capoed, banjo, fanned } = NECKS;
const aeolian = scaleOf('A', '2122122');
const phrygian = scaleOf('A', '1222122');

describe('a left-handed neck', () => {
  const before = aeolian;
  const drawings = [
    drawFretboard(banjo, aeolian, 'x'),
    drawFretboard(capoed, aeolian, 'x', 'notes'),
    drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x', { before }),
    drawFretboard(fanned, aeolian, 'x'),
  ];

  test.each(drawings.map((drawing, at) => [at, drawing] as const))(
    'mirrors the picture and not the labels: %i',
    (_at, drawing) => {
      const [right, left] = [pictureOf(drawing), pictureOf(drawing, 'left')];
      const mirrored = (x: number) => Math.round((right.width - x) * 10) / 10;
      expect(left.width).toBe(right.width);
      expect(left.names).toEqual(right.names);
      expect(left.marks).toEqual(right.marks.map((mark) => ({ ...mark, x: mirrored(mark.x) })));
      expect(left.numbers).toEqual(right.numbers.map((one) => ({ ...one, x: mirrored(one.x) })));
      const lines = right.lines.map((one) => ({
        ...one,
        x: mirrored(one.x),
        bottomX: mirrored(one.bottomX),
      }));
      expect(left.lines).toEqual(lines.toReversed());
      expect(left.strings).toEqual(
        right.strings.map((one) => ({ ...one, startX: mirrored(one.startX), endX: mirrored(one.endX) })),
      );
      expect(left.rings).toEqual(right.rings.map((one) => ({ ...one, x: mirrored(one.x) })));
      expect(left.arrows).toEqual(
        right.arrows.map((one) => ({ ...one, fromX: mirrored(one.fromX), toX: mirrored(one.toX) })),
      );
    },
  );

  test('has its nut on the right, its open strings right of it, and fret 1 left of it', () => {
    const { lines, marks, numbers, width } = wholeNeck(guitar, aeolian, 'left');
    const nut = lines.at(-1);
    expect(nut?.kind).toBe('nut');
    const open = marks.filter(({ x }) => x > (nut?.x ?? 0));
    expect(open).toHaveLength(6);
    expect(Math.max(...open.map(({ x }) => x))).toBeLessThan(width);
    expect(numbers[0]?.label).toBe('1');
    expect(numbers[0]?.x).toBeGreaterThan(numbers[1]?.x ?? 0);
  });

  test('turns nothing: no letter, no glyph and no arrow head', () => {
    for (const drawing of drawings) {
      expect(neckSvg(drawing, { handedness: 'left' })).not.toMatch(/scale\(-|rotate|matrix/);
    }
  });
});
