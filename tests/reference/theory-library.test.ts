/**
 * Tonal 6.4.3, a general-purpose library of music theory, as a second opinion: it is a check, never a source.
 */
import {
  formatMidi,
  frequencyHz,
  type Mode as HeptatonicMode,
  parsePitch,
  pitchClassesOf,
  ROOTS,
  type Scale as SpelledScale,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import { Interval, Mode, Note, Pcset, Scale, ScaleType } from 'tonal';
import { describe, expect, test } from 'vitest';
import { stepsOf } from './by-hand.ts';
import { modeBySteps, rootOf } from './in-core.ts';

const sevenNoteTypes = ScaleType.all().filter((type) => type.intervals.length === 7);
const letterOnce = sevenNoteTypes.filter(
  ({ intervals }) => new Set(intervals.map((interval) => Interval.num(interval))).size === 7,
);

/** Types in which tonal uses one degree twice and leaves another out, so that no letter-by-letter match exists. */
const repeatsALetter: readonly (readonly [string, string])[] = [
  ['altered', 'two seconds, no fifth'],
  ['augmented heptatonic', 'two fifths, no sixth'],
  ['leading whole tone', 'two sevenths, no sixth'],
  ['flamenco', 'two thirds, no sixth'],
  ['enigmatic', 'two sevenths, no fourth'],
];

const semitonesOf = (intervals: readonly string[]): readonly number[] =>
  intervals.map((interval) => Interval.semitones(interval));
const modeWith = (intervals: readonly string[]): HeptatonicMode =>
  modeBySteps(stepsOf(semitonesOf(intervals)).join(''));
const inTonal = (root: string, type: string): readonly string[] => Scale.get(`${root} ${type}`).notes;
const inCore = (scale: SpelledScale): readonly string[] => scale.notes;
const chromaOf = (notes: readonly string[]): readonly number[] => notes.map((note) => Note.chroma(note));

describe('scales in tonal', () => {
  test('of seven notes are 38 types, 33 with each letter once', () => {
    expect(sevenNoteTypes).toHaveLength(38);
    expect(letterOnce).toHaveLength(33);
    const others = sevenNoteTypes.filter((type) => !letterOnce.includes(type));
    expect(others.map((type) => type.name).toSorted()).toEqual(
      repeatsALetter.map(([name]) => name).toSorted(),
    );
  });

  test('sound as in core: 38 types on 21 roots', () => {
    let compared = 0;
    for (const { name, intervals } of sevenNoteTypes) {
      for (const root of ROOTS) {
        expect(chromaOf(inTonal(root.name, name))).toEqual(pitchClassesOf(spell(modeWith(intervals), root)));
        compared += 1;
      }
    }
    expect(compared).toBe(798);
  });

  test.each(letterOnce.map(({ name }) => name))('%s is spelled as in core on all 21 roots', (name) => {
    const mode = modeWith(ScaleType.get(name).intervals);
    const spelled = ROOTS.map((root) => inTonal(root.name, name));
    expect(spelled).toHaveLength(21);
    expect(spelled).toEqual(ROOTS.map((root) => inCore(spell(mode, root))));
  });

  test.each(repeatsALetter)('%s has %s, where core has each letter once', (name) => {
    const { intervals } = ScaleType.get(name);
    const degrees = intervals.map((interval) => Interval.num(interval));
    expect(new Set(degrees).size).toBe(6);
    const formula = modeWith(intervals).formula.map((degree) => degree.replace(/[b#]/g, ''));
    expect(formula.join(' ')).toBe('1 2 3 4 5 6 7');
  });
});

describe('rotations in tonal', () => {
  test.each(UNIVERSE.families.map((family) => [family.id] as const))(
    'of %s are the modes of its family',
    (id) => {
      const rotations = Pcset.modes([...spell(modeBySteps(id), rootOf('A')).notes]);
      const modes = UNIVERSE.familiesById.get(id)?.modes ?? [];
      expect(rotations).toHaveLength(7);
      expect(rotations.toSorted()).toEqual(modes.map(chromaString).toSorted());
    },
  );
});

describe('church modes in tonal', () => {
  test('are seven', () => {
    expect(Mode.all()).toHaveLength(7);
  });

  test.each(Mode.all().map(({ name, alt }) => [name, 0 - alt] as const))(
    '%s has brightness %i',
    (name, brightness) => {
      const mode = modeWith(Mode.get(name).intervals);
      expect(mode.systematicName.toLowerCase()).toBe(name);
      expect(mode.brightness).toBe(brightness);
      expect(ROOTS.map((root) => Mode.notes(name, root.name))).toEqual(
        ROOTS.map((root) => inCore(spell(mode, root))),
      );
    },
  );
});

describe('pitches in tonal', () => {
  test('have the MIDI number, the names and the frequency they have in core, 0 to 127', () => {
    for (let midi = 0; midi <= 127; midi += 1) {
      expect(formatMidi(midi)).toBe(Note.fromMidi(midi));
      expect(formatMidi(midi, true)).toBe(Note.fromMidiSharps(midi));
      expect(frequencyHz(midi)).toBeCloseTo(Note.freq(Note.fromMidi(midi)) ?? Number.NaN, 8);
    }
  });

  test('count octaves as in core, with up to three accidentals', () => {
    const accidentals = ['bbb', 'bb', 'b', '', '#', '##', '###'];
    const octaves = ['0', '1', '2', '3', '4', '5', '6', '7', '8'];
    const names = [...'CDEFGAB'].flatMap((letter) =>
      accidentals.flatMap((accidental) => octaves.map((octave) => letter + accidental + octave)),
    );
    const read = names.map((name) => {
      const pitch = parsePitch(name);
      return pitch.ok ? pitch.value.midi : undefined;
    });
    expect(names).toHaveLength(441);
    expect(read).toEqual(names.map((name) => Note.midi(name)));
  });
});

function chromaString(mode: HeptatonicMode): string {
  return Array.from({ length: 12 }, (_, at) => (mode.semitones.includes(at) ? '1' : '0')).join('');
}
