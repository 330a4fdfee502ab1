/**
 * Pieces as Standard MIDI Files (MIDI Manufacturers Association, Standard MIDI Files 1.0): format 1, a track
 * each for tempo and markers, for what is played, and for the count-in, the drone and the vamp where they
 * are wanted. Notes sound where MIDI says; no transposition.
 */
import {
  type Click,
  droneOf,
  type Piece,
  quartersPerMinute,
  type Result,
  type Section,
  succeed,
  TICKS_PER_QUARTER,
  type TimedNote,
  vampOf,
} from '@stillroot/core';
import {
  type MidiEvent,
  midiBytes,
  noteOffEvent,
  noteOnEvent,
  programEvent,
  tempoEvent,
  textEvent,
  timeSignatureEvent,
} from './midi-bytes.ts';
import { refuseProgram } from './midi-program.ts';

/** What a file is called, and what sounds in it. */
export interface MidiOptions {
  readonly title: string;
  /** What the track of the notes is called: the instrument. */
  readonly trackName: string;
  /** General MIDI level 1, counted from 0. */
  readonly midiProgram: number;
  /** Whether the root is held under the notes; not where absent. */
  readonly drone?: boolean;
  /** Whether the mode's own chords sound under the notes; not where absent. */
  readonly vamp?: boolean;
  /** What else is to be read in the file, a line each: tuning, pattern, source. */
  readonly remarks?: readonly string[];
}

/** Channels, counted from 0; General MIDI keeps its tenth for percussion. */
const CHANNELS = { notes: 0, drone: 1, vamp: 2, percussion: 9 } as const;

/** General MIDI level 1, counted from 0: string ensemble 1, and acoustic grand piano. */
const DRONE_PROGRAM = 48;
const VAMP_PROGRAM = 0;

/** General MIDI's percussion: high and low wood block. */
const HIGH_CLICK = 76;
const LOW_CLICK = 77;

/** How hard keys are struck, 1 to 127: what is played stands out from what lies under it. */
const NOTE_VELOCITY = 100;
const BACKING_VELOCITY = 64;
const CLICK_VELOCITY = 90;

/** A piece as the bytes of a Standard MIDI File. Refused where there is no such program. */
export function midiFile(piece: Piece, options: MidiOptions): Result<Uint8Array<ArrayBuffer>> {
  const { trackName, midiProgram, drone = false, vamp = false } = options;
  const refusal = refuseProgram(midiProgram);
  if (refusal) return refusal;
  const tracks = [
    conductorTrack(piece, options),
    voiceTrack(trackName, CHANNELS.notes, midiProgram, NOTE_VELOCITY, piece.notes),
    ...(piece.countIn.length > 0 ? [clickTrack(piece.countIn)] : []),
    ...(drone ? [voiceTrack('Drone', CHANNELS.drone, DRONE_PROGRAM, BACKING_VELOCITY, droneOf(piece))] : []),
    ...(vamp ? [voiceTrack('Vamp', CHANNELS.vamp, VAMP_PROGRAM, BACKING_VELOCITY, vampOf(piece))] : []),
  ];
  return succeed(midiBytes(TICKS_PER_QUARTER, tracks, piece.totalTicks));
}

/**
 * Tempo, time signature, what is to be read, and a marker where each mode begins. The root is told in words:
 * MIDI's key signatures know only major and minor.
 */
function conductorTrack(
  { timing, sections }: Piece,
  { title, remarks = [] }: MidiOptions,
): readonly MidiEvent[] {
  const { beats, unit } = timing.meter;
  return [
    textEvent(0, 'trackName', title),
    ...[`Root ${rootOf(sections)}`, ...remarks].map((remark) => textEvent(0, 'text', remark)),
    tempoEvent(0, quartersPerMinute(timing)),
    timeSignatureEvent(0, beats, unit),
    ...sections.map(({ startTicks, name }) => textEvent(startTicks, 'marker', name)),
  ];
}

function rootOf([section]: readonly Section[]): string {
  return section?.scale.root.name ?? '';
}

function voiceTrack(
  name: string,
  channel: number,
  program: number,
  velocity: number,
  notes: readonly TimedNote[],
): readonly MidiEvent[] {
  return [
    textEvent(0, 'trackName', name),
    programEvent(0, channel, program),
    ...keys(channel, velocity, notes),
  ];
}

function clickTrack(clicks: readonly Click[]): readonly MidiEvent[] {
  const notes = clicks.map((click) => ({ ...click, midi: click.isAccent ? HIGH_CLICK : LOW_CLICK }));
  return [textEvent(0, 'trackName', 'Count-in'), ...keys(CHANNELS.percussion, CLICK_VELOCITY, notes)];
}

/** Keys pressed and let go, in order; what ends at a tick does so before anything begins there. */
function keys(
  channel: number,
  velocity: number,
  notes: readonly Pick<TimedNote, 'startTicks' | 'durationTicks' | 'midi'>[],
): readonly MidiEvent[] {
  const offs = notes.map(({ startTicks, durationTicks, midi }) =>
    noteOffEvent(startTicks + durationTicks, channel, midi),
  );
  const ons = notes.map(({ startTicks, midi }) => noteOnEvent(startTicks, channel, midi, velocity));
  return [...offs, ...ons].toSorted((a, b) => a.ticks - b.ticks);
}
