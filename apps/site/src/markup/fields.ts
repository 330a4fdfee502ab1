/**
 * The fields of forms: a label, a control, perhaps a hint, and room for what is wrong with it.
 */
import { escapeXml } from '@stillroot/notation';

/** Something that can be picked from a list. */
export interface Choice {
  readonly value: string;
  readonly text: string;
  /** The heading that it stands under, together with its neighbours of the same. */
  readonly group?: string;
}

/** A field; its control has the id `choose-` and its name. */
export function field(name: string, label: string, control: string, hint = ''): string {
  const hinted = hint === '' ? '' : `<span class="hint" id="hint-${name}">${hint}</span>`;
  return (
    `<div class="field" data-field="${name}"><label for="choose-${name}">${label}</label>${control}${hinted}` +
    `<span class="problem" id="problem-${name}" role="status"></span></div>`
  );
}

/** A field that needs a script, and stays hidden until one runs. */
export function scripted(name: string, label: string, control: string): string {
  return field(name, label, control).replace('class="field"', 'class="field" data-js hidden');
}

/** A list; `sentAs` is its name where the form is sent without a script, empty where it is not sent. */
export function select(name: string, options: readonly Choice[], chosen = '', sentAs = name): string {
  const sent = sentAs === '' ? '' : ` name="${sentAs}"`;
  return `<select id="choose-${name}"${sent} aria-describedby="problem-${name}">${optionsHtml(options, chosen)}</select>`;
}

/** The options of a list, under their headings where they have any. */
export function optionsHtml(choices: readonly Choice[], chosen = ''): string {
  return choices
    .map(({ value, text, group }, at) => {
      const opens = group !== undefined && group !== choices[at - 1]?.group;
      const closes = group !== undefined && group !== choices[at + 1]?.group;
      const option = `<option value="${escapeXml(value)}"${value === chosen ? ' selected' : ''}>${escapeXml(text)}</option>`;
      return `${opens ? `<optgroup label="${escapeXml(group)}">` : ''}${option}${closes ? '</optgroup>' : ''}`;
    })
    .join('');
}

/** A field for a number. */
export function number(
  name: string,
  { from, to, step = 'any', value = '', placeholder = '' }: NumberField,
): string {
  const hint = placeholder === '' ? '' : ` placeholder="${escapeXml(placeholder)}"`;
  return `<input id="choose-${name}" name="${name}" type="number" inputmode="${from < 0 ? 'text' : 'decimal'}" min="${from}" max="${to}" step="${step}" value="${value}"${hint} aria-describedby="problem-${name}">`;
}

/** The numbers that a field takes. */
export interface NumberField {
  readonly from: number;
  readonly to: number;
  readonly step?: string;
  readonly value?: string;
  readonly placeholder?: string;
}

/** A field for a short text that no keyboard should correct. */
export function typed(name: string, isHinted: boolean, placeholder = '', describedBy = ''): string {
  const hint = placeholder === '' ? '' : ` placeholder="${escapeXml(placeholder)}"`;
  const described = [...(isHinted ? [`hint-${name}`] : []), describedBy, `problem-${name}`]
    .filter(Boolean)
    .join(' ');
  return `<input id="choose-${name}" name="${name}" type="text" maxlength="120" autocomplete="off" autocapitalize="off" spellcheck="false"${hint} aria-describedby="${described}">`;
}

/** Choices in the order of their names. */
export function named(names: Readonly<Record<string, string>>): readonly Choice[] {
  return Object.entries(names).map(([value, text]) => ({ value, text }));
}

/** Choices in an order of their own. */
export function listed<T extends string>(
  values: readonly T[],
  names: Readonly<Record<T, string>>,
): readonly Choice[] {
  return values.map((value) => ({ value, text: names[value] }));
}
