/**
 * The play-along as every page carries it: a button, and two parts that are fetched when they are opened.
 * Hidden until a script runs.
 */
import { PLAY } from '../words/play.ts';

/** What is played on a page: a round or one mode. */
export interface PlayedOn {
  readonly family?: string;
  /** The id of a mode, by its steps. */
  readonly mode?: string;
  readonly root: string;
  readonly instrument: string;
  /** The level of its heading. */
  readonly headingLevel: 2 | 3;
}

/** The play-along of a page as HTML. */
export function playHtml({ headingLevel: level, ...played }: PlayedOn): string {
  const data = Object.entries(played).map(([name, value]) => ` data-${name}="${value}"`);
  return (
    `<play-island class="play screen" data-js hidden${data.join('')}><h${level}>${PLAY.title}</h${level}>` +
    `<div class="play-bar"><button type="button" class="play-go">${PLAY.play}</button></div>` +
    `<p class="play-status" role="status" data-failed="${PLAY.failed}"></p>` +
    `<details class="play-part" data-part="panel"><summary>${PLAY.settings}</summary></details>` +
    `<details class="play-part" data-part="score"><summary>${PLAY.score}</summary></details></play-island>`
  );
}
