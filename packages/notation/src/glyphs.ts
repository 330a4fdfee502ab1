/**
 * Degree glyphs: a degree is told by its number, by its shape and by its tone. A shape has as many corners
 * as its degree: a disc for the root, a lens for 2, a triangle for 3, and so on to the heptagon. The tone
 * says which way a degree is altered, in two colours of the Okabe–Ito palette, and is never alone.
 */

import { tidy } from './neck-svg-text.ts';

/** How a degree is altered: not, downwards or upwards. */
export type Tone = 'plain' | 'lowered' | 'raised';

/** The tone of an alteration. */
export function toneOf(alteration: number): Tone {
  if (alteration === 0) return 'plain';
  return alteration < 0 ? 'lowered' : 'raised';
}

/** Half the height of a glyph, in drawing units. */
export const GLYPH_RADIUS = 12;

/** The radius that gives each polygon about the same weight as the disc. */
const POLYGON_RADII: ReadonlyMap<number, number> = new Map([
  [3, 17],
  [4, 14.5],
  [5, 13.5],
  [6, 13],
  [7, 12.7],
]);

/** The definitions of all seven glyphs, to be put once into a document that draws necks. */
export const GLYPH_DEFINITIONS: string = [1, 2, 3, 4, 5, 6, 7]
  .map((degree) => `<g id="degree-${degree}">${glyphShape(degree)}</g>`)
  .join('');

/** How far down the foot of a label stands. */
const LABEL_Y = 4;
/** A triangle is wide where it is low, so its label stands lower and is somewhat smaller. */
const IN_TRIANGLE = { y: 7.5, scale: 0.85 };
/** Longer labels are set smaller, by a style that no rule of the page overrides. */
const LONG_LABEL = 3;

/**
 * The label of a glyph, to stand beside it in one group; on a page its size and its place are classes, for
 * pages keep all style in style sheets.
 */
export function glyphLabel(degree: number, label: string, onPage = false): string {
  const isLong = label.length > LONG_LABEL;
  if (onPage) {
    const kinds = [...(isLong ? ['small'] : []), ...(degree === 3 ? ['low'] : [])].join(' ');
    return `<text${kinds && ` class="${kinds}"`}>${label}</text>`;
  }
  const size = isLong ? ' style="font-size:9px"' : '';
  if (degree !== 3) return `<text y="${LABEL_Y}"${size}>${label}</text>`;
  const { y, scale } = IN_TRIANGLE;
  const place = isLong ? ` y="${y}"` : ` transform="translate(0 ${y})scale(${scale})"`;
  return `<text${place}${size}>${label}</text>`;
}

/** The style of a neck drawing where no page gives one. */
export const NECK_STYLE = `
.neck{font-family:system-ui,sans-serif;color:#1c1a17;background:#fff}
.neck .paper{fill:#fff}
.neck .headline{fill:#1c1a17;font-size:17px;font-weight:600}
.neck .title{fill:#1c1a17;font-size:14px;font-weight:600}
.neck .wood{fill:#f6f2ea}
.neck .fret{stroke:#a79f92;stroke-width:1.2}
.neck .nut{stroke:#1c1a17;stroke-width:4}
.neck .capo{stroke:#56524b;stroke-width:7;stroke-linecap:round}
.neck .string{stroke:#8b8479}
.neck .inlay{fill:#e2dbcd}
.neck .number{fill:#5a554d;font-size:11px;text-anchor:middle}
.neck .open{fill:#5a554d;font-size:11px;text-anchor:end}
.neck .mark{stroke:#1c1a17;stroke-width:1.6;fill:#fff}
.neck .mark text{stroke:none;fill:#1c1a17;font-size:11.5px;font-weight:600;text-anchor:middle}
.neck .lowered{stroke:#0072b2;fill:#e3f0f8}
.neck .raised{stroke:#d55e00;fill:#fbe9de}
.neck .root{fill:#1c1a17}
.neck .root text{fill:#fff}
.neck .quiet{stroke-width:.9;stroke-dasharray:2 2;fill:#fff}
.neck .quiet text{font-weight:400;fill:#5a554d}
.neck .finger{fill:#5a554d;font-size:9px;text-anchor:middle}
.neck .move{stroke:#1c1a17;stroke-width:1.5;fill:none}
.neck .tip{fill:#1c1a17}
.neck .gone{stroke:#5a554d;stroke-width:.9;stroke-dasharray:2 2;fill:none}
`.trim();

export function glyphShape(degree: number): string {
  if (degree === 1) return `<circle r="${GLYPH_RADIUS}"/>`;
  if (degree === 2) return '<path d="M-16 0Q0-21 16 0Q0 21-16 0Z"/>';
  const radius = POLYGON_RADII.get(degree) as number;
  const points = Array.from({ length: degree }, (_, corner) => {
    const turn = (2 * Math.PI * corner) / degree - Math.PI / 2 + (degree === 4 ? Math.PI / 4 : 0);
    return `${tidy(radius * Math.cos(turn))},${tidy(radius * Math.sin(turn) + (degree === 3 ? 3 : 0))}`;
  });
  return `<polygon points="${points.join(' ')}"/>`;
}
