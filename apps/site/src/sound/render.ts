/**
 * A piece as a sound file: once through, from its count-in, at the tempo that it has.
 */
import { type Piece, secondsAt } from '@stillroot/core';
import type { Mix } from './mix.ts';
import { type Backing, soundEvents } from './sound-events.ts';
import { Voices } from './voices.ts';
import { wavFile } from './wav.ts';

/** Of compact discs, and what every reader of the format takes. */
const SAMPLE_RATE_HZ = 44_100;
/** The last note is let ring. */
const TAIL_SECONDS = 0.5;

/** A piece as the bytes of a WAV file, 16 bits and one channel, rendered as fast as the browser can. */
export async function renderWav(piece: Piece, backing: Backing, mix: Mix): Promise<Uint8Array<ArrayBuffer>> {
  const seconds = secondsAt(piece.timing, piece.totalTicks) + TAIL_SECONDS;
  const context = new OfflineAudioContext(1, Math.ceil(seconds * SAMPLE_RATE_HZ), SAMPLE_RATE_HZ);
  const voices = new Voices(context, mix);
  voices.output.connect(context.destination);
  for (const { voice, pitch, startTicks, endTicks } of soundEvents(piece, backing)) {
    const atSeconds = secondsAt(piece.timing, startTicks);
    voices.strike({ voice, pitch, atSeconds, lastsSeconds: secondsAt(piece.timing, endTicks) - atSeconds });
  }
  const rendered = await context.startRendering();
  return wavFile(rendered.getChannelData(0), SAMPLE_RATE_HZ);
}
