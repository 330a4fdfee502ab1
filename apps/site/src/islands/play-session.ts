/**
 * A session of playing: what is played, from where, and what happens when it changes under way.
 */
import type { Piece, Section } from '@stillroot/core';
import type { Moment, Player, Programme } from '../sound/player.ts';
import type { PlayChoices } from './play-choices.ts';
import { soundContext } from './play-context.ts';
import { noteAt, type Seek, sectionAt, seekFrom } from './play-place.ts';

/** Low: louder is for the reader to choose, every time anew. */
export const FIRST_VOLUME = 0.4;

/** What a session tells. */
export interface SessionView {
  /** What is heard, or would be, has changed. */
  readonly show: (piece: Piece, moment: Moment, isPlaying: boolean) => void;
  readonly showPlaying: (isPlaying: boolean) => void;
}

type Sound = typeof import('../sound/sound.ts');

/** Plays pieces one at a time. */
export class PlaySession {
  private readonly view: SessionView;
  private piece: Piece | undefined;
  private choices: PlayChoices;
  private volume = FIRST_VOLUME;
  private sound: Sound | undefined;
  private player: Player | undefined;
  /** Where it stands while nothing is played. */
  private ticks = 0;

  constructor(view: SessionView, choices: PlayChoices) {
    this.view = view;
    this.choices = choices;
  }

  get isPlaying(): boolean {
    return this.player?.isPlaying ?? false;
  }

  /**
   * Takes another piece, or the same one chosen otherwise. It goes on at the same note where the line is the
   * same, and else with the mode that is played.
   */
  take(piece: Piece | undefined, choices: PlayChoices): void {
    const { piece: before, player } = this;
    const moment = player?.moment();
    this.piece = piece;
    this.choices = choices;
    if (!piece) {
      this.stop();
      return;
    }
    if (!before) {
      this.goTo(sectionStart(piece, choices.turn - 1));
      return;
    }
    const ticks = moment?.ticks ?? this.ticks;
    const isSame = piece.notes.length === before.notes.length && piece.noteValue === before.noteValue;
    const note = isSame ? piece.notes[Math.max(0, noteAt(before, ticks))] : undefined;
    const next = note?.startTicks ?? sectionStart(piece, sectionAt(before, ticks));
    if (player?.isPlaying && moment) {
      const isCounting = moment.ticks < before.countInTicks;
      this.ticks = isCounting ? this.ticks : next;
      player.start(this.programme(piece, next), next, isCounting, moment.round);
    } else this.goTo(next);
  }

  /** Fetches the sound, once; false where the browser has none. */
  async load(): Promise<boolean> {
    const context = soundContext();
    if (!context) return false;
    this.sound ??= await import('../sound/sound.ts');
    this.player ??= new this.sound.Player(context, this.choices.mix, this.volume, () => this.ended());
    return true;
  }

  play(): void {
    const { piece, player } = this;
    if (!piece || !player) return;
    player.setMix(this.choices.mix);
    player.start(this.programme(piece, this.ticks), this.ticks, true);
    this.view.showPlaying(true);
    this.frame();
  }

  /** Stops at the beginning of the note that is heard, so that going on does not begin in its middle. */
  pause(): void {
    const { piece, player } = this;
    const ticks = player?.moment()?.ticks;
    this.stop();
    if (!piece) return;
    const isAtNote = ticks !== undefined && ticks >= piece.countInTicks;
    this.goTo(isAtNote ? (piece.notes[noteAt(piece, ticks)]?.startTicks ?? this.ticks) : this.ticks);
  }

  /** Goes to a mode of the piece, from 0, and plays from there. */
  playSection(at: number): void {
    const { piece, player } = this;
    if (!piece) return;
    this.goTo(sectionStart(piece, at));
    if (player?.isPlaying) player.start(this.programme(piece, this.ticks), this.ticks, true);
    else this.play();
  }

  /** Goes elsewhere, and sounds the note there; returns the mode's place in the piece, from 0. */
  seek(seek: Seek): number {
    const { piece, player } = this;
    if (!piece) return 0;
    const moment = player?.moment();
    const isCounting = moment !== undefined && moment.ticks < piece.countInTicks;
    const next = seekFrom(piece, isCounting ? this.ticks : (moment?.ticks ?? this.ticks), seek);
    this.goTo(next);
    if (player?.isPlaying) player.start(this.programme(piece, next), next, false, moment?.round);
    else player?.pluck(piece.notes[noteAt(piece, next)]?.midi ?? 0);
    return sectionAt(piece, next);
  }

  /** @param volume 0 to 1, as loudness is heard */
  setVolume(volume: number): void {
    this.volume = volume;
    this.player?.setVolume(volume);
  }

  setChoices(choices: PlayChoices): void {
    this.choices = choices;
    this.player?.setMix(choices.mix);
  }

  /** Shows once more where it stands. */
  showAgain(): void {
    if (this.piece && !this.isPlaying) this.goTo(this.ticks);
  }

  private stop(): void {
    this.player?.halt();
    this.view.showPlaying(false);
  }

  private ended(): void {
    this.stop();
    if (this.piece) this.goTo(seekFrom(this.piece, 0, 'start'));
  }

  private goTo(ticks: number): void {
    this.ticks = ticks;
    if (this.piece) this.view.show(this.piece, { ticks, tempoBpm: this.choices.tempo, round: 0 }, false);
  }

  private frame(): void {
    const { piece, player } = this;
    const moment = player?.moment();
    if (!piece || !player?.isPlaying || !moment) return;
    this.view.show(piece, moment, true);
    requestAnimationFrame(() => this.frame());
  }

  /** What is to be played from a tick on. */
  private programme(piece: Piece, ticks: number): Programme {
    const { backing, metronome, loop, tempo, step, top, every } = this.choices;
    const section = piece.sections[sectionAt(piece, ticks)] as Section;
    const isOneMode = loop === 'mode';
    const drone = backing === 'drone' || backing === 'both';
    const chords = backing === 'vamp' || backing === 'both';
    const course = {
      fromTicks: isOneMode ? section.startTicks : piece.countInTicks,
      toTicks: isOneMode ? section.endTicks : piece.totalTicks,
      countInTicks: piece.countInTicks,
      tempoBpm: tempo,
      goesRound: loop !== 'once',
      ...(step > 0 && { ladder: { stepBpm: step, topBpm: top, everyRounds: every } }),
    };
    return { piece, events: this.sound?.soundEvents(piece, { drone, chords, metronome }) ?? [], course };
  }
}

function sectionStart({ sections }: Piece, at: number): number {
  return (sections[at] ?? sections[0])?.startTicks ?? 0;
}
