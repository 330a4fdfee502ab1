/**
 * The player: strikes what is due a little ahead of the clock of the sound, and knows at any moment which tick
 * is heard.
 */
import type { Piece } from '@stillroot/core';
import type { Mix } from './mix.ts';
import type { SoundEvent } from './sound-events.ts';
import { type Course, type Stretch, secondsInto, secondsOf, stretchesFrom } from './stretches.ts';
import { Voices } from './voices.ts';

/** How far ahead things are struck; further where the browser wakes a hidden page but once a second. */
const AHEAD_SECONDS = 0.15;
const HIDDEN_AHEAD_SECONDS = 1.5;
const WAKE_MS = 30;
/** From the press to the first sound: enough for what is struck first to be computed. */
const LEAD_SECONDS = 0.03;
/** A clock that runs takes power, so it stops when nothing has been played for so long. */
const IDLE_MS = 20_000;
/** A volume is not jumped to, which would click. */
const FADE_SECONDS = 0.015;

/** What is played. */
export interface Programme {
  readonly piece: Piece;
  readonly events: readonly SoundEvent[];
  readonly course: Course;
}

/** Where the player is. */
export interface Moment {
  readonly ticks: number;
  readonly tempoBpm: number;
  readonly round: number;
}

/** A stretch laid on the clock. */
interface Laid {
  readonly stretch: Stretch;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** Plays programmes in a context that is there to be heard. */
export class Player {
  private readonly context: AudioContext;
  private readonly master: GainNode;
  private voices: Voices;
  private programme: Programme | undefined;
  private stretches: Iterator<Stretch, void> | undefined;
  private laid: Laid[] = [];
  /** Where in the events of the last laid stretch the striking has come to. */
  private next = 0;
  private timer: ReturnType<typeof setInterval> | undefined;
  /** Runs out when nothing has been played for a while. */
  private idle: ReturnType<typeof setTimeout> | undefined;
  private readonly onEnd: () => void;

  constructor(context: AudioContext, mix: Mix, volume: number, onEnd: () => void) {
    this.context = context;
    this.onEnd = onEnd;
    this.master = context.createGain();
    this.master.gain.value = volume ** 2;
    this.master.connect(context.destination);
    this.voices = new Voices(context, mix);
    this.voices.output.connect(this.master);
  }

  get isPlaying(): boolean {
    return this.timer !== undefined;
  }

  /** Plays from a tick, after the count-in if there is to be one. */
  start(programme: Programme, fromTicks: number, withCountIn: boolean, round = 0): void {
    this.halt();
    this.wakeContext();
    this.programme = programme;
    this.stretches = stretchesFrom(programme.course, fromTicks, { withCountIn, firstRound: round });
    this.lay(this.context.currentTime + LEAD_SECONDS);
    this.timer = setInterval(() => this.wake(), WAKE_MS);
    this.wake();
  }

  /** Falls silent. */
  halt(): void {
    clearInterval(this.timer);
    this.timer = undefined;
    this.laid = [];
    this.voices.silence();
    this.restLater();
  }

  /** One note alone, now. */
  pluck(pitch: number): void {
    this.wakeContext();
    this.voices.silence();
    const atSeconds = this.context.currentTime + LEAD_SECONDS;
    this.voices.strike({ voice: 'notes', pitch, atSeconds, lastsSeconds: 1 });
    this.restLater();
  }

  setMix(mix: Mix): void {
    this.voices.mix(mix);
  }

  /** @param volume 0 to 1, as loudness is heard */
  setVolume(volume: number): void {
    this.master.gain.setTargetAtTime(volume ** 2, this.context.currentTime, FADE_SECONDS);
  }

