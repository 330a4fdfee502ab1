/**
 * Fields in which modes are typed by name: the names they offer, and what is meant by what stands in them.
 */
import { fail, type Mode, type Problem, type Root } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { MODE_NAMES } from '../markup/chooser.ts';
import type { NameOf } from '../markup/names.ts';
import { modeMeant } from '../search/find.ts';
import type { SearchIndex } from '../search/search-index.ts';
import { CHOOSER } from '../words/interface.ts';
import { modeName } from '../words/names.ts';
import type { Naming } from '../words/note-names.ts';

/** A mode read from a field, or why there is none. */
export interface ReadMode {
  readonly mode: Mode | undefined;
  /** Where the text names one, as in `D Dorian`. */
  readonly root: Root | undefined;
  readonly problem: Problem | undefined;
}

/** Names of modes from the index of the search. */
export function namesFrom({ file }: SearchIndex): NameOf {
  return (mode) => {
    const [, slug = '', name = ''] = file.modes[mode.index] ?? [];
    return { slug, name };
  };
}

/** The mode that a text of somebody who names notes so means; an empty text means none, and that is no problem. */
export function readMode(field: string, text: string, index: SearchIndex, naming: Naming): ReadMode {
  const none = { mode: undefined, root: undefined, problem: undefined };
  if (text.trim() === '') return none;
  const meant = modeMeant(text.trim(), index, naming);
  if (meant) return { ...meant, problem: undefined };
  const failed = fail(field, text, CHOOSER.notMode);
  return failed.ok ? none : { ...none, problem: failed.problem };
}

/** Puts the list of names into a form, the best known modes first, once. */
export function offerModes(form: HTMLElement, { file }: SearchIndex): void {
  if (form.querySelector(`#${MODE_NAMES}`)) return;
  const names = file.modes
    .toSorted(([a], [b]) => b - a)
    .map(([, , name]) => `<option value="${escapeXml(modeName(name))}"></option>`);
  form.insertAdjacentHTML('beforeend', `<datalist id="${MODE_NAMES}">${names.join('')}</datalist>`);
}
