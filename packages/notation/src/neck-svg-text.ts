/**
 * Numbers and words as SVG holds them.
 */

/** A coordinate to a tenth of a drawing unit, which no eye tells from the exact one. */
export function tidy(value: number): number {
  return Math.round(value * 10) / 10;
}

/**
 * Text in signs that any font has: few carry U+1D12A and U+1D12B, so a drawing that leaves our pages writes
 * a double flat as two flats and a double sharp as the x it looks like.
 */
export function forAnyFont(text: string): string {
  return text.replaceAll('𝄫', '♭♭').replaceAll('𝄪', '×');
}

/** What XML text cannot hold as it is: most texts have nothing of the kind. */
const UNSAFE = /[&<>"']|[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u;

/** Text made safe for XML content and attributes; characters that XML cannot hold are left out. */
export function escapeXml(text: string): string {
  if (!UNSAFE.test(text)) return text;
  return text
    .replaceAll(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
