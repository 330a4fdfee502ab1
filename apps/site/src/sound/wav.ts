/**
 * WAV files: RIFF with a format chunk and a data chunk (Multimedia Programming Interface and Data
 * Specifications 1.0, IBM and Microsoft 1991): PCM, 16 bits, one channel, little-endian.
 */

const HEADER_BYTES = 44;
const BYTES_PER_SAMPLE = 2;
const PCM = 1;
const LOUDEST = 0x7fff;

/** Samples from −1 to 1 as a WAV file; what lies beyond is cut. */
export function wavFile(samples: Float32Array, sampleRateHz: number): Uint8Array<ArrayBuffer> {
  const dataBytes = samples.length * BYTES_PER_SAMPLE;
  const bytes = new Uint8Array(HEADER_BYTES + dataBytes);
  const view = new DataView(bytes.buffer);
  const word = (at: number, text: string): void => bytes.set(new TextEncoder().encode(text), at);
  word(0, 'RIFF');
  view.setUint32(4, HEADER_BYTES - 8 + dataBytes, true);
  word(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, PCM, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, sampleRateHz, true);
  view.setUint32(28, sampleRateHz * BYTES_PER_SAMPLE, true);
  view.setUint16(32, BYTES_PER_SAMPLE, true);
  view.setUint16(34, 8 * BYTES_PER_SAMPLE, true);
  word(36, 'data');
  view.setUint32(40, dataBytes, true);
  samples.forEach((sample, at) => {
    const held = Math.min(1, Math.max(-1, sample));
    view.setInt16(HEADER_BYTES + at * BYTES_PER_SAMPLE, Math.round(held * LOUDEST), true);
  });
  return bytes;
}
