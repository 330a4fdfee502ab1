/**
 * Texts in which what stands between grave accents is code, as Markdown has it.
 */
import { escapeXml } from './neck-svg-text.ts';

const CODE = /`([^`]*)`/g;

/** A text as HTML. */
export function withCode(text: string): string {
  return escapeXml(text).replaceAll(CODE, '<code>$1</code>');
}

/** A text where there is room for words only. */
export function withoutCode(text: string): string {
  return text.replaceAll(CODE, '$1');
}
