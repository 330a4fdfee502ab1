/**
 * The panel of the play-along in the browser: what its fields say, and what they are made to say.
 */
import type { Problem } from '@stillroot/core';
import { meterOptions } from '../markup/play-panel.ts';
import { VOICES } from '../sound/mix.ts';
import { problemWords } from '../words/problems.ts';
import { PLAY_NUMBERS, type PlayChoices, readPlayChoices, writePlayChoices } from './play-choices.ts';
import type { Unread } from './play-unread.ts';
import { showWhole } from './whole-choice.ts';

type Field = HTMLInputElement | HTMLSelectElement;

/** Reads what the fields say; what cannot be read stays as it was. */
export function readPanel(panel: ParentNode, before: PlayChoices): PlayChoices {
  const query = writePlayChoices(before);
  for (const field of fieldsIn(panel))
    if (!isVoice(field.name) && field.validity.valid) query.set(field.name, field.value);
  query.set('mix', VOICES.map((voice) => fieldOf(panel, voice)?.value ?? '').join('-'));
  return readPlayChoices(query);
}

/** What is not understood once a field was changed: nothing of that field, or what it holds. */
export function unreadAfter(unread: Unread, field: EventTarget | null): Unread {
  if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) return unread;
  const others = Object.entries(unread).filter(([name]) => name !== field.name);
  return Object.fromEntries(field.validity.valid ? others : [...others, [field.name, field.value]]);
}

/** Makes the fields say what was chosen; what could not be read is left for its reader to mend. */
export function writePanel(panel: ParentNode, choices: PlayChoices, unread: Unread): void {
  const { meter, metronome, mix } = choices;
  const list = fieldOf(panel, 'meter');
  if (list) list.innerHTML = meterOptions(meter);
  for (const field of fieldsIn(panel)) {
    const { name } = field;
    if (field === document.activeElement && field.type === 'number') continue;
    if (isPlain(name) && unread[name] !== undefined && field instanceof HTMLInputElement) {
      if (!field.validity.badInput) field.value = unread[name];
      continue;
    }
    if (name === 'metronome') field.value = metronome ? 'on' : 'off';
    else if (isVoice(name)) field.value = String(Math.round(mix[name] * 100));
    else if (isPlain(name)) field.value = String(choices[name]);
  }
  show(panel, 'seed', choices.pattern === 'random-walk');
  show(panel, 'top', choices.step > 0);
  show(panel, 'every', choices.step > 0);
  show(panel, 'drone', choices.backing === 'drone' || choices.backing === 'both');
  show(panel, 'chords', choices.backing === 'vamp' || choices.backing === 'both');
  showWhole(panel);
}

/** Shows problems beside their fields, takes away those that are no more, and returns those that nobody sees there. */
export function showPlayProblems(panel: ParentNode, problems: readonly Problem[]): readonly Problem[] {
  for (const field of fieldsIn(panel)) {
    const problem = problems.find((one) => one.field === field.name);
    const place = panel.querySelector(`#play-problem-${field.name}`);
    if (place) place.textContent = problem ? problemWords(problem) : '';
    field.ariaInvalid = String(problem !== undefined);
  }
  return problems.filter((problem) => fieldOf(panel, problem.field)?.checkVisibility() !== true);
}

function fieldsIn(panel: ParentNode): readonly Field[] {
  return [...panel.querySelectorAll<Field>('.play-panel select, .play-panel input')];
}

function fieldOf(panel: ParentNode, name: string): Field | undefined {
  return panel.querySelector<Field>(`#play-${name}`) ?? undefined;
}

function show(panel: ParentNode, name: string, isShown: boolean): void {
  const field = panel.querySelector<HTMLElement>(`[data-field="${name}"]`);
  if (field) field.hidden = !isShown;
}

function isVoice(name: string): name is (typeof VOICES)[number] {
  return VOICES.some((voice) => voice === name);
}

function isPlain(name: string): name is keyof typeof PLAY_NUMBERS | 'pattern' | 'value' | 'backing' | 'loop' {
  return name in PLAY_NUMBERS || ['pattern', 'value', 'backing', 'loop'].includes(name);
}
