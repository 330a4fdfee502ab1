/**
 * Chord symbols beside those of a general-purpose library of music theory: each that both know holds the same
 * pitch classes, but where it leaves notes out or takes a flat fifth for a sharp eleventh.
 */
import { parseChord, pitchClassOfNote } from '@stillroot/core';
import { Chord, ChordType, Note } from 'tonal';
import { expect, test } from 'vitest';

/** An eleventh keeps its third here (MusicXML 4.0, dominant-11th), and a flat thirteenth its fifth. */
const LEAVE_NOTES_OUT = ['11', '11b9', 'M7b6', '7b13', '9b13', 'mb6b9'];
/** A flat fifth is one here, and no fifth is left beside it. */
const OTHERWISE_A_SHARP_ELEVENTH = /b5/;
/** Names that say one thing here (a fourth added to a triad; no ninth) and more there. */
const MORE_THERE = ['maj#4', 'M7add13'];
/** After a C these lower it: a suspended ninth of C flat. */
const OTHER_ROOT = ['b9sus'];

const aliases = ChordType.all().flatMap((type) => type.aliases);
const known = aliases.filter((alias) => parseChord(`C${alias}`).ok);

test('most of what the library knows is read', () => {
  expect(known.length).toBeGreaterThan(0.8 * aliases.length);
});

test.each(
  known.filter(
    (alias) => ![...LEAVE_NOTES_OUT, ...MORE_THERE, ...OTHER_ROOT].includes(alias) && !isOtherFifth(alias),
  ),
)('C%s', (alias) => {
  expect(oursOf(`C${alias}`)).toEqual(theirsOf(alias));
});

test('what differs, differs', () => {
  for (const alias of [...LEAVE_NOTES_OUT, ...MORE_THERE, ...OTHER_ROOT])
    expect(oursOf(`C${alias}`), alias).not.toEqual(theirsOf(alias));
});

/** Whether the library spells the flat fifth of a symbol as a sharp eleventh beside a fifth. */
function isOtherFifth(alias: string): boolean {
  return OTHERWISE_A_SHARP_ELEVENTH.test(alias) && theirsOf(alias).includes(7);
}

function oursOf(symbol: string): readonly number[] {
  const read = parseChord(symbol);
  if (!read.ok) throw new Error(`${symbol} is not read`);
  return sorted(read.value.notes.map(pitchClassOfNote));
}

function theirsOf(alias: string): readonly number[] {
  return sorted(Chord.getChord(alias, 'C').notes.map((name) => Note.chroma(name) ?? Number.NaN));
}

function sorted(pitchClasses: readonly number[]): readonly number[] {
  return [...new Set(pitchClasses)].toSorted((a, b) => a - b);
}
