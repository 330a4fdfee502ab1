/**
 * Measuring sound: reading WAV files, hearing pitches, finding where notes begin. Nothing here knows how the
 * sound was made.
 */

/** A sound as it lies in a file. */
export interface Sound {
  readonly sampleRateHz: number;
  /** From −1 to 1. */
  readonly samples: Float64Array;
}

/** Reads a WAV file: PCM, 16 bits, one channel (RIFF; IBM and Microsoft 1991). Throws where it is another. */
export function readWav(bytes: Buffer): Sound {
  const word = (at: number): string => bytes.toString('latin1', at, at + 4);
  if (word(0) !== 'RIFF' || word(8) !== 'WAVE') throw new Error('no WAV file');
  if (bytes.readUInt32LE(4) !== bytes.length - 8) throw new Error('its length is wrong');
  let sampleRateHz = 0;
  for (let at = 12; at < bytes.length; at += 8 + bytes.readUInt32LE(at + 4)) {
    const body = at + 8;
    if (word(at) === 'fmt ') {
      const [format, channels, bits] = [
        bytes.readUInt16LE(body),
        bytes.readUInt16LE(body + 2),
        bytes.readUInt16LE(body + 14),
      ];
      if (format !== 1 || channels !== 1 || bits !== 16) throw new Error('no PCM of 16 bits and one channel');
      sampleRateHz = bytes.readUInt32LE(body + 4);
    }
    if (word(at) === 'data') {
      const count = bytes.readUInt32LE(at + 4) / 2;
      return {
        sampleRateHz,
        samples: Float64Array.from({ length: count }, (_, one) => bytes.readInt16LE(body + 2 * one) / 32_768),
      };
    }
  }
  throw new Error('no samples');
}

/**
 * The pitch that is heard from a moment on, in hertz, by the normalised square difference (McLeod and Wyvill,
 * A smarter way to find pitch, ICMC 2005), its peak refined over as many periods as are looked at.
 * Every second sample is enough, since strings sound below 2 kHz.
 * @param windowSeconds more than twice the longest period that is to be heard
 */
export function pitchAt({ samples, sampleRateHz }: Sound, seconds: number, windowSeconds: number): number {
  const from = Math.round(seconds * sampleRateHz);
  const length = Math.floor((windowSeconds * sampleRateHz) / 2);
  const window = Float64Array.from({ length }, (_, at) => {
    const one = from + 2 * at;
    return ((samples[one] as number) + (samples[one + 1] as number)) / 2;
  });
  const alike = likeness(window, Math.floor(window.length * 0.45));
  const first = peaksOf(alike, 0.9)[0] ?? Number.NaN;
  const last = peaksOf(alike, 0.9).at(-1) ?? Number.NaN;
  const periods = Math.round(last / first);
  return (sampleRateHz * periods) / (2 * last);
}

function likeness(window: Float64Array, most: number): Float64Array {
  return Float64Array.from({ length: most }, (_, lag) => {
    let [product, power] = [0, 0];
    for (let at = 0; at + lag < window.length; at += 1) {
      const [a, b] = [window[at] as number, window[at + lag] as number];
      product += a * b;
      power += a * a + b * b;
    }
    return power > 0 ? (2 * product) / power : 0;
  });
}

/** The lags of the peaks that come near to the highest, each between its samples. */
function peaksOf(alike: Float64Array, share: number): readonly number[] {
  const begin = alike.findIndex((one) => one < 0);
  const inner = [...alike.keys()].slice(Math.max(1, begin), -1);
  const at = (lag: number): number => alike[lag] as number;
  const peaks = inner.filter((lag) => at(lag) > 0 && at(lag) >= at(lag - 1) && at(lag) > at(lag + 1));
  const highest = Math.max(...peaks.map(at));
  return peaks
    .filter((lag) => at(lag) >= share * highest)
    .map((lag) => {
      const [left, middle, right] = [at(lag - 1), at(lag), at(lag + 1)];
      return lag + (left - right) / (2 * (left - 2 * middle + right));
    });
}

/**
 * The moments at which something is struck, in seconds: where the treble, which a string has most of when it
 * is plucked, rises at once.
 */
export function onsetsIn({ samples, sampleRateHz }: Sound, leastGapSeconds: number): readonly number[] {
  const hop = Math.round(0.0005 * sampleRateHz);
  const treble = Float64Array.from({ length: Math.floor(samples.length / hop) }, (_, block) => {
    let power = 1e-12;
    for (let at = Math.max(2, block * hop); at < (block + 1) * hop; at += 1) {
      power += ((samples[at] as number) - 2 * (samples[at - 1] as number) + (samples[at - 2] as number)) ** 2;
    }
    return power;
  });
  const mean = (from: number, to: number): number => {
    const blocks = treble.subarray(Math.max(0, from), Math.max(0, to));
    return blocks.length > 0 ? blocks.reduce((sum, one) => sum + one, 0) / blocks.length : 1e-12;
  };
  const rise = treble.map((_, block) => mean(block, block + 6) / (mean(block - 20, block) + 1e-9));
  const gap = Math.round((leastGapSeconds * sampleRateHz) / hop);
  const onsets: number[] = [];
  for (const [block, one] of rise.entries()) {
    if (one < 8) continue;
    const around = rise.subarray(Math.max(0, block - gap), block + gap);
    if (one >= Math.max(...around)) onsets.push((block * hop) / sampleRateHz);
  }
  return onsets;
}

/** How loud one frequency is over a stretch, as the height of its sine (Goertzel 1958). */
export function partialAt({ samples, sampleRateHz }: Sound, hz: number, from: number, to: number): number {
  const window = samples.subarray(Math.round(from * sampleRateHz), Math.round(to * sampleRateHz));
  const omega = (2 * Math.PI * hz) / sampleRateHz;
  let [real, imaginary, weight] = [0, 0, 0];
  for (const [at, one] of window.entries()) {
    const hann = 0.5 - 0.5 * Math.cos((2 * Math.PI * at) / window.length);
    real += one * hann * Math.cos(omega * at);
    imaginary += one * hann * Math.sin(omega * at);
    weight += hann;
  }
  return (2 * Math.hypot(real, imaginary)) / weight;
}

/** The loudest sample. */
export function peakOf({ samples }: Sound): number {
  return samples.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
}
