/**
 * The chooser in the browser: what its fields say, and what they are made to say.
 */
import { HAND_SIZES, type Instrument, type Problem } from '@stillroot/core';
import { optionsHtml, READING_ID, TYPED, tuningChoices } from '../markup/chooser.ts';
import { CHOICES } from '../words/choices.ts';
import { CHOOSER } from '../words/interface.ts';
import { fretWords } from '../words/measures.ts';
import { tenths } from '../words/numbers.ts';
import { problemWords } from '../words/problems.ts';
import { CHOICE_KEYS } from './choice-keys.ts';
import { type Choices, readChoices } from './choices.ts';
import type { ChosenNeck } from './neck-from.ts';
import { readTuningField, writeTuningField } from './tuning-field.ts';
import { tuningNaming } from './typed-naming.ts';
import { showWhole } from './whole-choice.ts';

/** A control of the chooser. */
export type Field = HTMLInputElement | HTMLSelectElement;

/** On a field for a number that stands empty in place of what is none. */
const UNHELD = 'data-unheld';

/** The field of this name, where the form has it. */
export function fieldOf(form: HTMLElement, name: string): Field | undefined {
  return form.querySelector<Field>(`#choose-${name}`) ?? undefined;
}

/** Whether a reader is in the midst of a text, which is not to be taken or changed before it is whole. */
export function isBeingTyped(field: Field): boolean {
  const isText = field instanceof HTMLInputElement && field.type === 'text';
  return isText && field === document.activeElement && !field.hasAttribute('data-whole');
}

/** A number is whole when nothing has been typed for so long. */
const TYPING_PAUSE_MS = 600;

/** Acts on every choice: when a field is left, and for a number when its typing pauses. */
export function onChoice(form: HTMLElement, act: () => void): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let isActedOn = false;
  form.addEventListener('input', ({ target }) => {
    clearTimeout(waiting);
    isActedOn = false;
    if (!(target instanceof HTMLInputElement && target.type === 'number')) return;
    waiting = setTimeout(() => {
      isActedOn = true;
      act();
    }, TYPING_PAUSE_MS);
  });
  form.addEventListener('change', () => {
    clearTimeout(waiting);
    if (!isActedOn) act();
    isActedOn = false;
  });
}

/**
 * Reads what the fields say; what the form does not ask stays as it was. So does what stood in the address and
 * could not be read, for as long as its field is left empty.
 * @param instruments all of them, the usual one of the page by its id
 */
export function readForm(
  form: HTMLElement,
  before: Choices,
  instruments: readonly Instrument[],
  usualId: string,
): Choices {
  const query = new URLSearchParams();
  for (const key of CHOICE_KEYS) {
    const field = fieldOf(form, key);
    const value = field ? field.value || (field.hasAttribute(UNHELD) ? before.unread[key] : '') : before[key];
    if (value !== undefined) query.set(key, String(value));
  }
  const listed = fieldOf(form, 'tunings')?.value ?? '';
  const field = fieldOf(form, 'tuning');
  const id = query.get('instrument') || usualId;
  const held = instruments.find((instrument) => instrument.id === id);
  const typed =
    listed === TYPED && field && held
      ? readTuningField(field, held, instruments, tuningNaming(before))
      : undefined;
  query.set('tuning', typed ?? (listed === TYPED ? '' : listed));
  const choices = readChoices(query);
  const withheld = CHOICE_KEYS.filter((key) => isWithheld(fieldOf(form, key)));
  return {
    ...choices,
    unread: { ...choices.unread, ...Object.fromEntries(withheld.map((key) => [key, ''])) },
  };
}

/** Whether a field shows something that it does not hand out, such as letters in one for a number. */
function isWithheld(field: Field | undefined): boolean {
  return field?.validity.badInput === true;
}

/** Makes the fields say what was chosen, with how a typed tuning was read and the problems beside them. */
export function writeForm(
  form: HTMLElement,
  choices: Choices,
  { instrument, neck }: ChosenNeck,
  readingHtml: string,
  problems: readonly Problem[],
): void {
  const isTyped = choices.tuning !== '' && !instrument.tunings.some(({ id }) => id === choices.tuning);
  const tuningId = choices.tuning === '' ? instrument.tunings[0].id : choices.tuning;
  const tunings = fieldOf(form, 'tunings');
  if (tunings) tunings.innerHTML = optionsHtml(tuningChoices(instrument), isTyped ? TYPED : tuningId);
  showTyped(form, isTyped);
  for (const key of CHOICE_KEYS) {
    const field = fieldOf(form, key);
    if (!field || field === document.activeElement || (key === 'tuning' && !isTyped)) continue;
    if (key === 'tuning') {
      writeTuningField(field, choices.tuning, tuningNaming(choices));
      continue;
    }
    // What could not be read is left for its reader to mend; a list has nothing but what can be.
    if (choices.unread[key] !== undefined && field instanceof HTMLInputElement) {
      if (!isWithheld(field)) field.value = choices.unread[key];
      field.toggleAttribute(UNHELD, field.value === '');
      continue;
    }
    field.removeAttribute(UNHELD);
    const value = key === 'instrument' ? instrument.id : choices[key];
    field.value = key === 'transpose' && value === 0 ? '' : String(value ?? '');
  }
  const reach = fieldOf(form, 'reach');
  if (reach instanceof HTMLInputElement) reach.placeholder = String(HAND_SIZES[choices.handSize].reachMm);
  const frets = fieldOf(form, 'frets');
  if (frets instanceof HTMLInputElement) frets.placeholder = String(instrument.frets);
  const length = fieldOf(form, 'scaleLength');
  if (length instanceof HTMLInputElement) length.placeholder = tenths(instrument.scaleLengthMm);
  const reading = form.querySelector(`#${READING_ID}`);
  if (reading && reading.innerHTML !== readingHtml) reading.innerHTML = readingHtml;
  showCapoFrets(form, instrument.partialFrets ? neck.slots.slice(1).map(({ fret }) => fret) : []);
  showProblems(form, problems);
  showWhole(form);
}

/** Says at which frets a capo can lie on a neck that does not have all of them. */
function showCapoFrets(form: HTMLElement, frets: readonly number[]): void {
  const place = form.querySelector('[data-field="capo"]');
  place?.querySelector('.hint')?.remove();
  if (frets.length === 0) return;
  const words = `${CHOICES.capoFrets} ${frets.map(fretWords).join(', ')}.`;
  place?.querySelector('.problem')?.insertAdjacentHTML('beforebegin', `<span class="hint">${words}</span>`);
}

/** Shows or puts away the field for open strings. */
export function showTyped(form: HTMLElement, isShown: boolean): void {
  const typed = form.querySelector<HTMLElement>('[data-field="tuning"]');
  const label = typed?.querySelector('label');
  const hint = typed?.querySelector('#hint-tuning');
  if (typed) typed.hidden = !isShown;
  if (label) label.textContent = CHOOSER.openStrings;
  if (hint) hint.textContent = CHOICES.tuningHint;
}

/** Shows problems beside their fields, and takes away those that are no more. */
export function showProblems(form: HTMLElement, problems: readonly Problem[]): void {
  for (const place of form.querySelectorAll<HTMLElement>('.problem')) {
    const name = place.id.slice('problem-'.length);
    const problem = problems.find(({ field }) => field === name || field.startsWith(`${name}[`));
    place.textContent = problem ? problemWords(problem) : '';
    fieldOf(form, name)?.setAttribute('aria-invalid', String(problem !== undefined));
  }
}
