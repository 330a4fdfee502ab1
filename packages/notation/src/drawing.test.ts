import { type Fingering, fingeringsOf, type Neck, placesOn, type Scale } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { drawFingering, drawFretboard, type Mark } from './drawing.ts';
import { neckOf, scaleOf } from './given.ts';

/** The best fingering of a scale in the area that begins at a fret. */
function fingeringAt(neck: Neck, scale: Scale, fret: number): Fingering {
  const [best] = fingeringsOf(neck, scale, { fret, limit: 1 }).fingerings;
  if (best === undefined) throw new Error('no fingering');
  return best;
}

const GUITAR = 'E2-A2-D3-G3-B3-E4';
const guitar = neckOf(GUITAR);
const aeolian = scaleOf('A', '2122122');
const phrygian = scaleOf('A', '1222122');
const dorian = scaleOf('A', '2122212');

const places = (marks: readonly Mark[]) => marks.map(({ string, slot }) => `${string}:${slot}`);
const atFrets = (notes: readonly { readonly string: number; readonly fret: number }[]) =>
  notes.map(({ string, fret }) => `${string}:${fret}`).toSorted();

describe('a drawn fretboard', () => {
  test('shows the whole neck, with a mark at every place of the scale and none of them quiet', () => {
    const drawing = drawFretboard(guitar, aeolian, 'A Aeolian');
    expect([drawing.fromSlot, drawing.toSlot]).toEqual([0, 22]);
    expect(places(drawing.marks)).toEqual(
      placesOn(guitar, aeolian).map(({ string, slot }) => `${string}:${slot}`),
    );
    expect(drawing.marks.some(({ isQuiet }) => isQuiet)).toBe(false);
    expect(drawing.moves).toEqual([]);
    expect(drawing.title).toBe('A Aeolian');
  });

  // A harmonic minor by hand: A B C D E F G# is 1 2 b3 4 5 b6 7.
  test.each([
    ['degrees', ['5', '♭6', '7', '1', '2', '♭3', '4', '5']],
    ['notes', ['E', 'F', 'G♯', 'A', 'B', 'C', 'D', 'E']],
    ['fingers', ['', '', '', '', '', '', '', '']],
  ] as const)('has %s in its marks', (labels, expected) => {
    const { marks } = drawFretboard(guitar, scaleOf('A', '2122131'), 'x', labels);
    expect(marks.slice(0, 8).map(({ label }) => label)).toEqual(expected);
  });

  test('is told in words, the open strings by that name', () => {
    const { description } = drawFretboard(neckOf('E2-A2', { frets: 3 }), scaleOf('F', '2212221'), 'x');
    expect(description).toBe('String 1: open A, 1 B♭, 3 C. String 2: open E, 1 F, 3 G.');
  });

  test('tells frets by their numbers, also above a capo and between whole ones', () => {
    const capoed = drawFretboard(neckOf('E2', { frets: 5 }, { capoFret: 2 }), scaleOf('A', '2212221'), 'x');
    expect(capoed.description).toBe('String 1: open F♯, 4 G♯, 5 A.');
    const partialFrets = [
      { fret: 6, semitones: 10 },
      { fret: 6.5, semitones: 11 },
    ];
    const halved = drawFretboard(neckOf('D3', { frets: 7, partialFrets }), scaleOf('D', '2212221'), 'x');
    expect(halved.description).toBe('String 1: open D, 6.5 C♯.');
  });
});

