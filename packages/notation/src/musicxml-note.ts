/**
 * MusicXML's note elements: the same sign on the staff and on the tablature staff. Elements stand in the
 * order that the schema of MusicXML 4.0 asks for.
 */
import type { PlayedNote } from '@stillroot/core';
import type { BeamPart } from './beams.ts';
import type { TabStaff } from './tab-staff.ts';
import type { WrittenSign } from './written-bars.ts';
import type { WrittenPitch } from './written-pitch.ts';

const TYPES: ReadonlyMap<number, string> = new Map([
  [4, 'whole'],
  [2, 'half'],
  [1, 'quarter'],
  [1 / 2, 'eighth'],
  [1 / 4, '16th'],
  [1 / 8, '32nd'],
  [1 / 16, '64th'],
]);

/** Accidentals that MusicXML has a name for, from triple flat to triple sharp. */
const ACCIDENTALS = [
  'triple-flat',
  'flat-flat',
  'flat',
  'natural',
  'sharp',
  'double-sharp',
  'triple-sharp',
] as const;

const THREE_IN_TWO =
  '<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>';

/** A note on the staff, with its finger where it is struck. */
export function staffNote(
  sign: WrittenSign,
  note: PlayedNote,
  pitch: WrittenPitch,
  isAccidentalShown: boolean,
  beams: readonly BeamPart[],
): string {
  const fingering = sign.isTiedBack ? '' : technical(`<fingering>${note.finger}</fingering>`);
  const accidental = isAccidentalShown ? `<accidental>${accidentalName(pitch.alteration)}</accidental>` : '';
  return `<note>${pitchElement(pitch)}${duration(sign)}<voice>1</voice>${typeOf(sign)}${accidental}${inThrees(sign)}<staff>1</staff>${beamElements(beams)}${notations(ties(sign, 'tied') + brackets(sign, 1) + fingering)}</note>`;
}

/** A note on the tablature staff. A fret without a whole number is given by its name. */
export function tabNote(
  sign: WrittenSign,
  note: PlayedNote,
  pitch: WrittenPitch,
  { fretOf }: TabStaff,
): string {
  const fret = fretOf(note);
  const place =
    fret === undefined ? `<other-technical>${note.fret}</other-technical>` : `<fret>${fret}</fret>`;
  const where = technical(`<string>${note.string}</string>${place}`);
  return `<note>${pitchElement(pitch)}${duration(sign)}<voice>2</voice>${typeOf(sign)}${inThrees(sign)}<stem>none</stem><staff>2</staff>${notations(ties(sign, 'tied') + brackets(sign, 2) + where)}</note>`;
}

/** A rest on the staff, or one on the tablature staff, where it is not shown. */
export function restNote(sign: WrittenSign, staff: 1 | 2): string {
  const shown = staff === 1 ? '<note>' : '<note print-object="no">';
  return `${shown}<rest/>${duration(sign)}<voice>${staff}</voice>${typeOf(sign)}${inThrees(sign)}<staff>${staff}</staff>${notations(brackets(sign, staff))}</note>`;
}

/** A rest that fills a bar of any length. */
export function barRest(durationTicks: number, staff: 1 | 2): string {
  const shown = staff === 1 ? '<note>' : '<note print-object="no">';
  return `${shown}<rest measure="yes"/><duration>${durationTicks}</duration><voice>${staff}</voice><staff>${staff}</staff></note>`;
}

/** The name of an accidental; beyond triple ones the standard has none, and the alteration alone says it. */
function accidentalName(alteration: number): string {
  return ACCIDENTALS[alteration + 3] ?? 'other';
}

function pitchElement({ letter, alteration, octave }: WrittenPitch): string {
  const alter = alteration === 0 ? '' : `<alter>${alteration}</alter>`;
  return `<pitch><step>${letter}</step>${alter}<octave>${octave}</octave></pitch>`;
}

function duration(sign: WrittenSign): string {
  return `<duration>${sign.durationTicks}</duration>${ties(sign, 'tie')}`;
}

function ties({ isTiedBack, isTiedOn }: WrittenSign, element: 'tie' | 'tied'): string {
  return (isTiedBack ? `<${element} type="stop"/>` : '') + (isTiedOn ? `<${element} type="start"/>` : '');
}

function typeOf({ quarters, isDotted }: WrittenSign): string {
  return `<type>${TYPES.get(quarters)}</type>${isDotted ? '<dot/>' : ''}`;
}

function inThrees({ isTriplet }: WrittenSign): string {
  return isTriplet ? THREE_IN_TWO : '';
}

function beamElements(beams: readonly BeamPart[]): string {
  return beams.map((part, at) => `<beam number="${at + 1}">${part}</beam>`).join('');
}

/** Brackets are printed on the staff; on the tablature staff they only say what belongs together. */
function brackets({ beginsBracket, endsBracket }: WrittenSign, staff: 1 | 2): string {
  const look = staff === 1 ? 'bracket="yes"' : 'bracket="no" show-number="none"';
  return (
    (beginsBracket ? `<tuplet type="start" ${look}/>` : '') + (endsBracket ? '<tuplet type="stop"/>' : '')
  );
}

function technical(content: string): string {
  return `<technical>${content}</technical>`;
}

function notations(content: string): string {
  return content === '' ? '' : `<notations>${content}</notations>`;
}
