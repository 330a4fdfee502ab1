/**
 * The play-along: what is chosen is played, seen and kept in the address.
 */
import type { Piece, Problem } from '@stillroot/core';
import { FILE_KINDS, type FileKind } from '../markup/play-panel.ts';
import { PLAY } from '../words/play.ts';
import { problemWords } from '../words/problems.ts';
import { fetchCatalogue, type Known } from './catalogue.ts';
import { here, writeAddress } from './play-address.ts';
import { PLAY_NUMBERS, type PlayChoices, playOptions, readPlayChoices } from './play-choices.ts';
import { readPanel, showPlayProblems, unreadAfter, writePanel } from './play-form.ts';
import { seekOfKey, tempoStepOfKey } from './play-keyboard.ts';
import { Lights } from './play-lights.ts';
import { type Material, materialOf } from './play-material.ts';
import { PlayParts, pressedTurn } from './play-parts.ts';
import type { Seek } from './play-place.ts';
import { FIRST_VOLUME, PlaySession } from './play-session.ts';
import { namedProblems, problemsOf, type Unread, unreadBut, unreadIn } from './play-unread.ts';
import { PlayView } from './play-view.ts';
import { showWhole } from './whole-choice.ts';

/** `<play-island data-root data-instrument>` with `data-family` or `data-mode`. */
export class PlayIsland extends HTMLElement {
  private choices: PlayChoices = readPlayChoices(here());
  private unread: Unread = unreadIn(here());
  private readonly parts = new PlayParts(this);
  private view = new PlayView(undefined);
  private readonly session = new PlaySession(
    {
      show: (piece, moment, isPlaying) => this.view.show(piece, moment, isPlaying),
      showPlaying: (isPlaying) => this.showPlaying(isPlaying),
    },
    this.choices,
  );
  private material: Material | undefined;
  private piece: Piece | undefined;
  /** Why what is chosen cannot be played. */
  private refused: readonly Problem[] = [];
  private isTurnPressed = false;

  connectedCallback(): void {
    void this.begin();
  }

  private async begin(): Promise<void> {
    try {
      const { pressed } = this.dataset;
      const isPressed = pressed !== undefined;
      const [known] = await Promise.all([fetchCatalogue(), isPressed ? this.session.load() : undefined]);
      this.parts.fill(materialOf(this.dataset, here(), known).isRound, FIRST_VOLUME);
      this.view = new PlayView(this.parts.line);
      this.listen(known);
      this.take(known);
      await this.showScore();
      if (pressed) await this.toggleTurn(Number(pressed), known);
      else if (isPressed) await this.toggle();
    } catch {
      this.parts.say(PLAY.failed);
    } finally {
      this.removeAttribute('aria-busy');
    }
  }

  private listen(known: Known): void {
    this.addEventListener('click', (event) => void this.clicked(event, known));
    this.addEventListener('keydown', (event) => this.pressed(event, known));
    for (const kind of ['change', 'input']) {
      this.addEventListener(kind, (event) => {
        // The island around has a chooser of its own, and no concern with these fields.
        event.stopPropagation();
        this.changed(event, known);
      });
    }
    document.addEventListener('drawn', () => this.take(known));
    document.addEventListener('click', (event) => {
      const turn = pressedTurn(event);
      if (turn) void this.toggleTurn(turn, known);
    });
    this.parts.score.addEventListener('toggle', () => void this.showScore());
    this.parts.panel.addEventListener('toggle', () => {
      this.tellProblems();
      showWhole(this);
    });
  }

  /** Takes what the address and the page say now. */
  private take(known: Known): void {
    this.choices = readPlayChoices(here());
    this.material = materialOf(this.dataset, here(), known);
    const piece = this.material.pieceOf(playOptions(this.choices));
    writePanel(this, this.choices, this.unread);
    this.refused = piece.ok ? [] : [piece.problem];
    this.tellProblems();
    this.piece = piece.ok ? piece.value : undefined;
    this.view.lights?.show(undefined);
    this.view.lights = new Lights(document, this.material.neck, this.material.drawn);
    this.view.forget();
    this.session.take(this.piece, this.choices);
    this.parts.showPlaying(this.session.isPlaying, this.playedAlone);
    if (this.view.score && this.parts.score.open) void this.showScore();
  }

  /** Says what could not be read: beside its field, or at the button while the fields are folded away. */
  private tellProblems(): void {
    const unseen = showPlayProblems(this, problemsOf(this.unread));
    this.parts.say([...this.refused.map(problemWords), namedProblems(unseen)].join(' ').trim());
  }

