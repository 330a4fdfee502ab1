/**
 * MusicXML read back for the tests of this package, by a reader of plain XML; no part of its door.
 */
import type { Neck, Piece } from '@stillroot/core';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { valueIn } from './given.ts';
import { GUITAR } from './given-piece.ts';
import { type MusicXmlOptions, musicXml } from './musicxml.ts';

export const OPTIONS: MusicXmlOptions = {
  title: 'A Aeolian',
  clef: { sign: 'G', line: 2, octaveChange: -1 },
  midiProgram: 24,
  musicXmlSound: 'pluck.guitar',
};

interface XmlNote {
  readonly pitch?: { readonly step: string; readonly alter?: number; readonly octave: number };
  readonly rest?: unknown;
  readonly duration: number;
  readonly type?: string;
  readonly accidental?: string;
  readonly tie?: readonly { readonly '@type': string }[];
  readonly staff: number;
  readonly notations?: {
    readonly technical?: {
      readonly string?: number;
      readonly fret?: number;
      readonly fingering?: number;
      readonly 'other-technical'?: string;
    };
  };
}
interface XmlDirection {
  readonly 'direction-type': readonly {
    readonly rehearsal?: number;
    readonly words?: string;
    readonly metronome?: object;
  }[];
  readonly sound?: { readonly '@tempo': string };
}
export interface XmlMeasure {
  readonly note: readonly XmlNote[];
  readonly direction?: readonly XmlDirection[];
  readonly barline?: { readonly 'bar-style': string };
  readonly print?: { readonly '@new-system': string };
  readonly attributes?: object;
}
interface XmlScore {
  readonly 'score-partwise': {
    readonly '@version': string;
    readonly work: { readonly 'work-title': string };
    readonly 'part-list': { readonly 'score-part': object };
    readonly part: { readonly measure: readonly XmlMeasure[] };
  };
}

const parser = new XMLParser({
  ignoreAttributes: false,
  htmlEntities: true,
  attributeNamePrefix: '@',
  isArray: (name) => ['measure', 'note', 'direction', 'tie', 'staff-tuning', 'direction-type'].includes(name),
});

export function textOf(piece: Piece, options: Partial<MusicXmlOptions> = {}, neck: Neck = GUITAR): string {
  return valueIn(musicXml(piece, neck, { ...OPTIONS, ...options }));
}

export function scoreOf(piece: Piece, options: Partial<MusicXmlOptions> = {}, neck: Neck = GUITAR) {
  const text = textOf(piece, options, neck);
  if (XMLValidator.validate(text) !== true) throw new Error('not well-formed');
  const score: XmlScore = parser.parse(text);
  return score['score-partwise'];
}

export const measuresOf = (...args: Parameters<typeof scoreOf>): readonly XmlMeasure[] =>
  scoreOf(...args).part.measure;
