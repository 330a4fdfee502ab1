import { describe, expect, test } from 'vitest';
import { fail, invariant, succeed } from './problem.ts';

describe('a result', () => {
  test('holds the value it succeeded with', () => {
    expect(succeed(7)).toEqual({ ok: true, value: 7 });
  });

  test('holds the field, the value and what was expected where it failed', () => {
    expect(fail('root', 'H', 'a letter')).toEqual({
      ok: false,
      problem: { field: 'root', value: 'H', expected: 'a letter' },
    });
  });

  test.each([
    [60, 'x'.repeat(60)],
    [61, `${'x'.repeat(57)}...`],
    [100_000, `${'x'.repeat(57)}...`],
  ])('shows a value of %i characters in at most 60', (length, shown) => {
    expect(fail('root', 'x'.repeat(length), '')).toMatchObject({ problem: { value: shown } });
  });

  test('does not cut a sign in two', () => {
    expect(fail('root', '𝄫'.repeat(40), '')).toMatchObject({ problem: { value: `${'𝄫'.repeat(28)}...` } });
  });
});

describe('an invariant', () => {
  test('lets what holds pass', () => {
    expect(() => invariant(true, 'seven modes')).not.toThrow();
  });

  test('stops the program where it does not hold', () => {
    expect(() => invariant(false, 'seven modes')).toThrow('invariant: seven modes');
  });
});
