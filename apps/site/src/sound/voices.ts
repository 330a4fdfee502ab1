/**
 * The voices as sound: strings, drone and clicks, struck in a context at a moment. Strings are computed once a
 * pitch and kept, and the browser starts them to the sample; nothing is computed while they sound.
 */
import { frequencyHz, invariant } from '@stillroot/core';
import { type Mix, VOICES, type Voice } from './mix.ts';
import { decaySeconds, pluck } from './pluck.ts';

/**
 * The peak of each voice at its full volume. Three tones of a chord, a note, the drone and a click together
 * stay below 1, so nothing clips.
 */
const PEAKS: Mix = { notes: 0.36, drone: 0.12, chords: 0.11, clicks: 0.15 };

/** How fast a string is damped, and how fast the drone swells and dies. */
const DAMPING_SECONDS = 0.03;
const SWELL_SECONDS = 0.06;
/** How fast volumes are changed and sounds are broken off, neither of which may click. */
const FADE_SECONDS = 0.01;
const CLICK_SECONDS = 0.05;
/** The lengths of strings that are kept, in seconds. */
const LENGTHS = [0.5, 1, 2, 4, 8];
/** The partials of the drone, softer as they rise. */
const DRONE_PARTIALS = 10;

/** Something to strike. */
export interface Stroke {
  readonly voice: Voice;
  readonly pitch: number;
  /** In the time of the context. */
  readonly atSeconds: number;
  readonly lastsSeconds: number;
}

/** Voices in one context. */
export class Voices {
  readonly output: GainNode;
  private readonly context: BaseAudioContext;
  private readonly gains: ReadonlyMap<Voice, GainNode>;
  private readonly kept = new Map<string, AudioBuffer>();
  private readonly droneWave: PeriodicWave;
  /** What has been struck, to be stopped if it must be. */
  private readonly sounding = new Map<AudioScheduledSourceNode, GainNode>();

  constructor(context: BaseAudioContext, mix: Mix) {
    this.context = context;
    this.output = context.createGain();
    this.gains = new Map(
      VOICES.map((voice) => {
        const gain = context.createGain();
        gain.gain.value = levelOf(voice, mix);
        gain.connect(this.output);
        return [voice, gain];
      }),
    );
    const partials = Float32Array.from({ length: DRONE_PARTIALS + 1 }, (_, n) => (n === 0 ? 0 : n ** -1.4));
    this.droneWave = context.createPeriodicWave(new Float32Array(DRONE_PARTIALS + 1), partials);
  }

  /** Sets the volumes of the voices, from now on. */
  mix(mix: Mix): void {
    for (const voice of VOICES) {
      const { gain } = this.gainOf(voice);
      gain.setTargetAtTime(levelOf(voice, mix), this.context.currentTime, FADE_SECONDS);
    }
  }

  /** Strikes something. */
  strike(stroke: Stroke): void {
    const gain = this.context.createGain();
    gain.connect(this.gainOf(stroke.voice));
    if (stroke.voice === 'drone') this.hold(stroke, gain);
    else this.pluck(stroke, gain);
  }

  /** Computes what a stroke needs, so that it is there when it is struck. */
  prepare({ voice, pitch, lastsSeconds }: Omit<Stroke, 'atSeconds'>): void {
    if (voice !== 'drone') this.bufferOf(voice, pitch, lastsSeconds);
  }

  /** Silences everything that sounds or is about to. */
  silence(): void {
    const { currentTime } = this.context;
    for (const [source, { gain }] of this.sounding) {
      gain.cancelScheduledValues(currentTime);
      gain.setTargetAtTime(0, currentTime, FADE_SECONDS);
      source.stop(currentTime + 4 * FADE_SECONDS);
    }
    this.sounding.clear();
  }

  private pluck({ voice, pitch, atSeconds, lastsSeconds }: Stroke, gain: GainNode): void {
    const source = this.context.createBufferSource();
    source.buffer = this.bufferOf(voice, pitch, lastsSeconds);
    const end = atSeconds + lastsSeconds;
    gain.gain.setValueAtTime(1, Math.max(atSeconds, end - DAMPING_SECONDS / 3));
    gain.gain.linearRampToValueAtTime(0, end + (2 * DAMPING_SECONDS) / 3);
    this.start(source, gain, atSeconds, end + DAMPING_SECONDS);
  }

  private hold({ pitch, atSeconds, lastsSeconds }: Stroke, gain: GainNode): void {
    const source = this.context.createOscillator();
    source.setPeriodicWave(this.droneWave);
    source.frequency.value = frequencyHz(pitch);
    const end = atSeconds + Math.max(lastsSeconds, 2 * SWELL_SECONDS);
    gain.gain.setValueAtTime(0, atSeconds);
    gain.gain.linearRampToValueAtTime(1, atSeconds + SWELL_SECONDS);
    gain.gain.setValueAtTime(1, end - SWELL_SECONDS);
    gain.gain.linearRampToValueAtTime(0, end);
    this.start(source, gain, atSeconds, end);
  }

  private start(source: AudioScheduledSourceNode, gain: GainNode, atSeconds: number, end: number): void {
    source.connect(gain);
    source.start(atSeconds);
    source.stop(end);
    this.sounding.set(source, gain);
    source.addEventListener('ended', () => {
      this.sounding.delete(source);
      gain.disconnect();
    });
  }

  private gainOf(voice: Voice): GainNode {
    const gain = this.gains.get(voice);
    invariant(gain !== undefined, `${voice} is a voice`);
    return gain;
  }

  private bufferOf(voice: Voice, pitch: number, lastsSeconds: number): AudioBuffer {
    const { sampleRate } = this.context;
    if (voice === 'clicks') return this.keep(`click ${pitch}`, () => click(pitch === 1, sampleRate));
    const hz = frequencyHz(pitch);
    const needed = Math.min(lastsSeconds + DAMPING_SECONDS, decaySeconds(hz));
    const seconds = LENGTHS.find((one) => one >= needed) ?? decaySeconds(hz);
    return this.keep(`${pitch} ${seconds}`, () =>
      pluck({ frequencyHz: hz, sampleRateHz: sampleRate, seconds, seed: pitch }),
    );
  }

  private keep(key: string, make: () => Float32Array<ArrayBuffer>): AudioBuffer {
    const kept = this.kept.get(key);
    if (kept) return kept;
    const samples = make();
    const buffer = this.context.createBuffer(1, samples.length, this.context.sampleRate);
    buffer.copyToChannel(samples, 0);
    this.kept.set(key, buffer);
    return buffer;
  }
}

function levelOf(voice: Voice, mix: Mix): number {
  return PEAKS[voice] * mix[voice] ** 2;
}

/** A dry click, higher where it begins a bar. */
function click(isAccent: boolean, sampleRateHz: number): Float32Array<ArrayBuffer> {
  const omega = (2 * Math.PI * (isAccent ? 1568 : 1047)) / sampleRateHz;
  return Float32Array.from(
    { length: Math.round(CLICK_SECONDS * sampleRateHz) },
    (_, at) => Math.sin(omega * at) * Math.exp((-at / sampleRateHz / CLICK_SECONDS) * 6),
  );
}
