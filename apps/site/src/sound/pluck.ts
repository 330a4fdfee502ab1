/**
 * A plucked string: a loop of delay, low-pass and all-pass (Karplus and Strong 1983; the fractional delay and
 * the decay after Jaffe and Smith 1983, both in Computer Music Journal 7.2). The loop is tuned so that its
 * whole delay at the fundamental is one period exactly. The noise is seeded: the same string always sounds
 * the same.
 */
import { noise } from './noise.ts';

/** A string that is plucked once. */
export interface Pluck {
  readonly frequencyHz: number;
  readonly sampleRateHz: number;
  /** How long it is listened to. */
  readonly seconds: number;
  readonly seed: number;
}

/** How much the loop averages two samples: 0 is wire, ½ is nylon. */
const SOFTNESS = 0.4;
/** Where along the string it is plucked. */
const PLUCKED_AT = 0.19;
/** How much of the noise is in the first period; the rest is the string's own bent shape. */
const NOISE_SHARE = 0.45;
/** The shortest delay that the all-pass makes well, in samples. */
const LEAST_FRACTION = 0.3;
/** Without these a string would begin and end with a click. */
const FADE_IN_SECONDS = 0.0008;
const FADE_OUT_SECONDS = 0.02;

/** The samples of a plucked string, the loudest of them 1. */
export function pluck({ frequencyHz, sampleRateHz, seconds, seed }: Pluck): Float32Array<ArrayBuffer> {
  const omega = (2 * Math.PI * frequencyHz) / sampleRateHz;
  const filterDelay =
    Math.atan2(SOFTNESS * Math.sin(omega), 1 - SOFTNESS + SOFTNESS * Math.cos(omega)) / omega;
  const left = sampleRateHz / frequencyHz - filterDelay;
  const length = Math.max(1, Math.floor(left - LEAST_FRACTION));
  const fraction = left - length;
  const allPass = Math.sin(((1 - fraction) * omega) / 2) / Math.sin(((1 + fraction) * omega) / 2);
  const gain = 10 ** (-3 / (frequencyHz * decaySeconds(frequencyHz)));
  const line = firstPeriod(length, seed);
  const samples = new Float32Array(Math.ceil(seconds * sampleRateHz));
  let before = 0;
  let filteredBefore = 0;
  let passedBefore = 0;
  for (let at = 0, slot = 0; at < samples.length; at += 1) {
    const sample = line[slot] as number;
    samples[at] = sample;
    const filtered = gain * ((1 - SOFTNESS) * sample + SOFTNESS * before);
    const passed = allPass * (filtered - passedBefore) + filteredBefore;
    before = sample;
    filteredBefore = filtered;
    passedBefore = passed;
    line[slot] = passed;
    slot = slot + 1 === length ? 0 : slot + 1;
  }
  return faded(samples, sampleRateHz);
}

/** How long a string takes to fall by 60 dB: low ones ring on, high ones are short (by ear; no source). */
export function decaySeconds(frequencyHz: number): number {
  return Math.min(7, Math.max(1.4, 5 * Math.sqrt(110 / frequencyHz)));
}

/** The string as it is let go: bent at the place where it is plucked, with noise, and without an offset. */
function firstPeriod(length: number, seed: number): Float64Array {
  const next = noise(seed);
  const raw = Float64Array.from({ length }, next);
  const apex = Math.max(1, Math.round(length * PLUCKED_AT));
  const bent = Float64Array.from({ length }, (_, at) =>
    at < apex ? at / apex : (length - at) / (length - apex),
  );
  const line = bent.map((shape, at) => {
    const comb = (raw[at] as number) - (raw[(at + apex) % length] as number);
    return (1 - NOISE_SHARE) * (2 * shape - 1) + NOISE_SHARE * comb;
  });
  const mean = line.reduce((sum, one) => sum + one, 0) / length;
  return line.map((one) => one - mean);
}

function faded(samples: Float32Array<ArrayBuffer>, sampleRateHz: number): Float32Array<ArrayBuffer> {
  const fadeIn = Math.round(FADE_IN_SECONDS * sampleRateHz);
  const fadeOut = Math.min(samples.length, Math.round(FADE_OUT_SECONDS * sampleRateHz));
  const peak = samples.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
  const scale = peak > 0 ? 1 / peak : 0;
  return samples.map((one, at) => {
    const begun = Math.min(1, at / fadeIn);
    const ending = Math.min(1, (samples.length - 1 - at) / fadeOut);
    return one * scale * begun * ending;
  });
}
