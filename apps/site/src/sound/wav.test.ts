/**
 * Byte by byte after the description of WAVE in Multimedia Programming Interface and Data Specifications 1.0
 * (IBM and Microsoft, 1991); offsets recalled.
 */
import { expect, test } from 'vitest';
import { wavFile } from './wav.ts';

test('a WAV file says what it holds', () => {
  const bytes = wavFile(Float32Array.of(0, 1, -1, 0.5, 2), 44_100);
  expect(Buffer.from(bytes).toString('hex').match(/.{8}/g)?.join(' ')).toBe(
    [
      '52494646 2e000000 57415645', // RIFF, 46 bytes follow, WAVE
      '666d7420 10000000 01000100', // "fmt ", 16 bytes: PCM, one channel
      '44ac0000 88580100 02001000', // 44,100 Hz, 88,200 bytes a second, 2 bytes a sample, 16 bits
      '64617461 0a000000', // data, 10 bytes
      '0000ff7f 01800040', // 0, 1, −1, ½
    ].join(' '),
  );
  expect(Buffer.from(bytes.slice(-2)).toString('hex')).toBe('ff7f');
});
