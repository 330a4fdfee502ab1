/**
 * The play-along: what is chosen is played, seen and kept in the address.
 */
import type { Piece } from '@stillroot/core';
import { barHtml, FILE_KINDS, type FileKind, panelHtml } from '../markup/play-panel.ts';
import { PLAY } from '../words/play.ts';
import { fetchCatalogue, type Known } from './catalogue.ts';
import { here, writeAddress } from './play-address.ts';
import { PLAY_NUMBERS, type PlayChoices, playOptions, readPlayChoices } from './play-choices.ts';
import { problemText, readPanel, writePanel } from './play-form.ts';
import { seekOfKey, tempoStepOfKey } from './play-keyboard.ts';
import { Lights } from './play-lights.ts';
import { type Material, materialOf } from './play-material.ts';
import type { Seek } from './play-place.ts';
import { FIRST_VOLUME, PlaySession } from './play-session.ts';
import { PlayView } from './play-view.ts';

/** `<play-island data-root data-instrument>` with `data-family` or `data-mode`. */
export class PlayIsland extends HTMLElement {
  private choices: PlayChoices = readPlayChoices(here());
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

  connectedCallback(): void {
    void this.begin();
  }

  private async begin(): Promise<void> {
    try {
      const isPressed = this.dataset['pressed'] !== undefined;
      const [known] = await Promise.all([fetchCatalogue(), isPressed ? this.session.load() : undefined]);
      this.build(known);
      this.listen(known);
      this.take(known);
      await this.showScore();
      if (isPressed) await this.toggle();
    } catch {
      this.say(PLAY.failed);
    } finally {
      this.removeAttribute('aria-busy');
    }
  }

  private build(known: Known): void {
    const { isRound } = materialOf(this.dataset, here(), known);
    this.bar.insertAdjacentHTML('beforeend', barHtml(isRound));
    const caution = document.createElement('p');
    caution.className = 'play-caution';
    caution.textContent = PLAY.hearing;
    held(this.querySelector('.play-status')).after(caution);
    this.partOf('panel').insertAdjacentHTML('beforeend', panelHtml({ numbers: PLAY_NUMBERS, isRound }));
    this.volumeField.value = String(FIRST_VOLUME * 100);
    this.view = new PlayView(held(this.querySelector('.play-now')));
  }

  private listen(known: Known): void {
    this.addEventListener('click', (event) => void this.clicked(event));
    this.addEventListener('keydown', (event) => this.pressed(event, known));
    for (const kind of ['change', 'input']) {
      this.addEventListener(kind, (event) => {
        // The island around has a chooser of its own, and no concern with these fields.
        event.stopPropagation();
        this.changed(event, known);
      });
    }
    document.addEventListener('drawn', () => this.take(known));
    this.partOf('score').addEventListener('toggle', () => void this.showScore());
  }

  /** Takes what the address and the page say now. */
  private take(known: Known): void {
    this.choices = readPlayChoices(here());
    this.material = materialOf(this.dataset, here(), known);
    const piece = this.material.pieceOf(playOptions(this.choices));
    writePanel(this, this.choices);
    this.say(piece.ok ? '' : problemText(piece.problem));
    this.piece = piece.ok ? piece.value : undefined;
    this.view.lights?.show(undefined);
    this.view.lights = new Lights(document, this.material.neck, this.material.drawn);
    this.view.forget();
    this.session.take(this.piece, this.choices);
    if (this.view.score && this.partOf('score').open) void this.showScore();
  }

  private async clicked({ target }: Event): Promise<void> {
    const button = target instanceof Element ? target.closest('button') : null;
    const { seek, file } = button?.dataset ?? {};
    if (button?.matches('.play-go')) await this.toggle();
    else if (seek) await this.seek(seek as Seek);
    else if (file) await this.save(FILE_KINDS.find((kind) => kind === file));
  }

  private pressed(event: KeyboardEvent, known: Known): void {
    const isHere = event.target instanceof Element && this.bar.contains(event.target);
    if (!isHere || event.target === this.volumeField) return;
    const seek = seekOfKey(event);
    const step = tempoStepOfKey(event);
    if (seek === undefined && step === 0) return;
    event.preventDefault();
    if (seek) void this.seek(seek);
    else this.keep({ ...this.choices, tempo: within(this.choices.tempo + step, PLAY_NUMBERS.tempo) }, known);
  }

  private changed({ target, type }: Event, known: Known): void {
    if (target === this.volumeField) {
      this.session.setVolume(Number(this.volumeField.value) / 100);
      return;
    }
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
    writeAddress(choices);
    this.take(known);
  }

  private async toggle(): Promise<void> {
    if (this.session.isPlaying) this.session.pause();
    else if (await this.session.load()) this.session.play();
    else this.say(PLAY.noSound);
  }

  private async seek(seek: Seek): Promise<void> {
    await this.session.load();
    const section = this.session.seek(seek);
    if (this.choices.loop !== 'mode') return;
    this.choices = { ...this.choices, turn: section + 1 };
    writeAddress(this.choices);
  }

  private async showScore(): Promise<void> {
    const part = this.partOf('score');
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
    this.say(kind === 'wav' ? PLAY.rendering : '');
    try {
      const { saveFile } = await import('./play-files.ts');
      const problem = await saveFile(kind, material, piece, choices);
      this.say(problem ? problemText(problem) : '');
    } catch {
      this.say(PLAY.fileFailed);
    }
  }

  private showPlaying(isPlaying: boolean): void {
    if (isPlaying) this.setAttribute('data-active', '');
    held(this.querySelector('.play-go')).textContent = isPlaying ? PLAY.pause : PLAY.play;
  }

  private get bar(): HTMLElement {
    return held(this.querySelector<HTMLElement>('.play-bar'));
  }

  private get volumeField(): HTMLInputElement {
    return held(this.querySelector<HTMLInputElement>('input[name="volume"]'));
  }

  private partOf(name: 'panel' | 'score'): HTMLDetailsElement {
    return held(this.querySelector<HTMLDetailsElement>(`[data-part="${name}"]`));
  }

  private say(text: string): void {
    held(this.querySelector('.play-status')).textContent = text;
  }
}

function within(number: number, { from, to }: { readonly from: number; readonly to: number }): number {
  return Math.min(to, Math.max(from, number));
}

function held<T>(element: T | null): T {
  if (element === null) throw new Error('the play-along is whole');
  return element;
}

customElements.define('play-island', PlayIsland);
