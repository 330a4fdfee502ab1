import {
  kindestRoot,
  kindestRootOf,
  needsReadable,
  pitchClassesOf,
  ROOTS,
  type Scale,
  spell,
  spellAnew,
  UNIVERSE,
} from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import { type ReadNote, readNote } from '../reference/by-hand.ts';

/** A scale with its two spellings read by hand. */
interface ReadScale {
  readonly scale: Scale;
  readonly strict: readonly ReadNote[];
  readonly readable: readonly ReadNote[];
}

const everyScale: readonly ReadScale[] = UNIVERSE.modes.flatMap((mode) =>
  ROOTS.map((root) => {
    const scale = spell(mode, root);
    return { scale, strict: scale.notes.map(readNote), readable: scale.readable.map(readNote) };
  }),
);

/** The names of the scales of which a statement is not true. */
function scalesWhereNot(isTrue: (one: ReadScale) => boolean): readonly string[] {
  return everyScale
    .filter((one) => !isTrue(one))
    .map(({ scale }) => `${scale.mode.id} on ${scale.root.name}: ${scale.notes.join(' ')}`);
}

const soundOf = (notes: readonly ReadNote[]): string => notes.map((note) => note.pitchClass).join(' ');
const widestOf = (notes: readonly ReadNote[]): number =>
  Math.max(...notes.map((note) => Math.abs(note.accidentals)));
const lettersOf = (notes: readonly ReadNote[]): number => new Set(notes.map((note) => note.letter)).size;

/** The most letters that the sounds of a scale can be written with, one accidental each, from its root. */
function mostLetters({ scale, strict }: ReadScale): number {
  const names = [...'CDEFGAB'].flatMap((letter) => [letter, `${letter}#`, `${letter}b`]).map(readNote);
  const white = names.filter((note) => note.accidentals === 0).map((note) => note.pitchClass);
  const [root] = strict;
  const choices = pitchClassesOf(scale)
    .slice(1)
    .map((pitchClass) =>
      names.filter(
        (note) =>
          note.pitchClass === pitchClass && (note.accidentals === 0 || !white.includes(note.pitchClass)),
      ),
    );
  const spellings = choices.reduce<readonly (readonly number[])[]>(
    (rows, options) => rows.flatMap((row) => options.map((option) => [...row, option.letter])),
    [[root?.letter ?? Number.NaN]],
  );
  return Math.max(...spellings.map((letters) => new Set(letters).size));
}

describe('all 9,702 scales', () => {
  test('are 462 modes on 21 roots', () => {
    expect(everyScale).toHaveLength(9702);
    const places = everyScale.map(({ scale }) => `${scale.mode.id} ${scale.root.name}`);
    expect(new Set(places).size).toBe(9702);
  });

  test('have roots numbered 0 to 20, letter by letter from C, flat before natural before sharp', () => {
    const names = [...'CDEFGAB'].flatMap((letter) => [`${letter}b`, letter, `${letter}#`]);
    expect(ROOTS.map((root) => [root.index, root.name])).toEqual(names.map((name, at) => [at, name]));
  });

  test('use the seven letters once each, in order, from the root', () => {
    const wrong = scalesWhereNot(
      ({ scale, strict }) =>
        scale.notes[0] === scale.root.name &&
        strict.length === 7 &&
        strict.every((note, at) => note.letter === ((strict[0]?.letter ?? 0) + at) % 7),
    );
    expect(wrong).toEqual([]);
  });

  test('sound the semitones of their mode above their root', () => {
    const wrong = scalesWhereNot(({ scale, strict }) => {
      const from = readNote(scale.root.name).pitchClass;
      const expected = scale.mode.semitones.map((semitone) => (from + semitone) % 12).join(' ');
      return soundOf(strict) === expected && pitchClassesOf(scale).join(' ') === expected;
    });
    expect(wrong).toEqual([]);
  });

  test('are the same when spelled anew', () => {
    expect(everyScale.map(({ scale }) => spellAnew(scale.mode, scale.root))).toEqual(
      everyScale.map(({ scale }) => scale),
    );
  });
});

describe('the readable spelling of every scale', () => {
  test('sounds the same and keeps the name of the root', () => {
    const wrong = scalesWhereNot(
      ({ scale, strict, readable }) =>
        scale.readable[0] === scale.root.name && soundOf(readable) === soundOf(strict),
    );
    expect(wrong).toEqual([]);
  });

  test('differs exactly where the strict one needs more than a double accidental', () => {
    const wrong = scalesWhereNot(({ scale, strict }) => {
      const isBeyond = widestOf(strict) > 2;
      const differs = scale.readable.join(' ') !== scale.notes.join(' ');
      return differs === isBeyond && needsReadable(scale) === isBeyond;
    });
    expect(wrong).toEqual([]);
  });

  test('has at most one accidental to a note where it differs', () => {
    const wrong = scalesWhereNot(({ scale, readable }) => !needsReadable(scale) || widestOf(readable) <= 1);
    expect(wrong).toEqual([]);
    expect(everyScale.filter(({ scale }) => needsReadable(scale)).length).toBeGreaterThan(0);
  });

  test('repeats as few letters as one accidental allows where it differs', () => {
    const wrong = scalesWhereNot(
      (one) => !needsReadable(one.scale) || lettersOf(one.readable) === mostLetters(one),
    );
    expect(wrong).toEqual([]);
  });
});

describe('the kindest root of every scale', () => {
  const unkindness = ({ strict }: ReadScale): number => {
    const sizes = strict.map((note) => Math.abs(note.accidentals));
    return sizes.filter((size) => size > 2).length * 1000 + sizes.reduce((sum, size) => sum + size, 0);
  };
  const byPlace = new Map(everyScale.map((one) => [`${one.scale.mode.id} ${one.scale.root.name}`, one]));
  const unkindnessOn = (mode: string, root: string): number => {
    const found = byPlace.get(`${mode} ${root}`);
    return found ? unkindness(found) : Number.NaN;
  };

  test('sounds the same, and no twin is kinder; between equals the root stays', () => {
    const wrong = scalesWhereNot((one) => {
      const { mode, root } = one.scale;
      const twins = ROOTS.filter((twin) => readNote(twin.name).pitchClass === readNote(root.name).pitchClass);
      const least = Math.min(...twins.map((twin) => unkindnessOn(mode.id, twin.name)));
      const kindest = kindestRoot(mode, root);
      return (
        twins.includes(kindest) &&
        unkindnessOn(mode.id, kindest.name) === least &&
        (kindest === root) === (unkindness(one) === least)
      );
    });
    expect(wrong).toEqual([]);
  });

  test('of a pitch class is the kindest of its roots; between equals the natural, then the flat', () => {
    const wrong = scalesWhereNot(({ scale: { mode, root } }) => {
      const twins = ROOTS.filter((twin) => readNote(twin.name).pitchClass === readNote(root.name).pitchClass);
      const least = Math.min(...twins.map((twin) => unkindnessOn(mode.id, twin.name)));
      const kind = twins
        .filter((twin) => unkindnessOn(mode.id, twin.name) === least)
        .map((twin) => twin.name);
      const ordered = ['', 'b', '#'].flatMap((sign) => kind.filter((name) => name.slice(1) === sign));
      return kindestRootOf(mode, root.pitchClass).name === ordered[0];
    });
    expect(wrong).toEqual([]);
  });
});
