/**
 * MusicXML's measures: what stands at the head of the score, at the head of each mode, and the notes of a
 * bar on both staves.
 */
import {
  type Piece,
  type PlayedNote,
  quartersPerMinute,
  type Section,
  TICKS_PER_QUARTER,
  type Timing,
  toSigns,
} from '@stillroot/core';
import { beamsOf } from './beams.ts';
import { barRest, restNote, staffNote, tabNote } from './musicxml-note.ts';
import { escapeXml, forAnyFont } from './neck-svg-text.ts';
import { remarkInWords, type TabStaff } from './tab-staff.ts';
import type { WrittenBar, WrittenSign } from './written-bars.ts';
import type { WrittenPitch } from './written-pitch.ts';

/** A clef as MusicXML writes it. */
export interface StaffClef {
  readonly sign: 'G' | 'F' | 'C';
  /** Counted from 1 at the bottom. */
  readonly line: number;
  /** −1 where notes sound an octave below where they are written. */
  readonly octaveChange: number;
}

/** Everything that a bar is written from. */
export interface Score {
  readonly piece: Piece;
  readonly tab: TabStaff;
  readonly clef: StaffClef;
  readonly pitchOf: (note: PlayedNote) => WrittenPitch;
}

const BEAT_TYPES = { 2: 'half', 4: 'quarter', 8: 'eighth', 16: '16th' } as const;

/**
 * A bar.
 * @param at its place in the piece, from 0
 * @param count of the bars of the piece
 */
export function measureElement(score: Score, bar: WrittenBar, at: number, count: number): string {
  const { timing } = score.piece;
  const parts = [`<measure number="${at + 1}">`];
  if (bar.begins && at > 0) parts.push('<print new-system="yes"/>');
  if (at === 0)
    parts.push(
      attributes(score),
      tempo(timing),
      ...score.tab.remarks.map((remark) => words(remarkInWords(remark))),
    );
  if (bar.begins) parts.push(rehearsal(bar.begins));
  parts.push(staffNotes(score, bar), `<backup><duration>${timing.ticksPerBar}</duration></backup>`);
  parts.push(tabNotes(score, bar));
  if (bar.endsSection) parts.push(barline(at === count - 1 ? 'light-heavy' : 'light-light'));
  parts.push('</measure>');
  return parts.join('');
}

function staffNotes({ piece, pitchOf }: Score, { signs, startTicks }: WrittenBar): string {
  const { ticksPerBar, meter } = piece.timing;
  if (signs.length === 0) return barRest(ticksPerBar, 1);
  const beams = beamsOf(signs, startTicks, meter);
  const inForce = new Map<string, number>();
  return signs
    .map((sign, at) => {
      if (sign.note === undefined) return restNote(sign, 1);
      const pitch = pitchOf(sign.note);
      return staffNote(sign, sign.note, pitch, showsAccidental(inForce, pitch, sign), beams[at] ?? []);
    })
    .join('');
}

/**
 * Whether an accidental is printed: where it is not what the bar has already said of this line or space. A
 * note tied over from the bar before needs none, and says nothing.
 */
function showsAccidental(
  inForce: Map<string, number>,
  { letter, octave, alteration }: WrittenPitch,
  { isTiedBack }: WrittenSign,
): boolean {
  if (isTiedBack) return false;
  const line = `${letter}${octave}`;
  const isNew = (inForce.get(line) ?? 0) !== alteration;
  inForce.set(line, alteration);
  return isNew;
}

function tabNotes({ piece, tab, pitchOf }: Score, { signs }: WrittenBar): string {
  if (signs.length === 0) return barRest(piece.timing.ticksPerBar, 2);
  return signs
    .map((sign) => (sign.note ? tabNote(sign, sign.note, pitchOf(sign.note), tab) : restNote(sign, 2)))
    .join('');
}

function attributes({ piece, tab, clef }: Score): string {
  const { beats, unit } = piece.timing.meter;
  const octave =
    clef.octaveChange === 0 ? '' : `<clef-octave-change>${clef.octaveChange}</clef-octave-change>`;
  const key = '<fifths>0</fifths><mode>none</mode>';
  const time = `<beats>${beats}</beats><beat-type>${unit}</beat-type>`;
  return [
    `<attributes><divisions>${TICKS_PER_QUARTER}</divisions>`,
    `<key number="1">${key}</key><key number="2" print-object="no">${key}</key>`,
    `<time number="1">${time}</time><time number="2" print-object="no">${time}</time><staves>2</staves>`,
    `<clef number="1"><sign>${clef.sign}</sign><line>${clef.line}</line>${octave}</clef>`,
    '<clef number="2"><sign>TAB</sign><line>5</line></clef>',
    `${staffDetails(tab)}</attributes>`,
  ].join('');
}

/** Lines count from the bottom, strings from the top. */
function staffDetails({ tuning, capo }: TabStaff): string {
  const tunings = tuning.toReversed().map(({ letter, alteration, octave }, at) => {
    const alter = alteration === 0 ? '' : `<tuning-alter>${alteration}</tuning-alter>`;
    return `<staff-tuning line="${at + 1}"><tuning-step>${letter}</tuning-step>${alter}<tuning-octave>${octave}</tuning-octave></staff-tuning>`;
  });
  return [
    '<staff-details number="2"><staff-type>alternate</staff-type>',
    `<staff-lines>${tuning.length}</staff-lines>${tunings.join('')}`,
    capo === 0 ? '' : `<capo>${capo}</capo>`,
    '</staff-details>',
  ].join('');
}

function tempo(timing: Timing): string {
  const unit = BEAT_TYPES[timing.meter.unit];
  const metronome = `<metronome><beat-unit>${unit}</beat-unit><per-minute>${timing.tempoBpm}</per-minute></metronome>`;
  return `<direction placement="above"><direction-type>${metronome}</direction-type><staff>1</staff><sound tempo="${quartersPerMinute(timing)}"/></direction>`;
}

/** The place of a mode in its round, boxed, and its name beside it. */
function rehearsal({ modeIndex, name }: Section): string {
  return direction(`<rehearsal>${modeIndex + 1}</rehearsal>`, wordsElement(name));
}

function words(text: string): string {
  return direction(wordsElement(text));
}

function wordsElement(text: string): string {
  return `<words>${escapeXml(forAnyFont(toSigns(text)))}</words>`;
}

function direction(...types: readonly string[]): string {
  const content = types.map((type) => `<direction-type>${type}</direction-type>`).join('');
  return `<direction placement="above">${content}<staff>1</staff></direction>`;
}

function barline(style: 'light-light' | 'light-heavy'): string {
  return `<barline location="right"><bar-style>${style}</bar-style></barline>`;
}
