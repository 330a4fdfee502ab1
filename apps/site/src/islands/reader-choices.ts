/**
 * What a reader chose, for what is no picture of a neck: by the address, and else last time.
 */
import { choosesAnything } from './choice-keys.ts';
import { type Choices, readChoices } from './choices.ts';
import { recall } from './memory.ts';
import { typedNaming } from './typed-naming.ts';

/** The choices that count on this page. */
export function readerChoices(): Choices {
  const query = new URLSearchParams(location.search);
  return readChoices(choosesAnything(query) ? query : recall());
}

/** How the reader of this page names notes when typing. */
export function readerNaming(): ReturnType<typeof typedNaming> {
  return typedNaming(readerChoices());
}
