import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, neckOf, STEPS, scaleOf } from '../given.ts';
import type { Neck } from '../instrument/neck.ts';
import { pitchClassesOf, type Scale } from '../mode/spelling.ts';
import { fingeringsOf } from './fingerings.ts';
import { reasonInWords } from './reason.ts';

const { guitar, bass, banjo, dulcimer, mandolin } = INSTRUMENTS;
const gMajor = scaleOf('G', STEPS.ionian);

const midiOf = (neck: Neck, scale: Scale, style: 'two-octaves' | 'whole-range', fret?: number) =>
  fingeringsOf(neck, scale, {
    style,
    limit: 1,
    ...(fret !== undefined && { fret }),
  }).fingerings[0]?.notes.map(({ midi }) => midi) ?? [];

/** Every number from the lowest to the highest sound of a neck that is in the scale, without core's climbs. */
function inScale(neck: Neck, scale: Scale): readonly number[] {
  const lowest = Math.min(...neck.strings.map(({ openMidi }) => openMidi));
  const highest = Math.max(...neck.strings.flatMap(({ midiBySlot }) => midiBySlot));
  return Array.from({ length: highest - lowest + 1 }, (_, at) => lowest + at).filter((midi) =>
    pitchClassesOf(scale).includes(midi % 12),
  );
}

describe('two octaves', () => {
  test.each([
    ['guitar', neckOf(guitar)],
    ['bass', neckOf(bass)],
    ['mandolin', neckOf(mandolin)],
    ['banjo', neckOf(banjo)],
  ])('on a %s are fifteen notes from a root', (_name, neck) => {
    const notes = midiOf(neck, gMajor, 'two-octaves');
    expect(notes).toHaveLength(15);
    expect([(notes[0] ?? 0) % 12, (notes[14] ?? 0) - (notes[0] ?? 0)]).toEqual([7, 24]);
    expect(notes).toEqual(notes.toSorted((a, b) => a - b));
  });

  test('of G major on a guitar lie in the open position, where the hand need not move', () => {
    const { fingerings } = fingeringsOf(neckOf(guitar), gMajor, { style: 'two-octaves' });
    expect(fingerings[0]).toMatchObject({ area: { from: 0, to: 4 }, positions: [1] });
    expect(fingerings.map(({ cost }) => cost.travelMm)).toEqual(
      fingerings.map(({ cost }) => cost.travelMm).toSorted((a, b) => a - b),
    );
  });

  test('from a fret use none below it', () => {
    const { fingerings } = fingeringsOf(neckOf(guitar), gMajor, { style: 'two-octaves', fret: 7 });
    for (const { area } of fingerings) expect(area.from).toBeGreaterThanOrEqual(7);
    expect(fingerings).toHaveLength(5);
  });

  test('are refused, with something shorter in their place, where a neck does not have them', () => {
    const short = neckOf(guitar, { frets: 5 }, 'G3-C4-E4-A4');
    const answer = fingeringsOf(short, gMajor, { style: 'two-octaves' });
    expect(answer.reason && reasonInWords(answer.reason)).toBe(
      'there are no two octaves from root to root on this neck',
    );
    expect(answer.alternative?.style).toBe('position');
  });
});

describe('the whole range', () => {
  test.each([
    ['guitar', neckOf(guitar)],
    ['bass', neckOf(bass)],
    ['mandolin', neckOf(mandolin)],
    ['banjo', neckOf(banjo)],
    ['capoed guitar', neckOf(guitar, { capoFret: 4 })],
  ])('on a %s is every note of the scale that the neck has', (_name, neck) => {
    expect(midiOf(neck, gMajor, 'whole-range')).toEqual(inScale(neck, gMajor));
  });

  test('names a position for every stay of the hand', () => {
    const [whole] = fingeringsOf(neckOf(guitar), gMajor, { style: 'whole-range' }).fingerings;
    expect(whole?.positions.length).toBe((whole?.cost.shifts ?? 0) + 1);
  });

  test('where frets are missing is the longest run of notes that follow one another', () => {
    const neck = neckOf(dulcimer);
    const scale = scaleOf('D', STEPS.ionian);
    const notes = midiOf(neck, scale, 'whole-range');
    const all = inScale(neck, scale);
    const at = all.indexOf(notes[0] ?? 0);
    expect(notes.length).toBeGreaterThan(8);
    expect(notes).toEqual(all.slice(at, at + notes.length));
  });
});
