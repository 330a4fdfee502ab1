/**
 * What sounds of a piece, voice by voice and in order: the notes, the drone, the chords, and the clicks of the
 * metronome, which goes on where the count-in ends.
 */
import { droneOf, type Piece, type TimedNote, vampOf } from '@stillroot/core';
import type { Voice } from './mix.ts';

/** Something that sounds. */
export interface SoundEvent {
  readonly voice: Voice;
  readonly startTicks: number;
  readonly endTicks: number;
  /** A MIDI note number, or 1 for a click that begins a bar and 0 for any other. */
  readonly pitch: number;
  /** Of a note, its place in the piece. */
  readonly noteAt?: number;
}

/** What lies under the notes. */
export interface Backing {
  readonly drone: boolean;
  readonly chords: boolean;
  /** Whether the metronome goes on after the count-in. */
  readonly metronome: boolean;
}

/** Everything of a piece that sounds, by its beginning. */
export function soundEvents(piece: Piece, backing: Backing): readonly SoundEvent[] {
  const notes = piece.notes.map((note, noteAt) => ({ ...eventOf('notes', note), noteAt }));
  const events = [
    ...clicks(piece, backing.metronome),
    ...(backing.drone ? held(droneOf(piece)) : []),
    ...(backing.chords ? vampOf(piece).map((note) => eventOf('chords', note)) : []),
    ...notes,
  ];
  return events.toSorted((a, b) => a.startTicks - b.startTicks);
}

function eventOf(voice: Voice, { startTicks, durationTicks, midi }: TimedNote): SoundEvent {
  return { voice, startTicks, endTicks: startTicks + durationTicks, pitch: midi };
}

/** The drone, not struck with every bar but held for as long as its note stays. */
function held(drone: readonly TimedNote[]): readonly SoundEvent[] {
  const events: SoundEvent[] = [];
  for (const note of drone) {
    const one = eventOf('drone', note);
    const last = events.at(-1);
    const goesOn = last?.pitch === one.pitch && last.endTicks === one.startTicks;
    if (last && goesOn) events[events.length - 1] = { ...last, endTicks: one.endTicks };
    else events.push(one);
  }
  return events;
}

function clicks({ countInTicks, totalTicks, timing }: Piece, goesOn: boolean): readonly SoundEvent[] {
  const { ticksPerBeat, ticksPerBar } = timing;
  const count = Math.floor((goesOn ? totalTicks : countInTicks) / ticksPerBeat);
  return Array.from({ length: count }, (_, beat) => {
    const startTicks = beat * ticksPerBeat;
    const pitch = startTicks % ticksPerBar === 0 ? 1 : 0;
    return { voice: 'clicks', startTicks, endTicks: startTicks + ticksPerBeat, pitch };
  });
}
