/**
 * What answers on a neck have in common: their forms, the fields that name the neck, and their headline.
 */
import {
  type FingeringOptions,
  HAND_SIZES,
  type HandSizeName,
  type Neck,
  type OpenStrings,
  openStringNames,
  type Reason,
  reasonInWords,
  type Style,
} from '@stillroot/core';
import type { Labels, NeckSvgOptions } from '@stillroot/notation';
import type { AskedNeck } from '../resolve.ts';

/** An answer that can be had in several forms; each is made when it is asked for. */
export interface InForms {
  readonly json: () => unknown;
  readonly svg: () => string;
  readonly txt: () => string;
  readonly mid?: () => Uint8Array;
  readonly musicxml?: () => string;
  /** What a file of it is called, without extension. */
  readonly fileName: () => string;
}

/** How a picture is drawn. */
export interface PictureQuery {
  readonly labels: Labels;
  readonly hand: 'right' | 'left';
}

/** What may be asked of a hand. */
export interface HandQuery {
  readonly style: Style;
  readonly fret?: number | undefined;
  readonly open: OpenStrings;
  readonly handSize: HandSizeName;
  readonly reach?: number | undefined;
}

/** The fields that say which neck an answer is about. */
export function neckFields({ neck, reading, alsoTuned }: AskedNeck) {
  return {
    instrument: neck.instrument.id,
    tuning: openStringNames(neck.tuning),
    tuningId: neck.tuning.id,
    tuningName: neck.tuning.name,
    ...(reading && {
      reading: {
        text: reading.text,
        notation: reading.notation,
        guessed: reading.guessed,
        ...(reading.alternative && { alternative: openStringNames(reading.alternative.tuning) }),
      },
    }),
    alsoTuned: alsoTuned.map(({ instrument, tuning }) => ({
      instrument: instrument.id,
      tuning: tuning.id,
      name: tuning.name,
    })),
    capo: neck.capoFret,
    capoStrings: neck.capoStrings,
    scaleLengthMm: neck.scaleLengthMm,
    // To a tenth, as all lengths: what lies between the outer strings is worked out.
    scaleLengthsMm: neck.strings.toReversed().map(({ scaleLengthMm }) => Math.round(scaleLengthMm * 10) / 10),
    frets: neck.slots.at(-1)?.fret,
  };
}

/** What a file about something on a neck is called: ASCII, words joined by hyphens. */
export function fileNameOf(about: readonly string[], { instrument, tuning }: Neck): string {
  const own = tuning.id === instrument.tunings[0]?.id ? [] : [openStringNames(tuning).join(' ')];
  return [...about, instrument.id, ...own]
    .join('-')
    .replaceAll('#', 's')
    .replaceAll(/[^A-Za-z0-9]+/g, '-');
}

/** One line that names what is on a neck, and the neck. */
export function headline(name: string, neck: Neck): string {
  const strings =
    neck.capoStrings.length < neck.strings.length ? ` on strings ${neck.capoStrings.join(', ')}` : '';
  const capo = neck.capoFret > 0 ? `, capo at ${neck.capoFret}${strings}` : '';
  return `${name}, ${neck.instrument.name}, ${openStringNames(neck.tuning).join(' ')}${capo}`;
}

/** Why something cannot be played, in words and for programs; undefined where it can. */
export function whyOf(reason: Reason | undefined) {
  return reason && { reason: reasonInWords(reason), reasonKind: reason.kind };
}

/** A title that says why what it names cannot be played, where it cannot. */
export function saying(title: string, reason: Reason | undefined): string {
  return reason ? `${title}: ${reasonInWords(reason)}` : title;
}

/** What a query asks of a hand, as core takes it. */
export function handOptions(query: HandQuery): FingeringOptions {
  const { style, fret, open } = query;
  return { style, openStrings: open, reachMm: reachOf(query), ...(fret !== undefined && { fret }) };
}

/** The reach of the hand that a query asks for. */
export function reachOf({ reach, handSize }: HandQuery): number {
  return reach ?? HAND_SIZES[handSize].reachMm;
}

/** How a picture that stands alone is drawn. */
export function svgOptions({ hand }: PictureQuery): NeckSvgOptions {
  return { handedness: hand, standalone: true };
}
