/**
 * The panel of the play-along in the browser: what its fields say, and what they are made to say.
 */
import { meterOptions } from '../markup/play-panel.ts';
import { VOICES } from '../sound/mix.ts';
import { PLAY_NUMBERS, type PlayChoices, readPlayChoices, writePlayChoices } from './play-choices.ts';

type Field = HTMLInputElement | HTMLSelectElement;

/** Reads what the fields say; what cannot be read stays as it was. */
export function readPanel(panel: ParentNode, before: PlayChoices): PlayChoices {
  const query = writePlayChoices(before);
  for (const field of fieldsIn(panel))
    if (!isVoice(field.name) && field.validity.valid) query.set(field.name, field.value);
  query.set('mix', VOICES.map((voice) => fieldOf(panel, voice)?.value ?? '').join('-'));
  return readPlayChoices(query);
}

/** Makes the fields say what was chosen. */
export function writePanel(panel: ParentNode, choices: PlayChoices): void {
  const { meter, metronome, mix } = choices;
  const list = fieldOf(panel, 'meter');
  if (list) list.innerHTML = meterOptions(meter);
  for (const field of fieldsIn(panel)) {
    const { name } = field;
    if (field === document.activeElement && field.type === 'number') continue;
    if (name === 'metronome') field.value = metronome ? 'on' : 'off';
    else if (isVoice(name)) field.value = String(Math.round(mix[name] * 100));
    else if (isPlain(name)) field.value = String(choices[name]);
  }
  show(panel, 'seed', choices.pattern === 'random-walk');
  show(panel, 'top', choices.step > 0);
  show(panel, 'every', choices.step > 0);
  show(panel, 'drone', choices.backing === 'drone' || choices.backing === 'both');
  show(panel, 'chords', choices.backing === 'vamp' || choices.backing === 'both');
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
