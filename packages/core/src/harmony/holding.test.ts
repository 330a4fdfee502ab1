import { describe, expect, test } from 'vitest';
import { STEPS, valueIn } from '../given.ts';
import { pitchClassesOf } from '../mode/spelling.ts';
import { parseNote } from '../pitch/note.ts';
import { scalesHolding } from './holding.ts';

const notesOf = (text: string) => text.split(' ').map((note) => valueIn(parseNote(note)));
const nameOf = ({ scale }: { scale: { root: { name: string }; mode: { id: string } } }) =>
  `${scale.root.name} ${scale.mode.id}`;

describe('the scales that hold some notes', () => {
  test('are the seven relatives where all seven notes are given, the first note as the root first', () => {
    const found = scalesHolding(notesOf('A B C D E F G#'));
    expect(found).toHaveLength(7);
    expect(nameOf(found[0] as (typeof found)[number])).toBe(`A ${STEPS.harmonicMinor}`);
    expect(found.every(({ missing, extra }) => missing.length === 0 && extra.length === 0)).toBe(true);
  });

  test('of a triad are C(9,4) = 126 sets of seven', () => {
    const found = scalesHolding(notesOf('C E G'));
    expect(found).toHaveLength(126 * 7);
    for (const { scale, missing, extra } of found) {
      expect(missing).toEqual([]);
      expect(extra).toHaveLength(4);
      expect([0, 4, 7].every((pitchClass) => pitchClassesOf(scale).includes(pitchClass))).toBe(true);
    }
    expect(found.slice(0, 126).every(({ scale }) => scale.root.name === 'C')).toBe(true);
  });

  test('take the welcome mode first among those on the first note', () => {
    const [first] = scalesHolding(notesOf('A C E'), ({ id }) => Number(id === STEPS.dorian));
    expect(first && nameOf(first)).toBe(`A ${STEPS.dorian}`);
    expect(first?.extra).toEqual(['B', 'D', 'F#', 'G']);
  });

  test('keep the spelling that the asker gave the root', () => {
    expect(scalesHolding(notesOf('Db F Ab'))[0]?.scale.root.name).toBe('Db');
    expect(scalesHolding(notesOf('C# E# G#'))[0]?.scale.root.name).toBe('C#');
  });

  test('count a note given twice, or under two names, once', () => {
    expect(scalesHolding(notesOf('C C B# E G')).length).toBe(126 * 7);
  });

  test('lack the fewest where none holds them all', () => {
    const found = scalesHolding(notesOf('C C# D Eb E F F# G'));
    expect(found.length).toBe(8 * 7);
    expect(found.every(({ missing, extra }) => missing.length === 1 && extra.length === 0)).toBe(true);
  });

  test('are all of them where no note is given', () => {
    expect(scalesHolding([])).toHaveLength(5544);
  });
});
