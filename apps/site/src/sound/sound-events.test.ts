import { fingeringsOf, type Piece, parseRoot, playFingering, spell, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { GUITAR_NECK } from '../facts/guitar.ts';
import type { Voice } from './mix.ts';
import { soundEvents } from './sound-events.ts';

const ALL = { drone: true, chords: true, metronome: true };

function piece(): Piece {
  const root = parseRoot('A');
  const mode = UNIVERSE.modesById.get('2122122');
  if (!root.ok || !mode) throw new Error('the scale is there');
  const scale = spell(mode, root.value);
  const [fingering] = fingeringsOf(GUITAR_NECK, scale, { limit: 1 }).fingerings;
  if (!fingering) throw new Error('the fingering is there');
  const played = playFingering(scale, fingering, { countInBars: 1 });
  if (!played.ok) throw new Error('the piece is there');
  return played.value;
}

const of = (voice: Voice, backing = ALL) =>
  soundEvents(piece(), backing).filter((one) => one.voice === voice);

describe('soundEvents', () => {
  test('every note sounds, in order, with its place in the piece', () => {
    const { notes } = piece();
    const sounding = of('notes');
    expect(sounding.map(({ pitch }) => pitch)).toEqual(notes.map(({ midi }) => midi));
    expect(sounding.map(({ noteAt }) => noteAt)).toEqual([...notes.keys()]);
  });

  test('the drone is held from the first bar to the last, not struck with each', () => {
    const { countInTicks, totalTicks } = piece();
    expect(of('drone')).toEqual([
      { voice: 'drone', startTicks: countInTicks, endTicks: totalTicks, pitch: 45 },
    ]);
  });

  test('the metronome clicks every beat from the count-in on, higher where a bar begins', () => {
    const clicks = of('clicks');
    expect(clicks).toHaveLength(piece().totalTicks / 480);
    expect(clicks.slice(0, 5).map(({ pitch }) => pitch)).toEqual([1, 0, 0, 0, 1]);
  });

  test('without a metronome only the count-in is clicked, and nothing lies under the notes', () => {
    const bare = soundEvents(piece(), { drone: false, chords: false, metronome: false });
    expect(bare.filter(({ voice }) => voice === 'clicks')).toHaveLength(4);
    expect(bare.filter(({ voice }) => voice === 'drone' || voice === 'chords')).toEqual([]);
  });

  test('events are in the order of their beginnings', () => {
    const starts = soundEvents(piece(), ALL).map(({ startTicks }) => startTicks);
    expect(starts).toEqual(starts.toSorted((a, b) => a - b));
  });
});
