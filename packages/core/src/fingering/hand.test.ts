import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf } from '../given.ts';
import {
  comfortableReachMm,
  HAND_SIZES,
  handPositions,
  spanMm,
  tenthsMm,
  widestHand,
  widestPositions,
} from './hand.ts';

const { bass, guitar, mandolin, dulcimer } = INSTRUMENTS;

/** The hands that can lie with finger 1 at home on a fret, as `fret=finger` rows. */
function handsAt(instrument: typeof guitar, fret: number, reachMm: number): readonly string[] {
  return handPositions(neckOf(instrument), reachMm, fret, fret).map(({ from, fingers }) =>
    fingers.map((finger, at) => `${from + at}=${finger}`).join(' '),
  );
}

// The hand of 1-2-4 over a whole tone: Simandl's New Method, as the American School of Double Bass teaches
// it. One finger a fret higher up: as published electric-bass lessons mix the two.
describe('the hand on a 34-inch bass', () => {
  test.each([
    [1, ['1=1 2=2 3=4']],
    [2, ['2=1 3=2 4=4']],
    [3, ['3=1 4=2 5=4', '3=1 4=2 5=3 6=4']],
  ])('at fret %i takes a whole tone with 1-2-4', (fret, hands) => {
    expect(handsAt(bass, fret, 120)).toEqual(hands);
  });

  test.each([[6], [7], [12]])('at fret %i takes one finger a fret', (fret) => {
    const row = [1, 2, 3, 4].map((finger, at) => `${fret + at}=${finger}`).join(' ');
    expect(handsAt(bass, fret, 120)[0]).toBe(row);
  });

  // Lessons mix 1-2-4 and one finger a fret, changing over between frets 5 and 7.
  test('changes over where four frets are comfortable, by the arithmetic of the frets: at fret 6', () => {
    for (let fret = 1; fret <= 12; fret += 1) {
      const spanMmOfFour = 863.6 * (2 ** (-fret / 12) - 2 ** (-(fret + 3) / 12));
      expect(handsAt(bass, fret, 120)[0]?.split(' ')).toHaveLength(spanMmOfFour <= 100 ? 4 : 3);
    }
    expect(handsAt(bass, 5, 120)[0]).toBe('5=1 6=2 7=4');
  });

  test('below that reaches the fourth fret by a stretch, where it is within reach', () => {
    expect(handsAt(bass, 3, 120)).toContain('3=1 4=2 5=3 6=4');
    expect(handsAt(bass, 2, 120)).not.toContain('2=1 3=2 4=3 5=4');
  });

  test.each([
    [107, '1=1 2=2 3=4'],
    [100, '1=1 2=2'],
    [40, '1=1'],
    [157, '1=1 2=2 3=3 4=4'],
  ])('at fret 1 with a reach of %i mm is %s', (reachMm, hand) => {
    expect(handsAt(bass, 1, reachMm)[0]).toBe(hand);
  });
});

// Hand lengths: ANSUR II (US Army, 2012), 5th percentile of the women, midway between the medians, 95th of the men.
describe('the three sizes of hand', () => {
  test('reach in proportion to their length', () => {
    const { small, medium, large } = HAND_SIZES;
    expect([small, medium, large].map(({ handLengthMm }) => handLengthMm)).toEqual(
      [165, (180 + 193) / 2, 210].map(Math.round),
    );
    for (const { handLengthMm, reachMm } of [small, medium, large]) {
      expect(reachMm).toBe(Math.round((120 * handLengthMm) / 187));
    }
    expect(comfortableReachMm(medium.reachMm)).toBe(100);
  });

  test('a small one lies at the first fret of a guitar as 1-2-4 and stretches to the fourth', () => {
    expect(handsAt(guitar, 1, HAND_SIZES.small.reachMm)).toEqual(['1=1 2=2 3=4', '1=1 2=2 3=3 4=4']);
    expect(handsAt(guitar, 1, HAND_SIZES.medium.reachMm)[0]).toBe('1=1 2=2 3=3 4=4');
  });
});

