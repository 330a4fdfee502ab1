/**
 * The chooser: what a reader may choose, as a form that also works without a script. Fields marked
 * `data-js` need one and stay hidden until it runs.
 */
import type { InstrumentKind } from '@stillroot/catalog/plain';
import { EVERYDAY_ROOTS, type Instrument, MOST_FRETS, type Root, STYLES, type Tuning } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { pagePath } from '../facts/paths.ts';
import { CHOICES, kindName } from '../words/choices.ts';
import { CHOOSER, STYLE_NAMES } from '../words/interface.ts';
import { instrumentName, modeName } from '../words/names.ts';
import { capitalised } from '../words/numbers.ts';
import { signs } from '../words/signs.ts';
import { tuningName } from '../words/tunings.ts';
import { type Choice, field, listed, named, number, scripted, select, typed } from './fields.ts';

export { type Choice, optionsHtml } from './fields.ts';

/** A field for the name of a mode. */
export interface ModeField {
  readonly name: string;
  readonly label: string;
  readonly value: string;
}

/** The id of the list of names that fields for modes offer. */
export const MODE_NAMES = 'mode-names';

/** What the chooser offers. */
export interface ChooserView {
  /** The families and the root, where a round is chosen. */
  readonly round?: { readonly families: readonly Choice[]; readonly family: string; readonly root: Root };
  /** Modes typed by name and the root they stand on, where scales are compared. */
  readonly modes?: { readonly fields: readonly ModeField[]; readonly root: Root };
  /** Absent where the page is about one instrument. */
  readonly instruments?: readonly Choice[];
  /** The tunings of the instrument chosen at first. */
  readonly tunings: readonly Choice[];
  /** Whether fingerings are shown, which have a style and a hand of their own. */
  readonly hasFingering: boolean;
}

/** The id of the line that says how a typed tuning was read. */
export const READING_ID = 'reading-tuning';

/** The value of the tuning list that opens the field for open strings. */
export const TYPED = 'typed';

/** The fret at which to begin. */
const FRET = { from: 0, to: MOST_FRETS, placeholder: CHOOSER.anywhere };

/** The chooser as a form in HTML; its folded part is filled in when a script runs. */
export function chooserHtml({ round, modes, instruments, tunings, hasFingering }: ChooserView): string {
  const fields = [
    round && field('family', CHOOSER.family, select('family', round.families, round.family)),
    ...(modes?.fields.map(modeField) ?? []),
    round && rootField(round.root),
    modes && rootField(modes.root),
    instruments && field('instrument', CHOOSER.instrument, select('instrument', instruments)),
    scripted('tunings', CHOOSER.tuning, select('tunings', tunings, '', '')),
    field(
      'tuning',
      round ? CHOOSER.tuning : CHOOSER.openStrings,
      `${typed('tuning', true, '', READING_ID)}<span class="hint" id="${READING_ID}" role="status"></span>`,
      round ? CHOOSER.tuningHint : CHOICES.tuningHint,
    ),
    hasFingering && field('fret', CHOOSER.fret, number('fret', FRET)),
    field('capo', CHOOSER.capo, number('capo', { from: 0, to: MOST_FRETS - 1, value: '0' })),
    hasFingering && scripted('style', CHOOSER.style, select('style', listed(STYLES, STYLE_NAMES))),
    scripted('hand', CHOOSER.hand, select('hand', named({ right: CHOOSER.right, left: CHOOSER.left }))),
  ];
  const submit = round ? `<button type="submit">${CHOOSER.show}</button>` : '';
  return (
    `<form class="chooser-form" method="get" action="${pagePath('/rounds/')}"><div class="fields">${fields.filter(Boolean).join('')}${submit && `<div class="field">${submit}</div>`}</div>` +
    `<details class="more" data-js hidden><summary>${CHOICES.more}</summary></details></form>`
  );
}

/** A field for the name of a mode, with the names that a list of the page offers. */
export function modeField({ name, label, value }: ModeField): string {
  const input = `<input id="choose-${name}" name="${name}" type="text" list="${MODE_NAMES}" value="${escapeXml(value)}" maxlength="120" autocomplete="off" autocapitalize="off" spellcheck="false" aria-describedby="problem-${name}">`;
  return field(name, label, input);
}

/** A field for one of the 17 everyday roots. */
export function rootField(root: Root): string {
  const roots = EVERYDAY_ROOTS.map(({ slug, name }) => ({ value: slug, text: signs(name) }));
  return field('root', CHOOSER.root, select('root', roots, root.slug));
}

/** A list of families. */
export function familyChoices(
  families: readonly { readonly slug: string; readonly name: string }[],
): readonly Choice[] {
  return families.map(({ slug, name }) => ({ value: slug, text: capitalised(modeName(name)) }));
}

/** A list of instruments, group by group. */
export function instrumentChoices(
  instruments: readonly { readonly id: string; readonly name: string; readonly kind: InstrumentKind }[],
): readonly Choice[] {
  return instruments.map((instrument) => ({
    value: instrument.id,
    text: capitalised(instrumentName(instrument)),
    group: capitalised(kindName(instrument.kind)),
  }));
}

/** A list of an instrument's tunings with the way to type one. */
export function tuningChoices(
  instrument: Pick<Instrument, 'id'> & { readonly tunings: readonly Pick<Tuning, 'id' | 'name'>[] },
): readonly Choice[] {
  return [
    ...instrument.tunings.map((tuning) => ({ value: tuning.id, text: tuningName(instrument, tuning) })),
    { value: TYPED, text: CHOOSER.typedTuning },
  ];
}