  private async clicked({ target }: Event, known: Known): Promise<void> {
    const button = target instanceof Element ? target.closest('button') : null;
    const { seek, file, step } = button?.dataset ?? {};
    if (button?.matches('.play-go')) await this.toggleAll(known);
    else if (seek) await this.seek(seek as Seek);
    else if (step) this.stepTempo(Number(step), known);
    else if (file) await this.save(FILE_KINDS.find((kind) => kind === file));
  }

  private pressed(event: KeyboardEvent, known: Known): void {
    const isHere = event.target instanceof Element && this.parts.bar.contains(event.target);
    if (!isHere || event.target === this.parts.volume) return;
    const seek = seekOfKey(event);
    const step = tempoStepOfKey(event);
    if (seek === undefined && step === 0) return;
    event.preventDefault();
    if (seek) void this.seek(seek);
    else this.stepTempo(step, known);
  }

  private stepTempo(stepBpm: number, known: Known): void {
    this.keep({ ...this.choices, tempo: within(this.choices.tempo + stepBpm, PLAY_NUMBERS.tempo) }, known);
  }

  private changed({ target, type }: Event, known: Known): void {
    if (target === this.parts.volume) {
      this.session.setVolume(Number(this.parts.volume.value) / 100);
      return;
    }
    if (type === 'change') this.unread = unreadAfter(this.unread, target);
    const choices = readPanel(this, this.choices);
    const isSlider = target instanceof HTMLInputElement && target.type === 'range';
    if (!isSlider) {
      if (type === 'change') this.keep(choices, known);
      return;
    }
    this.choices = choices;
    this.session.setChoices(choices);
    if (type === 'change') writeAddress(choices);
  }

  private keep(choices: PlayChoices, known: Known): void {
    this.unread = unreadBut(this.unread, this.choices, choices);
    writeAddress(choices);
    this.take(known);
  }

  /** Plays one mode alone, over and over, or pauses where it is played already. */
  private async toggleTurn(turn: number, known: Known): Promise<void> {
    if (this.playedAlone === turn) this.session.pause();
    else if (await this.session.load()) {
      this.isTurnPressed = true;
      // What plays would begin anew with what is kept, and once more with the mode.
      this.session.pause();
      this.keep({ ...this.choices, loop: 'mode', turn }, known);
      this.session.playSection(turn - 1);
    } else this.parts.say(PLAY.noSound);
  }

  /** After one mode was played alone by its own button, the button of all plays all again. */
  private async toggleAll(known: Known): Promise<void> {
    if (this.isTurnPressed && !this.session.isPlaying) this.keep({ ...this.choices, loop: 'round' }, known);
    await this.toggle();
  }

  private async toggle(): Promise<void> {
    if (this.session.isPlaying) this.session.pause();
    else if (await this.session.load()) this.session.play();
    else this.parts.say(PLAY.noSound);
  }

  private async seek(seek: Seek): Promise<void> {
    await this.session.load();
    const section = this.session.seek(seek);
    if (this.choices.loop !== 'mode') return;
    this.choices = { ...this.choices, turn: section + 1 };
    this.parts.showPlaying(this.session.isPlaying, this.playedAlone);
    writeAddress(this.choices);
  }

  private async showScore(): Promise<void> {
    const part = this.parts.score;
    if (!part.open || !this.material || !this.piece) return;
    const { ScoreView } = await import('./play-score.ts');
    this.view.score ??= new ScoreView(part);
    await this.view.score.draw(this.material, this.piece);
    this.view.forget();
    this.session.showAgain();
  }

  private async save(kind: FileKind | undefined): Promise<void> {
    const { material, piece, choices } = this;
    if (!kind || !material || !piece) return;
    this.parts.say(kind === 'wav' ? PLAY.rendering : '');
    try {
      const { saveFile } = await import('./play-files.ts');
      const problem = await saveFile(kind, material, piece, choices);
      this.parts.say(problem ? problemWords(problem) : '');
    } catch {
      this.parts.say(PLAY.fileFailed);
    }
  }

  private showPlaying(isPlaying: boolean): void {
    if (isPlaying) this.setAttribute('data-active', '');
    this.parts.showPlaying(isPlaying, this.playedAlone);
  }

  /** The mode that is played alone, from 1. */
  private get playedAlone(): number | undefined {
    return this.session.isPlaying && this.choices.loop === 'mode' ? this.choices.turn : undefined;
  }
}

function within(number: number, { from, to }: { readonly from: number; readonly to: number }): number {
  return Math.min(to, Math.max(from, number));
}

customElements.define('play-island', PlayIsland);
