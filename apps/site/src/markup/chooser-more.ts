/**
 * The folded part of the chooser: what is chosen less often. Only a script makes use of it, so only a script
 * writes it.
 */
import { HAND_SIZES, MOST_FRETS, ORDERS, REACH_RANGE_MM } from '@stillroot/core';
import { LISTS } from '../islands/choices.ts';
import {
  ACCIDENTAL_NAMES,
  CHOICES,
  COMPARE_NAMES,
  handSizeName,
  NAMING_NAMES,
  OPEN_NAMES,
  SHARING_NAMES,
} from '../words/choices.ts';
import { CHOOSER, LABEL_NAMES, ORDER_NAMES } from '../words/interface.ts';
import { type Choice, field, listed, named, number, select, typed } from './fields.ts';

/** What the page shows. */
export interface MoreView {
  /** Fingerings, which have a hand of their own. */
  readonly hasFingering: boolean;
  /** A round, whose modes have an order and share an area. */
  readonly hasRound: boolean;
}

/** The fields in HTML, in groups. */
export function moreHtml({ hasFingering, hasRound }: MoreView): string {
  const { degrees, notes } = LABEL_NAMES;
  return [
    group(CHOICES.theView, [
      field(
        'labels',
        CHOOSER.labels,
        select('labels', named(hasFingering ? LABEL_NAMES : { degrees, notes })),
      ),
      hasRound ? field('order', CHOOSER.order, select('order', listed(ORDERS, ORDER_NAMES))) : '',
      hasRound
        ? field('compare', CHOICES.compare, select('compare', listed(LISTS.compare, COMPARE_NAMES)))
        : '',
      field('names', CHOICES.names, select('names', listed(LISTS.names, NAMING_NAMES))),
      field('accidentals', CHOICES.accidentals, select('accidentals', named(ACCIDENTAL_NAMES))),
    ]),
    hasFingering ? group(CHOICES.theHand, handFields(hasRound)) : '',
    group(CHOICES.onTheNeck, [
      field(
        'transpose',
        CHOICES.transpose,
        number('transpose', { from: -24, to: 24, step: '1', placeholder: '0' }),
      ),
      field(
        'capoStrings',
        CHOICES.capoStrings,
        typed('capoStrings', true, CHOICES.all),
        CHOICES.capoStringsHint,
      ),
      field(
        'scaleLength',
        CHOICES.scaleLength,
        typed('scaleLength', true, CHOICES.own),
        CHOICES.scaleLengthHint,
      ),
      field(
        'frets',
        CHOICES.frets,
        number('frets', { from: 1, to: MOST_FRETS, step: '1', placeholder: CHOICES.own }),
      ),
    ]),
  ].join('');
}

function handFields(hasRound: boolean): readonly string[] {
  return [
    hasRound
      ? field('sharing', CHOICES.sharing, select('sharing', listed(LISTS.sharing, SHARING_NAMES)))
      : '',
    field('open', CHOICES.open, select('open', listed(LISTS.open, OPEN_NAMES))),
    field('handSize', CHOICES.handSize, select('handSize', handSizes())),
    field('reach', CHOOSER.reach, number('reach', REACH_RANGE_MM)),
  ];
}

function handSizes(): readonly Choice[] {
  const sizes = ['small', 'medium', 'large'] as const;
  return sizes.map((size) => ({ value: size, text: handSizeName(size, HAND_SIZES[size].reachMm) }));
}

function group(legend: string, fields: readonly string[]): string {
  return `<fieldset><legend>${legend}</legend><div class="fields">${fields.join('')}</div></fieldset>`;
}
