/**
 * Staff and tablature on the page, and the light on what sounds.
 */
import type { Piece } from '@stillroot/core';
import { escapeXml, tabStaff } from '@stillroot/notation';
import { remarkWords } from '../words/necks.ts';
import { PLAY } from '../words/play.ts';
import { problemWords } from '../words/problems.ts';
import type { Material } from './play-material.ts';
import { type DrawnScore, drawScore, readyFont } from './play-score-draw.ts';
import { readScore } from './play-score-read.ts';
import { scoreOf } from './play-written.ts';

const SVG = 'http://www.w3.org/2000/svg';
const LIGHT_WIDTH = 24;

/** The part of the play-along that shows staff and tablature. */
export class ScoreView {
  private readonly part: HTMLElement;
  private readonly lead: HTMLElement;
  private readonly sheet: HTMLElement;
  private drawn: DrawnScore | undefined;
  private light: SVGRectElement | undefined;
  private again: (() => void) | undefined;
  private width = 0;

  constructor(part: HTMLElement) {
    this.part = part;
    this.part.insertAdjacentHTML(
      'beforeend',
      `<p class="hint">${PLAY.scoreLead}</p><div class="score" role="region" tabindex="0"></div>`,
    );
    const [lead, sheet] = [
      part.querySelector<HTMLElement>('.hint'),
      part.querySelector<HTMLElement>('.score'),
    ];
    if (!lead || !sheet) throw new Error('the score has a place');
    this.lead = lead;
    this.sheet = sheet;
    new ResizeObserver(() => {
      if (this.sheet.clientWidth > 0 && this.sheet.clientWidth !== this.width) this.again?.();
    }).observe(this.sheet);
  }

  /** Draws a piece. */
  async draw({ title, neck }: Material, piece: Piece): Promise<void> {
    try {
      const [score] = await Promise.all([scoreOf(title, piece, neck), readyFont()]);
      if (!score.ok) {
        this.fail(problemWords(score.problem));
        return;
      }
      const read = readScore(score.value);
      const remarks = [
        ...(read.capo > 0 ? [`${PLAY.capo} ${read.capo}`] : []),
        ...tabStaff(neck).remarks.map(remarkWords),
      ];
      this.sheet.setAttribute('aria-label', `${PLAY.scoreLabel} ${title}`);
      this.again = () => {
        this.width = this.sheet.clientWidth;
        this.light = undefined;
        this.drawn = drawScore(
          this.sheet,
          read,
          Math.max(280, this.width),
          (text) => `${PLAY.scoreLabel} ${text}`,
        );
        const cut = this.drawn.isWhole ? [] : [PLAY.tooLong];
        this.lead.innerHTML = [PLAY.scoreLead, ...remarks.map((remark) => `${remark}.`), ...cut]
          .map((text) => escapeXml(text))
          .join(' ');
      };
      this.again();
    } catch {
      this.fail(PLAY.scoreFailed);
    }
  }

  /** Lights a note by its place in the piece; none for −1. */
  show(at: number): void {
    this.light?.remove();
    const note = this.drawn?.notes[at];
    if (!note) return;
    const light = document.createElementNS(SVG, 'rect');
    light.setAttribute('class', 'score-light');
    light.setAttribute('x', String(note.x - LIGHT_WIDTH / 2));
    light.setAttribute('y', '2');
    light.setAttribute('width', String(LIGHT_WIDTH));
    light.setAttribute('height', String(note.svg.height.baseVal.value - 4));
    note.svg.append(light);
    this.light = light;
    this.bringIntoView(note.x);
  }

  /** A system that is wider than the screen moves along with what is heard. */
  private bringIntoView(x: number): void {
    const { scrollLeft, clientWidth } = this.sheet;
    const isSeen = x - LIGHT_WIDTH >= scrollLeft && x + LIGHT_WIDTH <= scrollLeft + clientWidth;
    if (!isSeen) this.sheet.scrollLeft = x - clientWidth / 3;
  }

  private fail(text: string): void {
    this.again = undefined;
    this.drawn = undefined;
    this.sheet.replaceChildren();
    this.lead.textContent = text;
  }
}
