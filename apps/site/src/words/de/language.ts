/**
 * The language of these texts.
 */
import type { LanguageCode } from '../languages.ts';
import type { Naming } from '../note-names.ts';

export const LANGUAGE: LanguageCode = 'de';

/** How those who read this language name notes when they type; pages are in English names until another is chosen. */
export const OWN_NAMING: Exclude<Naming, 'numbers'> = 'german';