  /** What is heard just now; undefined where nothing is. */
  moment(): Moment | undefined {
    const now = this.context.currentTime - (this.context.outputLatency || 0);
    const here = this.laid.findLast(({ startSeconds }) => startSeconds <= now) ?? this.laid[0];
    if (!here || !this.programme) return undefined;
    const { stretch, startSeconds, endSeconds } = here;
    const share = Math.min(1, Math.max(0, (now - startSeconds) / (endSeconds - startSeconds)));
    const reached = stretch.fromTicks + share * (stretch.toTicks - stretch.fromTicks);
    // The end of a stretch is where another may begin that is not played: until the next is laid, this one lasts.
    const ticks = Math.min(reached, stretch.toTicks - 1);
    return { ticks, tempoBpm: stretch.tempoBpm, round: stretch.round };
  }

  private restLater(): void {
    clearTimeout(this.idle);
    this.idle = setTimeout(() => void this.context.suspend(), IDLE_MS);
  }

  private wakeContext(): void {
    clearTimeout(this.idle);
    void this.context.resume();
  }

  /** Strikes all that is due, lays the next stretch where this one runs out, and ends where none is left. */
  private wake(): void {
    const { currentTime } = this.context;
    const until = currentTime + (document.hidden ? HIDDEN_AHEAD_SECONDS : AHEAD_SECONDS);
    for (let last = this.laid.at(-1); last; last = this.laid.at(-1)) {
      this.strikeDue(last, until);
      if (last.endSeconds > until) break;
      if (!this.lay(last.endSeconds)) {
        if (currentTime >= last.endSeconds) {
          this.halt();
          this.onEnd();
        }
        break;
      }
    }
    this.laid = this.laid.filter(
      ({ endSeconds }, at) => endSeconds > currentTime - 1 || at === this.laid.length - 1,
    );
    this.prepareNext();
  }

  /** Lays the next stretch; false where there is none. */
  private lay(startSeconds: number): boolean {
    const next = this.stretches?.next();
    if (!next || next.done || !this.programme) return false;
    const stretch = next.value;
    const { events, piece } = this.programme;
    const endSeconds = startSeconds + secondsOf(stretch, piece.timing.ticksPerBeat);
    this.laid.push({ stretch, startSeconds, endSeconds });
    this.next = events.findIndex(({ startTicks }) => startTicks >= stretch.fromTicks);
    if (this.next < 0) this.next = events.length;
    // What was begun before and lasts goes on: the drone and the chords, not a note or a click.
    for (const event of events.slice(0, this.next)) {
      const isHeld = event.voice === 'drone' || event.voice === 'chords';
      if (isHeld && event.endTicks > stretch.fromTicks)
        this.strike(event, { stretch, startSeconds, endSeconds });
    }
    return true;
  }

  private strikeDue(laid: Laid, until: number): void {
    const events = this.programme?.events ?? [];
    for (let event = events[this.next]; event; event = events[this.next]) {
      if (event.startTicks >= laid.stretch.toTicks) break;
      if (laid.startSeconds + this.secondsInto(laid.stretch, event.startTicks) > until) break;
      this.strike(event, laid);
      this.next += 1;
    }
  }

  private strike({ voice, pitch, startTicks, endTicks }: SoundEvent, { stretch, startSeconds }: Laid): void {
    const from = Math.max(startTicks, stretch.fromTicks);
    const atSeconds = startSeconds + this.secondsInto(stretch, from);
    const lastsSeconds =
      this.secondsInto(stretch, Math.min(endTicks, stretch.toTicks)) - this.secondsInto(stretch, from);
    this.voices.strike({ voice, pitch, atSeconds, lastsSeconds });
  }

  /** Computes the sound of the next events, a few with each waking. */
  private prepareNext(): void {
    const last = this.laid.at(-1);
    if (!last || !this.programme) return;
    for (const { voice, pitch, startTicks, endTicks } of this.programme.events.slice(
      this.next,
      this.next + 4,
    )) {
      const lastsSeconds =
        this.secondsInto(last.stretch, endTicks) - this.secondsInto(last.stretch, startTicks);
      this.voices.prepare({ voice, pitch, lastsSeconds });
    }
  }

  private secondsInto(stretch: Stretch, ticks: number): number {
    return secondsInto(stretch, ticks, this.programme?.piece.timing.ticksPerBeat ?? 1);
  }
}
