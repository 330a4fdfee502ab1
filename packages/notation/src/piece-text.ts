/**
 * Pieces as tablature in text: every mode under its name, bar by bar, with the beats over the notes.
 */
import type { Neck, NoteValue, Piece, PlayedNote, Section } from '@stillroot/core';
import { type TabColumn, tabSystems } from './tab-system.ts';

/**
 * A piece as tablature, at most 80 columns wide. A note that lasts on over a bar line is not written again.
 * @param neck on which the piece is played
 * @param heading what is played, how fast, in what time
 */
export function pieceText(piece: Piece, neck: Neck, heading = timingText(piece)): string {
  const sections = piece.sections.map(
    (section) => `${section.name}\n${tabSystems(neck, columnsOf(piece, section))}`,
  );
  return `${[heading, ...sections].join('\n\n')}\n`;
}

/**
 * What is played, how fast, in what time.
 * @example 'thirds in dotted eighth notes, 80 beats a minute in 4/4, after 1 bar of count-in'
 */
export function timingText({ pattern, noteValue, timing, countInTicks }: Piece): string {
  const { tempoBpm, meter, ticksPerBar } = timing;
  const bars = countInTicks / ticksPerBar;
  const countIn = bars === 0 ? '' : `, after ${bars} ${bars === 1 ? 'bar' : 'bars'} of count-in`;
  const how = pattern.replaceAll('-', ' ');
  return `${how} in ${valueText(noteValue)}, ${tempoBpm} beats a minute in ${meter.beats}/${meter.unit}${countIn}`;
}

function valueText(value: NoteValue): string {
  const words = value.replace('dotted-', 'dotted ');
  return words.endsWith('-triplet') ? words.replace('-triplet', ' note triplets') : `${words} notes`;
}

function columnsOf({ notes, timing }: Piece, { startTicks, endTicks }: Section): readonly TabColumn[] {
  const { ticksPerBar, ticksPerBeat } = timing;
  const within = notes.filter((note) => note.startTicks >= startTicks && note.startTicks < endTicks);
  const columns: TabColumn[] = [];
  for (let bar = startTicks; bar < endTicks; bar += ticksPerBar) {
    if (bar > startTicks) columns.push({ kind: 'bar-line' });
    const struck = within.filter((note) => note.startTicks >= bar && note.startTicks < bar + ticksPerBar);
    const isHeldOver = struck[0]?.startTicks !== bar;
    if (isHeldOver) columns.push({ kind: 'nothing' });
    columns.push(...struck.map((note) => noteColumn(note, note.startTicks - bar, ticksPerBeat)));
    if (endOf(struck.at(-1)) < bar + ticksPerBar) columns.push({ kind: 'nothing' });
  }
  return columns;
}

function noteColumn(note: PlayedNote, offsetTicks: number, ticksPerBeat: number): TabColumn {
  const beat = offsetTicks % ticksPerBeat === 0 ? String(offsetTicks / ticksPerBeat + 1) : '';
  return { kind: 'note', note, beat };
}

function endOf(note: PlayedNote | undefined): number {
  return note === undefined ? Number.POSITIVE_INFINITY : note.startTicks + note.durationTicks;
}
