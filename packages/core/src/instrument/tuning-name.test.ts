import { describe, expect, test } from 'vitest';
import { valueIn } from '../given.ts';
import type { Tuning } from './instrument.ts';
import { parseTuning } from './tuning.ts';
import { tuningNamed } from './tuning-name.ts';

const tuning = (id: string, name: string): Tuning => ({
  ...valueIn(parseTuning('E2-A2-D3-G3-B3-E4')),
  id,
  name,
});

const tunings = [
  tuning('standard', 'Standard'),
  tuning('drop-d', 'Drop D'),
  tuning('drop-c-sharp', 'Drop C sharp'),
  tuning('half-step-down', 'Half step down (E-flat)'),
  tuning('open-g', 'Open G (also called taro patch in slack-key)'),
  tuning('taken', 'Drop-C♯ (of another kind)'),
] as const;

describe('a tuning is known', () => {
  test.each([
    ['drop-d', 'drop-d'],
    ['drop d', 'drop-d'],
    ['Drop-D', 'drop-d'],
    [' DROP  D ', 'drop-d'],
    ['standard', 'standard'],
    ['open g', 'open-g'],
    ['Open G (also called taro patch in slack-key)', 'open-g'],
    ['drop c#', 'drop-c-sharp'],
    ['Drop C♯', 'drop-c-sharp'],
    ['drop c sharp', 'drop-c-sharp'],
    ['Half step down', 'half-step-down'],
  ])('by %s as %s', (text, id) => {
    expect(tuningNamed({ tunings }, text)?.id).toBe(id);
  });

  test.each([
    '',
    '   ',
    '-',
    'drop',
    'drop d d',
    'd r o p d',
    'constructor',
    '__proto__',
    'Drop Ⅾ',
    'drop d'.repeat(1000),
  ])('and by nothing like %j', (text) => {
    expect(tuningNamed({ tunings }, text)).toBeUndefined();
  });
});
