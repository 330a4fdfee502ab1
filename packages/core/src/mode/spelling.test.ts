import { describe, expect, test } from 'vitest';
import { modeOf, rootOf, STEPS, scaleOf } from '../given.ts';
import { ROOTS, ROOTS_BY_PITCH_CLASS, type Root } from '../pitch/root.ts';
import { kindestRoot, kindestRootOf, needsReadable, pitchClassesOf, spell, spellAnew } from './spelling.ts';
import { type Mode, UNIVERSE } from './universe.ts';

const NATURALS = [0, 2, 4, 5, 7, 9, 11];

/** Accidentals counted without any wrapping round the octave: sounding height less the letter's height. */
function accidentalsOf(mode: Mode, root: Root): readonly number[] {
  const height = (NATURALS[root.letterIndex] ?? 0) + root.alteration;
  return mode.semitones.map((semitone, at) => {
    const step = root.letterIndex + at;
    return height + semitone - ((NATURALS[step % 7] ?? 0) + 12 * Math.floor(step / 7));
  });
}

function soundOf(note: string): number {
  const accidentals = [...note.slice(1)].reduce((sum, sign) => sum + (sign === '#' ? 1 : -1), 0);
  return ((((NATURALS['CDEFGAB'.indexOf(note.charAt(0))] ?? 0) + accidentals) % 12) + 12) % 12;
}

// Key signatures and minor scales as every theory primer gives them (common practice, no source).
describe('a scale is spelled', () => {
  test.each([
    ['C', STEPS.ionian, 'C D E F G A B'],
    ['F#', STEPS.ionian, 'F# G# A# B C# D# E#'],
    ['Gb', STEPS.ionian, 'Gb Ab Bb Cb Db Eb F'],
    ['Cb', STEPS.ionian, 'Cb Db Eb Fb Gb Ab Bb'],
    ['G#', STEPS.ionian, 'G# A# B# C# D# E# F##'],
    ['A', STEPS.aeolian, 'A B C D E F G'],
    ['A', STEPS.harmonicMinor, 'A B C D E F G#'],
    ['G#', STEPS.harmonicMinor, 'G# A# B C# D# E F##'],
    ['A', STEPS.phrygianDominant, 'A Bb C# D E F G'],
    ['G#', STEPS.seventhOfHarmonicMinor, 'G# A B C D E F'],
    ['A', STEPS.seventhOfHarmonicMinor, 'A Bb C Db Eb F Gb'],
    ['C', STEPS.seventhOfHarmonicMinor, 'C Db Eb Fb Gb Ab Bbb'],
    ['B#', STEPS.ionian, 'B# C## D## E# F## G## A##'],
  ])('on %s with the steps %s as %s', (root, steps, notes) => {
    expect(scaleOf(root, steps).notes.join(' ')).toBe(notes);
  });

  test('with each letter once and the right sound, in all 462 × 21 = 9,702 cases', () => {
    let count = 0;
    for (const mode of UNIVERSE.modes) {
      for (const root of ROOTS) {
        const scale = spell(mode, root);
        const { notes } = scale;
        const letters = notes.map((note) => note.charAt(0)).join('');
        const sounds = notes.map(soundOf);
        const wanted = mode.semitones.map((semitone) => (root.pitchClass + semitone) % 12);
        if ('CDEFGABCDEFGAB'.includes(letters) && String(sounds) === String(wanted)) count += 1;
        if (String(pitchClassesOf(scale)) !== String(wanted)) count = Number.NaN;
      }
    }
    expect(count).toBe(9702);
  });

  test('the same when looked up and when spelled anew', () => {
    const mode = modeOf(STEPS.seventhOfHarmonicMinor);
    for (const root of ROOTS) expect(spell(mode, root)).toEqual(spellAnew(mode, root));
    expect(spell(mode, rootOf('A'))).toBe(spell(mode, rootOf('A')));
  });
});

