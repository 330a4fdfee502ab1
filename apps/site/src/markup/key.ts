/**
 * The key to necks and glyphs.
 */
import { KEY } from '../words/interface.ts';
import { glyph } from './glyph.ts';

/** The key as a list in HTML. */
export function keyHtml(): string {
  const lines: readonly (readonly [string, string])[] = [
    [[1, 2, 3, 4, 5, 6, 7].map((degree) => glyph(degree, 0)).join(''), KEY.shapes],
    [glyph(3, -1), KEY.lowered],
    [glyph(4, 1), KEY.raised],
    [glyph(5, 0, true), KEY.quiet],
    [arrow(), KEY.moved],
  ];
  return `<ul class="key">${lines.map(([sign, words]) => `<li><span class="glyphs">${sign}</span><span>${words}</span></li>`).join('')}</ul>`;
}

function arrow(): string {
  return '<svg class="neck glyph" viewBox="0 0 34 34" aria-hidden="true"><circle class="gone" cx="8" cy="24" r="7"/><path class="move" d="M8 17Q18 4 27 15"/><path class="tip" d="M30 19L23 15L29 11Z"/></svg>';
}
