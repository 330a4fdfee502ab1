/**
 * The chooser: what a reader may choose, as a form that also works without a script. Fields marked
 * `data-js` need one and stay hidden until it runs.
 */
import { EVERYDAY_ROOTS, MOST_FRETS, ORDERS, REACH_RANGE_MM, type Root, STYLES } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { CHOOSER, LABEL_NAMES, ORDER_NAMES, STYLE_NAMES } from '../words/interface.ts';
import { signs } from '../words/signs.ts';

/** Something that can be picked from a list. */
export interface Choice {
  readonly value: string;
  readonly text: string;
}

/** What the chooser offers. */
export interface ChooserView {
  /** The families and the root, where a round is chosen. */
  readonly round?: { readonly families: readonly Choice[]; readonly family: string; readonly root: Root };
  /** Absent where the page is about one instrument. */
  readonly instruments?: readonly Choice[];
  /** The tunings of the instrument chosen at first. */
  readonly tunings: readonly Choice[];
  /** Whether fingerings are shown, which have a style and a hand of their own. */
  readonly hasFingering: boolean;
}

/** The value of the tuning list that opens the field for open strings. */
export const TYPED = 'typed';

/** The chooser as a form in HTML. */
export function chooserHtml({ round, instruments, tunings, hasFingering }: ChooserView): string {
  const roots = EVERYDAY_ROOTS.map(({ slug, name }) => ({ value: slug, text: signs(name) }));
  const fields = [
    round && field('family', CHOOSER.family, select('family', round.families, round.family)),
    round && field('root', CHOOSER.root, select('root', roots, round.root.slug)),
    instruments && field('instrument', CHOOSER.instrument, select('instrument', instruments)),
    scripted('tunings', CHOOSER.tuning, select('tunings', tunings, '', '')),
    field(
      'tuning',
      round ? CHOOSER.tuning : CHOOSER.openStrings,
      typedTuning(),
      round ? CHOOSER.tuningHint : CHOOSER.openStringsHint,
    ),
    field('capo', CHOOSER.capo, number('capo', 0, MOST_FRETS - 1, '0')),
  ];
  const more = [
    scripted(
      'labels',
      CHOOSER.labels,
      select('labels', choices(hasFingering ? LABEL_NAMES : withoutFingers())),
    ),
    scripted('hand', CHOOSER.hand, select('hand', choices({ right: CHOOSER.right, left: CHOOSER.left }))),
    ...(hasFingering ? fingeringFields() : []),
    round && scripted('order', CHOOSER.order, select('order', listed(ORDERS, ORDER_NAMES))),
  ];
  const submit = round ? `<button type="submit">${CHOOSER.show}</button>` : '';
  return (
    `<form class="chooser-form" method="get" action="/rounds/"><div class="fields">${fields.filter(Boolean).join('')}${submit && `<div class="field">${submit}</div>`}</div>` +
    `<details class="more" data-js hidden><summary>${hasFingering ? CHOOSER.more : CHOOSER.moreLabels}</summary><div class="fields">${more.filter(Boolean).join('')}</div></details></form>`
  );
}

/** The options of a list. */
export function optionsHtml(choices: readonly Choice[], chosen = ''): string {
  return choices
    .map(
      ({ value, text }) =>
        `<option value="${escapeXml(value)}"${value === chosen ? ' selected' : ''}>${escapeXml(text)}</option>`,
    )
    .join('');
}

/** A list of tunings with the way to type one. */
export function tuningChoices(
  tunings: readonly { readonly id: string; readonly name: string }[],
): readonly Choice[] {
  return [
    ...tunings.map(({ id, name }) => ({ value: id, text: signs(name) })),
    { value: TYPED, text: CHOOSER.typedTuning },
  ];
}

function fingeringFields(): readonly string[] {
  return [
    scripted('style', CHOOSER.style, select('style', listed(STYLES, STYLE_NAMES))),
    scripted('fret', CHOOSER.fret, number('fret', 0, MOST_FRETS, '', CHOOSER.anywhere)),
    scripted('reach', CHOOSER.reach, number('reach', REACH_RANGE_MM.from, REACH_RANGE_MM.to, '')),
  ];
}

function withoutFingers() {
  return { degrees: LABEL_NAMES.degrees, notes: LABEL_NAMES.notes };
}

function choices(names: Readonly<Record<string, string>>): readonly Choice[] {
  return Object.entries(names).map(([value, text]) => ({ value, text }));
}

function listed<T extends string>(
  values: readonly T[],
  names: Readonly<Record<T, string>>,
): readonly Choice[] {
  return values.map((value) => ({ value, text: names[value] }));
}

function scripted(name: string, label: string, control: string): string {
  return field(name, label, control).replace('class="field"', 'class="field" data-js hidden');
}

function field(name: string, label: string, control: string, hint = ''): string {
  const hinted = hint === '' ? '' : `<span class="hint" id="hint-${name}">${hint}</span>`;
  return (
    `<div class="field" data-field="${name}"><label for="choose-${name}">${label}</label>${control}${hinted}` +
    `<span class="problem" id="problem-${name}" role="status"></span></div>`
  );
}

function select(name: string, options: readonly Choice[], chosen = '', sentAs = name): string {
  const sent = sentAs === '' ? '' : ` name="${sentAs}"`;
  return `<select id="choose-${name}"${sent} aria-describedby="problem-${name}">${optionsHtml(options, chosen)}</select>`;
}

function typedTuning(): string {
  return '<input id="choose-tuning" name="tuning" type="text" maxlength="120" autocomplete="off" autocapitalize="off" spellcheck="false" aria-describedby="hint-tuning problem-tuning">';
}

function number(name: string, from: number, to: number, value: string, placeholder = ''): string {
  const hint = placeholder === '' ? '' : ` placeholder="${placeholder}"`;
  return `<input id="choose-${name}" name="${name}" type="number" inputmode="decimal" min="${from}" max="${to}" step="any" value="${value}"${hint} aria-describedby="problem-${name}">`;
}
