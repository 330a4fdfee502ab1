/**
 * A piece as it is written for the instrument that plays it.
 */
import type { Neck, Piece, Result } from '@stillroot/core';
import { musicXml, type StaffClef } from '@stillroot/notation';
import { instrumentName } from '../words/names.ts';

/** How an instrument is written and sounds in files. */
export interface WrittenInstrument {
  readonly clef: StaffClef;
  /** General MIDI level 1, counted from 0. */
  readonly midiProgram: number;
  readonly musicXmlSound: string;
}

let written: Promise<Readonly<Record<string, WrittenInstrument>>> | undefined;

/** How an instrument is written; rejects where that cannot be fetched, and may then be asked for again. */
export async function writtenInstrument(id: string): Promise<WrittenInstrument> {
  written ??= load().catch((error: unknown) => {
    written = undefined;
    throw error;
  });
  const found = (await written)[id];
  if (!found) throw new Error(`it is not known how ${id} is written`);
  return found;
}

/** A piece as MusicXML, for the file and for the page alike. */
export async function scoreOf(title: string, piece: Piece, neck: Neck): Promise<Result<string>> {
  const instrument = await writtenInstrument(neck.instrument.id);
  const named = { ...neck, instrument: { ...neck.instrument, name: instrumentName(neck.instrument) } };
  return musicXml(piece, named, { title, ...instrument });
}

/** The clef of the score that {@link scoreOf} writes. */
export async function clefOf(neck: Neck): Promise<StaffClef> {
  return (await writtenInstrument(neck.instrument.id)).clef;
}

async function load(): Promise<Readonly<Record<string, WrittenInstrument>>> {
  const answer = await fetch('/data/written.json');
  if (!answer.ok) throw new Error(`how instruments are written answered ${answer.status}`);
  return (await answer.json()) as Readonly<Record<string, WrittenInstrument>>;
}
