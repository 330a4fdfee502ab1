import { describe, expect, test } from 'vitest';
import { AskedBefore } from '../../apps/api/src/asked-before.ts';
import { remember } from '../../apps/api/src/remember.ts';

describe('remembering', () => {
  const counted = (most: number) => {
    const worked: number[] = [];
    const square = remember(most, String, (question: number) => {
      worked.push(question);
      return question * question;
    });
    return { worked, square };
  };

  test('keeps an answer that is asked for a second time', () => {
    const { worked, square } = counted(4);
    expect([square(3), square(3), square(3), square(3)]).toEqual([9, 9, 9, 9]);
    expect(worked).toEqual([3, 3]);
  });

  test('lets go of the answer that was not asked for the longest', () => {
    const { worked, square } = counted(4);
    for (const question of [1, 1, 2, 2, 3, 3]) square(question);
    worked.length = 0;
    for (const question of [1, 3, 2]) square(question);
    expect(worked).toEqual([2]);
  });
});

describe('what was asked before', () => {
  test('is known from the second time on', () => {
    const asked = new AskedBefore(100);
    expect(asked.ask('/v1/modes/dorian')).toBe(false);
    expect(asked.ask('/v1/modes/lydian')).toBe(false);
    expect(asked.ask('/v1/modes/dorian')).toBe(true);
  });

  test('is forgotten when much else was asked since', () => {
    const asked = new AskedBefore(10);
    asked.ask('the first');
    for (let at = 0; at < 1000; at += 1) asked.ask(`another ${at}`);
    expect(asked.ask('the first')).toBe(false);
  });
});
