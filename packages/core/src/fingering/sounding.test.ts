import { describe, expect, test } from 'vitest';
import { INSTRUMENTS, modeOf, neckOf, rootOf, STEPS, scaleOf } from '../given.ts';
import { spell } from '../mode/spelling.ts';
import { modesFrom } from '../relation/relatives.ts';
import { climbLength, markArea, newMarks, OPEN_STRING_USES } from './area.ts';
import { octaveBits, octavesFrom, soundings } from './sounding.ts';

const { guitar, bass, banjo } = INSTRUMENTS;

describe('what sounds in an area', () => {
  const modes = modesFrom(modeOf(STEPS.harmonicMinor)).map((mode) => spell(mode, rootOf('C')));

  test.each([
    ['guitar', guitar],
    ['bass', bass],
    ['banjo', banjo],
  ])('has as many octaves of several scales on a %s as each of them can be climbed', (_, instrument) => {
    const neck = neckOf(instrument);
    const marks = newMarks();
    const counts = new Set<number>();
    for (const openStrings of OPEN_STRING_USES) {
      for (const width of [3, 5, 8, 12]) {
        const sounding = soundings(neck, width, openStrings);
        for (const [at, area] of sounding.areas.entries()) {
          markArea(neck, area, openStrings, marks);
          for (let rootMidi = 0; rootMidi < 128; rootMidi += 12) {
            const shortest = Math.min(...modes.map((scale) => climbLength(marks, scale, rootMidi)));
            const octaves = Math.max(0, Math.floor((shortest - 1) / 7));
            expect(octavesFrom(sounding, at, octaveBits(modes), rootMidi)).toBe(octaves);
            counts.add(octaves);
          }
        }
      }
    }
    expect(counts.size).toBeGreaterThan(1);
  });

  test('takes the semitones of every scale, both roots included', () => {
    const aeolian = scaleOf('A', STEPS.aeolian);
    expect(octaveBits([aeolian]).toString(2)).toBe('1010110101101');
    const all = [scaleOf('A', STEPS.ionian), aeolian];
    expect(octaveBits(all).toString(2)).toBe('1111110111101');
  });

  test('is worked out once', () => {
    const neck = neckOf(guitar);
    expect(soundings(neck, 5, 'never')).toBe(soundings(neck, 5, 'never'));
    expect(soundings(neck, 5, 'never')).not.toBe(soundings(neck, 5, 'anywhere'));
  });
});
