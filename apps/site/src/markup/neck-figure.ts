/**
 * A neck drawing in the box that it scrolls in where the screen is too narrow.
 */
import { escapeXml, type NeckDrawing, neckSvg } from '@stillroot/notation';
import { FIGURES } from '../words/interface.ts';

/** How a neck stands on a page. */
export interface NeckFigureOptions {
  readonly leftHanded: boolean;
  /** Unique on the page. */
  readonly id: string;
  /** Whether it shows the whole neck, and so takes the width of the page. */
  readonly isWhole: boolean;
}

/** The narrowest screen on which nothing should need scrolling, less its margins, in drawing units. */
const PHONE_WIDTH = 350;

/** A neck as a figure. Wide ones are a region of their own, so that they scroll by keyboard as well. */
export function neckFigure(drawing: NeckDrawing, { leftHanded, id, isWhole }: NeckFigureOptions): string {
  const svg = neckSvg(drawing, {
    handedness: leftHanded ? 'left' : 'right',
    onPage: true,
    idPrefix: id,
  });
  const [, width = '0'] = / width="(\d+)"/.exec(svg) ?? [];
  const kinds = ['neck-box', ...(isWhole ? ['whole'] : []), ...(leftHanded ? ['left'] : [])];
  const region =
    Number(width) > PHONE_WIDTH
      ? ` role="region" tabindex="0" aria-label="${escapeXml(`${drawing.title}, ${FIGURES.scrollHint}`)}"`
      : '';
  return `<div class="${kinds.join(' ')}"${region}>${svg}</div>`;
}