describe('a drawn fingering', () => {
  const fingering = fingeringAt(guitar, aeolian, 5);
  const drawing = drawFingering(guitar, aeolian, fingering, 'A Aeolian', { area: { from: 5, to: 8 } });

  test('shows the frets of the fingering, or those that are asked', () => {
    expect([drawing.fromSlot, drawing.toSlot]).toEqual([5, 8]);
    const own = drawFingering(guitar, aeolian, fingering, 'x');
    expect([own.fromSlot, own.toSlot]).toEqual([fingering.area.from, fingering.area.to]);
    const wide = drawFingering(guitar, aeolian, fingering, 'x', { area: { from: 3, to: 10 } });
    expect([wide.fromSlot, wide.toSlot]).toEqual([3, 10]);
  });

  test('marks the notes that are played, and quietly those of the scale that are not', () => {
    const inArea = placesOn(guitar, aeolian).filter(({ fret }) => fret >= 5 && fret <= 8);
    const played = atFrets(fingering.notes);
    const quiet = atFrets(inArea).filter((place) => !played.includes(place));
    expect(places(drawing.marks.filter(({ isQuiet }) => !isQuiet)).toSorted()).toEqual(played);
    expect(places(drawing.marks.filter(({ isQuiet }) => isQuiet)).toSorted()).toEqual(quiet);
    expect(quiet.length).toBeGreaterThan(0);
  });

  test('has fingers in the marks that are played, and nothing in the quiet ones', () => {
    const { marks } = drawFingering(guitar, aeolian, fingering, 'x', { labels: 'fingers' });
    for (const mark of marks) {
      const note = fingering.notes.find(({ string, fret }) => string === mark.string && fret === mark.slot);
      expect(mark.label).toBe(note === undefined ? '' : String(note.finger));
      expect(mark.isQuiet).toBe(note === undefined);
    }
  });

  test('is told in words, note by note', () => {
    const { description } = drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 0), 'x');
    expect(
      description.startsWith(
        '6 strings, counted from the highest-sounding side. 1 A: string 5 open; ♭2 B♭: ',
      ),
    ).toBe(true);
    expect(description).toContain('string 5 fret 1 finger 1');
  });

  test('above a capo begins at the capo', () => {
    const capoed = neckOf(GUITAR, {}, { capoFret: 3 });
    const { fromSlot, marks } = drawFingering(capoed, aeolian, fingeringAt(capoed, aeolian, 0), 'x');
    expect(fromSlot).toBe(3);
    expect(Math.min(...marks.map(({ slot }) => slot))).toBe(3);
  });

  test.each([0, 5, 22])('on fret %i alone stays on the neck', (fret) => {
    const alone: Fingering = { ...fingering, area: { from: fret, to: fret }, notes: [] };
    const { fromSlot, toSlot } = drawFingering(guitar, aeolian, alone, 'x');
    expect(fromSlot).toBe(fret);
    expect(toSlot).toBe(Math.min(fret + 1, 22));
  });
});

// By hand: from A Aeolian to A Phrygian B falls to Bb, to A Dorian F rises to F#.
describe('moved notes', () => {
  const movesTo = (scale: Scale, from: number, to: number) => {
    const area = { from, to };
    const fingering = fingeringAt(guitar, scale, 5);
    return drawFingering(guitar, scale, fingering, 'x', { area, before: aeolian }).moves;
  };

  test('go down from the old place to the new one', () => {
    expect(movesTo(phrygian, 5, 8)).toEqual([
      { string: 1, fromSlot: 7, toSlot: 6 },
      { string: 4, fromSlot: 9, toSlot: 8 },
      { string: 6, fromSlot: 7, toSlot: 6 },
    ]);
  });

  test('go up from the old place to the new one', () => {
    expect(movesTo(dorian, 5, 8)).toEqual([{ string: 2, fromSlot: 6, toSlot: 7 }]);
  });

  test('may come from an open string outside the area', () => {
    expect(movesTo(scaleOf('A', '2122131'), 1, 4)).toContainEqual({ string: 3, fromSlot: 0, toSlot: 1 });
  });

  test('are none where nothing moved or nothing came before', () => {
    expect(movesTo(aeolian, 5, 8)).toEqual([]);
    expect(drawFingering(guitar, phrygian, fingeringAt(guitar, phrygian, 5), 'x').moves).toEqual([]);
  });
});
