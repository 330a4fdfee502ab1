/**
 * The chooser in the browser: what its fields say, and what they are made to say.
 */
import type { Instrument, Problem } from '@stillroot/core';
import { DEFAULT_REACH_MM } from '@stillroot/core';
import { optionsHtml, TYPED, tuningChoices } from '../markup/chooser.ts';
import { CHOOSER } from '../words/interface.ts';
import { type Choices, readChoices } from './choices.ts';

type Field = HTMLInputElement | HTMLSelectElement;

/** The field of this name, where the form has it. */
export function fieldOf(form: HTMLElement, name: string): Field | undefined {
  return form.querySelector<Field>(`#choose-${name}`) ?? undefined;
}

/** Reads what the fields say; what the form does not ask stays as it was. */
export function readForm(form: HTMLElement, before: Choices): Choices {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(before)) if (value !== undefined) query.set(name, String(value));
  for (const name of ['instrument', 'capo', 'labels', 'hand', 'style', 'fret', 'reach', 'order']) {
    const field = fieldOf(form, name);
    if (field) query.set(name, field.value);
  }
  const listed = fieldOf(form, 'tunings')?.value ?? '';
  query.set('tuning', listed === TYPED ? (fieldOf(form, 'tuning')?.value ?? '') : listed);
  return readChoices(query);
}

/** Makes the fields say what was chosen, with the problems beside them. */
export function writeForm(
  form: HTMLElement,
  choices: Choices,
  instrument: Instrument,
  problems: readonly Problem[],
): void {
  const isTyped = choices.tuning !== '' && !instrument.tunings.some(({ id }) => id === choices.tuning);
  const tuningId = choices.tuning === '' ? instrument.tunings[0].id : choices.tuning;
  const tunings = fieldOf(form, 'tunings');
  if (tunings) tunings.innerHTML = optionsHtml(tuningChoices(instrument.tunings), isTyped ? TYPED : tuningId);
  showTyped(form, isTyped);
  const values: Readonly<Record<string, string | number | undefined>> = {
    instrument: instrument.id,
    ...(isTyped ? { tuning: choices.tuning } : {}),
    capo: choices.capo,
    labels: choices.labels,
    hand: choices.hand,
    style: choices.style,
    fret: choices.fret ?? '',
    reach: choices.reach ?? DEFAULT_REACH_MM,
    order: choices.order,
  };
  for (const [name, value] of Object.entries(values)) {
    const field = fieldOf(form, name);
    if (field && value !== undefined && field !== document.activeElement) field.value = String(value);
  }
  showProblems(form, problems);
}

/** Shows or puts away the field for open strings. */
export function showTyped(form: HTMLElement, isShown: boolean): void {
  const typed = form.querySelector<HTMLElement>('[data-field="tuning"]');
  const label = typed?.querySelector('label');
  const hint = typed?.querySelector('.hint');
  if (typed) typed.hidden = !isShown;
  if (label) label.textContent = CHOOSER.openStrings;
  if (hint) hint.textContent = CHOOSER.openStringsHint;
}

function showProblems(form: HTMLElement, problems: readonly Problem[]): void {
  for (const place of form.querySelectorAll<HTMLElement>('.problem')) {
    const name = place.id.slice('problem-'.length);
    const problem = problems.find(({ field }) => field === name || field.startsWith(`${name}[`));
    place.textContent = problem
      ? `“${problem.value}”: ${CHOOSER.expected.toLowerCase()} ${problem.expected}.`
      : '';
    fieldOf(form, name)?.setAttribute('aria-invalid', String(problem !== undefined));
  }
}