// A position is four neighbouring frets, named by the fret of finger 1; fingers 1 and 4 stretch a fret
// beyond it (classical-guitar method; Leavitt, A Modern Method for Guitar, recalled).
describe('the hand on a guitar', () => {
  test('lies in position V with one finger a fret, and stretches a fret down or up', () => {
    expect(handsAt(guitar, 5, 120)).toEqual([
      '5=1 6=2 7=3 8=4',
      '4=1 5=1 6=2 7=3 8=4',
      '5=1 6=2 7=3 8=4 9=4',
    ]);
  });

  test('stretches both ways at once where six frets are within reach', () => {
    expect(handsAt(guitar, 12, 120).at(-1)).toBe('11=1 12=1 13=2 14=3 15=4 16=4');
  });

  test('does not stretch below fret 1', () => {
    expect(handsAt(guitar, 1, 140)).toEqual(['1=1 2=2 3=3 4=4', '1=1 2=2 3=3 4=4 5=4']);
  });

  test('counts the stretch of finger 1 as far as it is, and that of finger 4 half as much again', () => {
    const neck = neckOf(guitar);
    const [, down, up] = handPositions(neck, 120, 5, 5);
    const widthTenths = (low: number, high: number) =>
      Math.round(6480 * (1 - 2 ** (-high / 12))) - Math.round(6480 * (1 - 2 ** (-low / 12)));
    expect(down?.stretchTenthsMm).toEqual([widthTenths(4, 5), 0, 0, 0, 0]);
    expect(up?.stretchTenthsMm).toEqual([0, 0, 0, 0, Math.round(1.5 * widthTenths(8, 9))]);
  });

  test.each([
    [20, '20=1 21=2 22=4'],
    [21, '21=1 22=2'],
    [22, '22=1'],
  ])('at fret %i of 22 has no more frets than the neck', (fret, hand) => {
    expect(handsAt(guitar, fret, 120)).toEqual([hand, `${fret - 1}=1 ${hand}`]);
  });
});

// Two frets a finger, after the violin: 1 on frets 1-2, 2 on 3-4, 3 on 5-6, 4 on 7 (mandolin lessons).
describe('the hand on a mandolin', () => {
  test('in first position has two frets a finger and stretches to the eighth fret', () => {
    expect(handsAt(mandolin, 1, 120)).toEqual([
      '1=1 2=1 3=2 4=2 5=3 6=3 7=4',
      '1=1 2=1 3=2 4=2 5=3 6=3 7=4 8=4',
    ]);
  });

  test('is cut to its reach', () => {
    expect(handsAt(mandolin, 1, 100)[0]).toBe('1=1 2=1 3=2 4=2 5=3');
    expect(handsAt(mandolin, 1, 40)).toEqual(['1=1 2=1', '1=1 2=1 3=2']);
    expect(handsAt(mandolin, 20, 120)).toEqual(['20=1', '19=1 20=1']);
  });

  test('covers up to nine frets, another hand up to six', () => {
    expect(widestHand(neckOf(mandolin))).toBe(9);
    expect(widestHand(neckOf(guitar))).toBe(6);
  });
});

describe('a row of hands', () => {
  test('never opens wider than the reach, on any neck', () => {
    for (const instrument of [guitar, bass, mandolin, dulcimer]) {
      const neck = neckOf(instrument);
      for (const reachMm of [40, 75.5, 120, 200]) {
        for (const { from, to, fingers } of handPositions(neck, reachMm, 0, 99)) {
          expect(spanMm(neck, from, to)).toBeLessThanOrEqual(reachMm);
          expect(fingers).toHaveLength(to - from + 1);
          expect(fingers).toEqual(fingers.toSorted((a, b) => a - b));
        }
      }
    }
  });

  test('begins at fret 1 and ends with the neck, whatever is asked', () => {
    const homes = handPositions(neckOf(guitar), 120, -3, 99).map(({ indexSlot }) => indexSlot);
    expect([homes[0], homes.at(-1)]).toEqual([1, 22]);
    expect(handPositions(neckOf(guitar), 120, 9, 8)).toEqual([]);
  });

  test('measures in tenths of a millimetre from the nut', () => {
    expect(tenthsMm(neckOf(guitar), 12)).toBe(3240);
    expect(tenthsMm(neckOf(guitar), 1)).toBe(364);
    expect(spanMm(neckOf(guitar), 0, 12)).toBe(324);
  });
});

describe('the widest of several hands', () => {
  test('are those that no other contains with the same fingers', () => {
    const widestAt = (instrument: typeof guitar, fret: number) =>
      widestPositions(handPositions(neckOf(instrument), 120, fret, fret)).map(({ from, fingers }) =>
        fingers.map((finger, at) => `${from + at}=${finger}`).join(' '),
      );
    expect(widestAt(guitar, 5)).toEqual(['4=1 5=1 6=2 7=3 8=4', '5=1 6=2 7=3 8=4 9=4']);
    expect(widestAt(guitar, 12)).toEqual(['11=1 12=1 13=2 14=3 15=4 16=4']);
    // A bass's whole tone with 1-2-4 is not the same as with a third finger.
    expect(widestAt(bass, 3)).toEqual(['3=1 4=2 5=4', '3=1 4=2 5=3 6=4']);
  });
});
