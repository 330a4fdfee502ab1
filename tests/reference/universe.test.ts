import { kindestRootOf, needsReadable, spell, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { everySevenNotes, readNote, stepsOf } from './by-hand.ts';
import { everyPlacement, modeBySteps } from './in-core.ts';

/** The size of the accidental that brings a letter to a pitch class, found by trying the small ones first. */
function accidentalSize(letter: string, pitchClass: number): number {
  const sizes = [0, 1, 2, 3, 4, 5, 6];
  const found = sizes.find((size) =>
    ['#', 'b'].some((sign) => readNote(letter + sign.repeat(size)).pitchClass === pitchClass),
  );
  return found ?? Number.NaN;
}

/** The widest accidental of the notes spelled one letter each from a root. */
function widestAccidental(root: string, semitones: readonly number[]): number {
  const { letter, pitchClass } = readNote(root);
  const sizes = semitones.map((semitone, at) =>
    accidentalSize('CDEFGAB'.charAt((letter + at) % 7), (pitchClass + semitone) % 12),
  );
  return Math.max(...sizes);
}

/** Modes on pitch classes that no root of at most one accidental can spell within a double accidental. */
function unspellable(): readonly string[] {
  const roots = [...'CDEFGAB'].flatMap((letter) => [letter, `${letter}b`, `${letter}#`]);
  return everySevenNotes().flatMap((semitones) =>
    Array.from({ length: 12 }, (_, pitchClass) => pitchClass)
      .filter((pitchClass) =>
        roots
          .filter((root) => readNote(root).pitchClass === pitchClass)
          .every((root) => widestAccidental(root, semitones) > 2),
      )
      .map((pitchClass) => `${stepsOf(semitones).join('')} on ${pitchClass}`),
  );
}

describe('the universe of seven-note modes', () => {
  test('has 462 modes (Barbour 1929, Mason 1970), each choice of six semitones out of eleven once', () => {
    expect(UNIVERSE.modes).toHaveLength(462);
    const chosen = everySevenNotes().map((semitones) => stepsOf(semitones).join(''));
    expect(chosen).toHaveLength(462);
    expect(UNIVERSE.modes.map((mode) => mode.id).toSorted()).toEqual(chosen.toSorted());
  });

  test('has 66 families (Saglam and Polat) of seven modes', () => {
    expect(UNIVERSE.families).toHaveLength(66);
    expect(UNIVERSE.families.map((family) => family.modes.length)).toEqual(new Array(66).fill(7));
  });

  test('has 12 places for every mode', () => {
    const places = everyPlacement.map(({ mode, pitchClass }) => `${mode.id} on ${pitchClass}`);
    expect(new Set(places).size).toBe(462 * 12);
  });
});

describe('scales beyond a double accidental', () => {
  const byTrying = unspellable();

  test('are 393 of 462 × 12, found by trying every root without core (computed, not published)', () => {
    expect(byTrying).toHaveLength(393);
  });

  test('are the same ones in core, from the kindest root', () => {
    const inCore = everyPlacement
      .filter(({ mode, pitchClass }) => needsReadable(spell(mode, kindestRootOf(mode, pitchClass))))
      .map(({ mode, pitchClass }) => `${mode.id} on ${pitchClass}`);
    expect(inCore.toSorted()).toEqual(byTrying.toSorted());
  });

  test('begin with the chromatic cluster, which no root can spell', () => {
    const { id } = modeBySteps('1111116');
    expect(byTrying.filter((place) => place.startsWith(`${id} `))).toHaveLength(12);
  });
});
