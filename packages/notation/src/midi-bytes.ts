/**
 * The bytes of a Standard MIDI File (MIDI Manufacturers Association, Standard MIDI Files 1.0; messages from
 * the MIDI 1.0 Detailed Specification). Numbers are big-endian.
 */

/** Something that happens in a track. */
export interface MidiEvent {
  /** From the beginning of the file. */
  readonly ticks: number;
  readonly bytes: readonly number[];
}

/** The kinds of text that a file can hold. */
const TEXT_KINDS = { text: 0x01, trackName: 0x03, marker: 0x06 } as const;

/** The greatest number that a delta-time can hold. */
const MOST_DELTA_TICKS = 0x0fffffff;

/** How fast a key is let go, where nobody says (MIDI 1.0 Detailed Specification). */
const USUAL_RELEASE = 64;

/**
 * A file of format 1, in which all tracks begin together.
 * @param ticksPerQuarter 1 to 32,767
 * @param tracks the events of each in the order of their ticks; each is ended at `endTicks`
 */
export function midiBytes(
  ticksPerQuarter: number,
  tracks: readonly (readonly MidiEvent[])[],
  endTicks: number,
): Uint8Array<ArrayBuffer> {
  const head = [...bigEndian(1, 2), ...bigEndian(tracks.length, 2), ...bigEndian(ticksPerQuarter, 2)];
  const chunks = [chunk('MThd', head), ...tracks.map((events) => chunk('MTrk', trackBody(events, endTicks)))];
  return Uint8Array.from(chunks.flat());
}

/**
 * A number in seven bits a byte, the high bit set in all bytes but the last.
 * @param value 0 to 0x0FFFFFFF
 * @example variableLength(0x80) // [0x81, 0x00]
 */
export function variableLength(value: number): readonly number[] {
  const bytes = [value & 0x7f];
  for (let left = value >>> 7; left > 0; left >>>= 7) bytes.unshift((left & 0x7f) | 0x80);
  return bytes;
}

/** Text in the file; what ASCII does not hold is written as UTF-8. */
export function textEvent(ticks: number, kind: keyof typeof TEXT_KINDS, text: string): MidiEvent {
  return metaEvent(ticks, TEXT_KINDS[kind], utf8(text));
}

/** The tempo from here on, in whole microseconds a quarter note. */
export function tempoEvent(ticks: number, quartersPerMinute: number): MidiEvent {
  return metaEvent(ticks, 0x51, bigEndian(Math.round(60_000_000 / quartersPerMinute), 3));
}

/** The time signature from here on: its clicks come with its beats, and a quarter is eight 32nds. */
export function timeSignatureEvent(ticks: number, beats: number, unit: number): MidiEvent {
  return metaEvent(ticks, 0x58, [beats, Math.log2(unit), 96 / unit, 8]);
}

/** The sound of a channel from here on, counted from 0. */
export function programEvent(ticks: number, channel: number, program: number): MidiEvent {
  return { ticks, bytes: [0xc0 | channel, program] };
}

export function noteOnEvent(ticks: number, channel: number, midi: number, velocity: number): MidiEvent {
  return { ticks, bytes: [0x90 | channel, midi, velocity] };
}

export function noteOffEvent(ticks: number, channel: number, midi: number): MidiEvent {
  return { ticks, bytes: [0x80 | channel, midi, USUAL_RELEASE] };
}

function metaEvent(ticks: number, kind: number, data: readonly number[]): MidiEvent {
  return { ticks, bytes: [0xff, kind, ...variableLength(data.length), ...data] };
}

function trackBody(events: readonly MidiEvent[], endTicks: number): readonly number[] {
  const body: number[] = [];
  let now = 0;
  for (const { ticks, bytes } of [...events, metaEvent(endTicks, 0x2f, [])]) {
    body.push(...variableLength(Math.min(ticks - now, MOST_DELTA_TICKS)), ...bytes);
    now = ticks;
  }
  return body;
}

function chunk(id: string, body: readonly number[]): readonly number[] {
  return [...utf8(id), ...bigEndian(body.length, 4), ...body];
}

function bigEndian(value: number, size: number): readonly number[] {
  return Array.from({ length: size }, (_, at) => (value >>> (8 * (size - 1 - at))) & 0xff);
}

/** Escapes turned back into the bytes they stand for. Half a surrogate pair becomes U+FFFD. */
function utf8(text: string): readonly number[] {
  const escaped = encodeURIComponent(text.toWellFormed());
  return Array.from(escaped.matchAll(/%([0-9A-F]{2})|./g), ([character, hex]) =>
    hex === undefined ? character.charCodeAt(0) : Number.parseInt(hex, 16),
  );
}
