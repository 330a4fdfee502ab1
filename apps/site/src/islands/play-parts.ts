/**
 * The parts of the play-along on the page, and the buttons beside the necks of a round.
 */
import { barHtml, panelHtml } from '../markup/play-panel.ts';
import { PLAY } from '../words/play.ts';
import { PLAY_NUMBERS } from './play-choices.ts';

/** Finds the parts of a `<play-island>`. */
export class PlayParts {
  private readonly island: HTMLElement;

  constructor(island: HTMLElement) {
    this.island = island;
  }

  get bar(): HTMLElement {
    return this.find('.play-bar');
  }

  get line(): HTMLElement {
    return this.find('.play-now');
  }

  get volume(): HTMLInputElement {
    return this.find<HTMLInputElement>('input[name="volume"]');
  }

  get panel(): HTMLDetailsElement {
    return this.find<HTMLDetailsElement>('[data-part="panel"]');
  }

  get score(): HTMLDetailsElement {
    return this.find<HTMLDetailsElement>('[data-part="score"]');
  }

  /** Fills in what is fetched: the bar and the panel. */
  fill(isRound: boolean, volume: number): void {
    this.bar.insertAdjacentHTML('beforeend', barHtml(isRound));
    const caution = document.createElement('p');
    caution.className = 'play-caution';
    caution.textContent = PLAY.hearing;
    this.find('.play-status').after(caution);
    const panel = panelHtml({ numbers: PLAY_NUMBERS, isRound });
    this.panel.insertAdjacentHTML('beforeend', panel);
    this.volume.value = String(volume * 100);
  }

  say(text: string): void {
    this.find('.play-status').textContent = text;
  }

  /** Says at the buttons whether it plays, and which mode alone. */
  showPlaying(isPlaying: boolean, turn: number | undefined): void {
    this.find('.play-go').textContent = isPlaying ? PLAY.pause : PLAY.play;
    for (const button of document.querySelectorAll<HTMLElement>('.turn-play')) {
      const isPlayed = Number(button.dataset['turn']) === turn;
      button.toggleAttribute('data-played', isPlayed);
      button.textContent = isPlayed ? PLAY.pause : PLAY.play;
      // `Play: A Dorian`, or `Pause: A Dorian`.
      button.ariaLabel = `${button.textContent}${button.ariaLabel?.replace(/^[^:]*/, '')}`;
    }
  }

  private find<T extends HTMLElement>(selector: string): T {
    const part = this.island.querySelector<T>(selector);
    if (part === null) throw new Error(`the play-along has a part ${selector}`);
    return part;
  }
}

/** The mode whose own button was pressed, from 1; undefined where none was. */
export function pressedTurn({ target }: Event): number | undefined {
  const button = target instanceof Element ? target.closest<HTMLElement>('.turn-play') : null;
  return button ? Number(button.dataset['turn']) : undefined;
}
