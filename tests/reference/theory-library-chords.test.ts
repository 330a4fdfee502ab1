/**
 * Chords and keys in tonal 6.4.3, a general-purpose library of music theory, as a second opinion.
 */
import {
  type DegreeChord,
  EVERYDAY_ROOTS,
  pitchClassesOf,
  relativeScales,
  type Scale as SpelledScale,
  seventhsOf,
  spell,
  triadsOf,
} from '@stillroot/core';
import { Chord, Interval, Key, Mode, Note, Scale, ScaleType } from 'tonal';
import { describe, expect, test } from 'vitest';
import { stepsOf } from './by-hand.ts';
import { modeBySteps, modeOf } from './in-core.ts';

/** What tonal calls the kinds of chord that core names. */
const symbols: ReadonlyMap<string, string> = new Map([
  ['maj', 'M'],
  ['min', 'm'],
  ['dim', 'dim'],
  ['aug', 'aug'],
  ['maj7', 'maj7'],
  ['m7', 'm7'],
  ['7', '7'],
  ['m7b5', 'm7b5'],
  ['dim7', 'dim7'],
  ['m(maj7)', 'm/ma7'],
  ['maj7#5', 'maj7#5'],
  ['7#5', '7#5'],
  ['7b5', '7b5'],
  ['maj7b5', 'M7b5'],
  ['dim(maj7)', 'oM7'],
]);

const notesOf = (chords: readonly DegreeChord[]): readonly (readonly string[])[] =>
  chords.map(({ notes }) => notes);
const inTonal = (names: readonly string[]): readonly (readonly string[])[] =>
  names.map((name) => Chord.get(name).notes);

/** Every seven-note type of tonal, as core spells it on the 17 everyday roots. */
const scales: readonly SpelledScale[] = ScaleType.all()
  .filter((type) => type.intervals.length === 7)
  .flatMap(({ intervals }) => {
    const steps = stepsOf(intervals.map((interval) => Interval.semitones(interval)));
    return EVERYDAY_ROOTS.map((root) => spell(modeBySteps(steps.join('')), root));
  });

describe('chords on the degrees of 38 scale types on 17 roots', () => {
  const chords = scales.flatMap((scale) => [...triadsOf(scale), ...seventhsOf(scale)]);
  const named = chords.filter(({ kind }) => symbols.has(kind));

  test('are 9,044, and most of them have a name', () => {
    expect(chords).toHaveLength(38 * 17 * 14);
    expect(named.length).toBeGreaterThan(7000);
  });

  test('have every name that core gives', () => {
    expect(new Set(named.map(({ kind }) => kind))).toEqual(new Set(symbols.keys()));
  });

  test('hold in tonal the notes that they hold in core, wherever core names them', () => {
    const differing = named.filter(
      ({ kind, notes }) =>
        Chord.getChord(symbols.get(kind) ?? '', notes[0] ?? '').notes.join(' ') !== notes.join(' '),
    );
    expect(differing).toEqual([]);
  });

  test('without a name show their formula, and are none of the kinds that have one', () => {
    const semitonesOf = (symbol: string): string =>
      Chord.getChord(symbol, 'C')
        .intervals.map((interval) => Interval.semitones(interval))
        .join(' ');
    const known = new Set([...symbols.values()].map(semitonesOf));
    const unnamed = chords.filter(({ kind }) => !symbols.has(kind));
    expect(known.size).toBe(symbols.size);
    expect(unnamed.filter(({ kind }) => !kind.startsWith('1 '))).toEqual([]);
    expect(unnamed.filter(({ semitones }) => known.has(semitones.join(' ')))).toEqual([]);
  });
});

describe('keys in tonal', () => {
  const minor = {
    natural: '1 2 b3 4 5 b6 b7',
    harmonic: '1 2 b3 4 5 b6 7',
    melodic: '1 2 b3 4 5 6 7',
  } as const;
  const forms = ['natural', 'harmonic', 'melodic'] as const;

  test('of major have the triads and sevenths of core on 17 roots', () => {
    for (const root of EVERYDAY_ROOTS) {
      const key = Key.majorKey(root.name);
      const scale = spell(modeOf('1 2 3 4 5 6 7'), root);
      expect(inTonal(key.triads)).toEqual(notesOf(triadsOf(scale)));
      expect(inTonal(key.chords)).toEqual(notesOf(seventhsOf(scale)));
    }
  });

  test.each(forms)('of %s minor have the triads and sevenths of core on 17 roots', (form) => {
    // Tonal gives a sixth chord on the first degree of melodic minor, as is the habit of jazz.
    const from = form === 'melodic' ? 1 : 0;
    for (const root of EVERYDAY_ROOTS) {
      const key = Key.minorKey(root.name)[form];
      const scale = spell(modeOf(minor[form]), root);
      expect(key.scale).toEqual(scale.notes);
      expect(inTonal(key.triads)).toEqual(notesOf(triadsOf(scale)));
      expect(inTonal(key.chords.slice(from))).toEqual(notesOf(seventhsOf(scale)).slice(from));
    }
  });

  // Tonal names a scale with a raised seventh, which harmonic minor does not hold, on its fourth degree.
  const slips: Readonly<Record<string, readonly string[]>> = { harmonic: ['4 lydian diminished'] };

  test.each(forms)('of %s minor name the relative scales of core on 17 roots', (form) => {
    for (const root of EVERYDAY_ROOTS) {
      const relatives = relativeScales(spell(modeOf(minor[form]), root));
      const named = Key.minorKey(root.name)[form].chordScales.map((name) => Scale.get(name));
      const differing = named.flatMap(({ notes, type }, at) => {
        const sounds = notes.map((note) => Note.chroma(note)).join(' ');
        const inCore = relatives[at] ? pitchClassesOf(relatives[at]) : [];
        return sounds === inCore.join(' ') ? [] : [`${at + 1} ${type}`];
      });
      expect(named).toHaveLength(7);
      expect(differing).toEqual(slips[form] ?? []);
    }
  });

  test.each(Mode.all().map(({ name }) => name))(
    'of %s have the triads and sevenths of core on 17 roots',
    (name) => {
      const steps = stepsOf(Mode.get(name).intervals.map((interval) => Interval.semitones(interval)));
      for (const root of EVERYDAY_ROOTS) {
        const scale = spell(modeBySteps(steps.join('')), root);
        expect(inTonal(Mode.triads(name, root.name))).toEqual(notesOf(triadsOf(scale)));
        expect(inTonal(Mode.seventhChords(name, root.name))).toEqual(notesOf(seventhsOf(scale)));
      }
    },
  );
});
