/**
 * The language of these texts.
 */
import type { LanguageCode } from '../languages.ts';

export const LANGUAGE: LanguageCode = 'es';
