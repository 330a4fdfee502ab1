/**
 * What is seen of the play-along: the lights on necks and score, and one line that says what is heard.
 */
import { formatDegree, type Piece, type PlayedNote, toSigns } from '@stillroot/core';
import type { Moment } from '../sound/player.ts';
import { PLAY } from '../words/play.ts';
import type { Lights } from './play-lights.ts';
import { noteAt, sectionAt } from './play-place.ts';
import type { ScoreView } from './play-score.ts';

/** Shows moments of a piece. */
export class PlayView {
  lights: Lights | undefined;
  score: ScoreView | undefined;
  private readonly line: Element | undefined;
  private shown = '';
  private followed: Element | undefined;

  constructor(line: Element | undefined) {
    this.line = line;
  }

  /** Shows the next moment whatever was shown before. */
  forget(): void {
    this.shown = '';
  }

  /** Shows a moment, where it is not the one that is shown. */
  show(piece: Piece, { ticks, tempoBpm, round }: Moment, isPlaying: boolean): void {
    const isCounting = isPlaying && ticks < piece.countInTicks;
    const at = isCounting ? -1 : noteAt(piece, ticks);
    const note = piece.notes[at];
    const isSounding = note !== undefined && ticks < note.startTicks + note.durationTicks;
    const beat = Math.floor(ticks / piece.timing.ticksPerBeat);
    const text = [
      isCounting ? `${PLAY.countingIn}: ${(beat % piece.timing.meter.beats) + 1}` : noteWords(piece, note),
      ...(round > 0 ? [`${PLAY.round} ${round + 1}`] : []),
      `${tempoBpm} ${PLAY.bpm}`,
    ].join(' · ');
    const key = `${at} ${isSounding} ${text}`;
    if (key === this.shown) return;
    this.shown = key;
    if (this.line) this.line.textContent = text;
    this.lights?.show(isSounding ? note : undefined);
    this.score?.show(isSounding ? at : -1);
    if (note && isPlaying) this.follow(note);
  }

  /** Keeps the neck in view from mode to mode, for a reader who looks at the necks. */
  private follow(note: PlayedNote): void {
    const picture = this.lights?.pictureOf(note);
    const before = this.followed;
    this.followed = picture;
    if (!picture || picture === before || isInView(picture)) return;
    // Who looks elsewhere, or at the score, is left there; but what plays first may be far below its button.
    if (before ? !before.isConnected || !isInView(before) : this.score) return;
    // Going there the first time is no change that motion would explain.
    const isCalm = !before || matchMedia('(prefers-reduced-motion: reduce)').matches;
    picture.scrollIntoView({ block: 'center', behavior: isCalm ? 'auto' : 'smooth' });
  }
}

function noteWords(piece: Piece, note: PlayedNote | undefined): string {
  const section = note && piece.sections[sectionAt(piece, note.startTicks)];
  if (!section) return '';
  const alteration = section.scale.mode.alterations[note.degree - 1] ?? 0;
  return `${section.name}: ${toSigns(note.note)}, ${toSigns(formatDegree(note.degree, alteration))}`;
}

function isInView(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return top >= 0 && bottom <= innerHeight;
}
