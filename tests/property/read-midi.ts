/**
 * MIDI files read by a library that knows nothing of how they were written.
 */
import { type AnyEvent, read } from 'midifile-ts';

/** A key pressed and let go. */
export interface ReadKey {
  readonly startTicks: number;
  readonly durationTicks: number;
  readonly midi: number;
  readonly velocity: number;
}

/** A track. */
export interface ReadTrack {
  readonly name: string | undefined;
  /** Channels on which something sounds, counted from 0. */
  readonly channels: readonly number[];
  readonly program: number | undefined;
  readonly keys: readonly ReadKey[];
  readonly texts: readonly string[];
  readonly markers: readonly { readonly ticks: number; readonly text: string }[];
  readonly tempi: readonly number[];
  readonly meters: readonly string[];
  readonly endTicks: number | undefined;
}

/** A file. */
export interface ReadMidi {
  readonly format: number;
  readonly ticksPerQuarter: number;
  readonly tracks: readonly ReadTrack[];
}

/** Reads a file; throws where it is none. */
export function readMidi(bytes: Uint8Array): ReadMidi {
  const { header, tracks } = read(Uint8Array.from(bytes));
  return { format: header.formatType, ticksPerQuarter: header.ticksPerBeat, tracks: tracks.map(readTrack) };
}

interface Timed {
  readonly ticks: number;
  readonly event: AnyEvent;
}

function readTrack(events: readonly AnyEvent[]): ReadTrack {
  let ticks = 0;
  const timed = events.map((event): Timed => {
    ticks += event.deltaTime;
    return { ticks, event };
  });
  const textsOf = (subtype: 'trackName' | 'text' | 'marker') =>
    timed.flatMap(({ ticks: at, event }) =>
      event.type === 'meta' && event.subtype === subtype ? [{ ticks: at, text: decode(event.text) }] : [],
    );
  return {
    name: textsOf('trackName')[0]?.text,
    texts: textsOf('text').map(({ text }) => text),
    markers: textsOf('marker'),
    channels: [...new Set(timed.flatMap(({ event }) => (event.type === 'channel' ? [event.channel] : [])))],
    program: timed.flatMap(({ event }) =>
      event.type === 'channel' && event.subtype === 'programChange' ? [event.value] : [],
    )[0],
    keys: readKeys(timed),
    tempi: timed.flatMap(({ event }) =>
      event.type === 'meta' && event.subtype === 'setTempo' ? [event.microsecondsPerBeat] : [],
    ),
    meters: timed.flatMap(({ event }) =>
      event.type === 'meta' && event.subtype === 'timeSignature'
        ? [`${event.numerator}/${event.denominator} ${event.metronome} ${event.thirtyseconds}`]
        : [],
    ),
    endTicks: timed.find(({ event }) => event.type === 'meta' && event.subtype === 'endOfTrack')?.ticks,
  };
}

/** Keys by the order in which they are pressed. A key that is pressed again before it is let go is a fault. */
function readKeys(timed: readonly Timed[]): readonly ReadKey[] {
  const down = new Map<number, { readonly at: number; readonly velocity: number; readonly place: number }>();
  const keys: ReadKey[] = [];
  for (const { ticks, event } of timed) {
    if (event.type !== 'channel') continue;
    if (event.subtype === 'noteOn') {
      if (down.has(event.noteNumber)) throw new Error(`key ${event.noteNumber} is pressed twice`);
      down.set(event.noteNumber, { at: ticks, velocity: event.velocity, place: keys.length });
      keys.push({
        startTicks: ticks,
        durationTicks: Number.NaN,
        midi: event.noteNumber,
        velocity: event.velocity,
      });
    }
    if (event.subtype === 'noteOff') {
      const pressed = down.get(event.noteNumber);
      if (!pressed) throw new Error(`key ${event.noteNumber} is let go twice`);
      down.delete(event.noteNumber);
      const { at, velocity, place } = pressed;
      keys[place] = { startTicks: at, durationTicks: ticks - at, midi: event.noteNumber, velocity };
    }
  }
  if (down.size > 0) throw new Error(`keys ${[...down.keys()].join(', ')} are never let go`);
  return keys;
}

/** The library hands out a character a byte. */
function decode(text: string): string {
  return new TextDecoder().decode(Uint8Array.from(text, (character) => character.charCodeAt(0)));
}