describe('the readable spelling', () => {
  test('is the strict one wherever no more than a double accidental is needed', () => {
    for (const mode of UNIVERSE.modes) {
      for (const root of ROOTS) {
        const isBeyond = accidentalsOf(mode, root).some((size) => Math.abs(size) > 2);
        const scale = spell(mode, root);
        if (needsReadable(scale) !== isBeyond || (!isBeyond && scale.readable !== scale.notes)) {
          expect.unreachable(`${root.name} ${mode.id}`);
        }
      }
    }
  });

  test('has at most one accidental a note, keeps the root, and sounds the same', () => {
    for (const mode of UNIVERSE.modes) {
      for (const root of ROOTS) {
        const scale = spell(mode, root);
        if (!needsReadable(scale)) continue;
        const isRight =
          scale.readable[0] === root.name &&
          scale.readable.every((note) => note.length <= 2) &&
          String(scale.readable.map(soundOf)) === String(pitchClassesOf(scale));
        if (!isRight) expect.unreachable(`${root.name} ${mode.id}: ${scale.readable.join(' ')}`);
      }
    }
  });

  test('repeats the fewest letters that any choice of sharps and flats would', () => {
    const lettersOf = (notes: readonly string[]) => new Set(notes.map((note) => note.charAt(0))).size;
    for (const mode of UNIVERSE.modes) {
      for (const root of ROOTS) {
        const scale = spell(mode, root);
        if (!needsReadable(scale)) continue;
        const black = pitchClassesOf(scale).filter((one, at) => at > 0 && !NATURALS.includes(one));
        let most = 0;
        for (let choice = 0; choice < 2 ** black.length; choice += 1) {
          const notes = pitchClassesOf(scale).map((pitchClass, at) => {
            if (at === 0) return root.name;
            const flat = black.includes(pitchClass) && (choice >> black.indexOf(pitchClass)) % 2;
            const natural = NATURALS.findLastIndex((one) => one <= pitchClass) + (flat ? 1 : 0);
            return 'CDEFGAB'.charAt(natural);
          });
          most = Math.max(most, lettersOf(notes));
        }
        if (lettersOf(scale.readable) !== most) expect.unreachable(`${root.name} ${mode.id}`);
      }
    }
  });

  test('is needed by 393 of the 462 × 12, even from the kindest root', () => {
    let needed = 0;
    for (const mode of UNIVERSE.modes) {
      for (let pitchClass = 0; pitchClass < 12; pitchClass += 1) {
        const isBeyond = ROOTS.filter((root) => root.pitchClass === pitchClass).every((root) =>
          accidentalsOf(mode, root).some((size) => Math.abs(size) > 2),
        );
        const scale = spell(mode, kindestRootOf(mode, pitchClass));
        expect(needsReadable(scale)).toBe(isBeyond);
        needed += Number(isBeyond);
      }
    }
    expect(needed).toBe(393);
  });

  test.each([
    ['C', '1111116', 'C Db Ebb Fbb Gbbb Abbbb Bbbbbb', 'C Db D Eb E F Gb'],
    ['C', '6111111', 'C D#### E### F### G## A# B', 'C F# G G# A A# B'],
  ])('of the steps on %s, %s, which are strictly %s, is %s', (root, steps, strict, readable) => {
    const scale = scaleOf(root, steps);
    expect(scale.notes.join(' ')).toBe(strict);
    expect(scale.readable.join(' ')).toBe(readable);
  });
});

describe('the kindest root', () => {
  test.each([
    ['A#', STEPS.ionian, 'Bb'],
    ['G#', STEPS.ionian, 'Ab'],
    ['Cb', STEPS.ionian, 'B'],
    ['F#', STEPS.ionian, 'F#'],
    ['Gb', STEPS.ionian, 'Gb'],
    ['Ab', STEPS.harmonicMinor, 'Ab'],
    ['G#', STEPS.harmonicMinor, 'G#'],
    ['Db', STEPS.aeolian, 'C#'],
    ['D', STEPS.seventhOfHarmonicMinor, 'D'],
    ['Bb', STEPS.seventhOfHarmonicMinor, 'A#'],
  ])('instead of %s, for the steps %s, is %s', (root, steps, kindest) => {
    expect(kindestRoot(modeOf(steps), rootOf(root)).name).toBe(kindest);
  });

  test.each([
    [6, STEPS.ionian, 'Gb'],
    [0, STEPS.ionian, 'C'],
    [8, STEPS.harmonicMinor, 'Ab'],
    [11, STEPS.locrian, 'B'],
  ])('of pitch class %i, for the steps %s, is %s', (pitchClass, steps, name) => {
    expect(kindestRootOf(modeOf(steps), pitchClass).name).toBe(name);
  });

  test('has the fewest notes beyond a double accidental, then the fewest accidentals, of its twins', () => {
    for (const mode of UNIVERSE.modes) {
      for (const root of ROOTS) {
        const burden = (one: Root) => {
          const sizes = accidentalsOf(mode, one).map(Math.abs);
          return [
            sizes.filter((size) => size > 2).length,
            sizes.reduce((sum, size) => sum + size, 0),
          ] as const;
        };
        const kindest = burden(kindestRoot(mode, root));
        for (const twin of ROOTS_BY_PITCH_CLASS[root.pitchClass] ?? []) {
          const [beyond, sum] = burden(twin);
          const isKinder = beyond < kindest[0] || (beyond === kindest[0] && sum < kindest[1]);
          if (isKinder) expect.unreachable(`${twin.name} is kinder than ${root.name} for ${mode.id}`);
        }
      }
    }
  });
});
