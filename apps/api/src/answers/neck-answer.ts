/**
 * What answers on a neck have in common: their forms, the fields that name the neck, and their headline.
 */
import { type FingeringOptions, type Neck, openStringNames, type Style } from '@stillroot/core';
import type { Labels, NeckSvgOptions } from '@stillroot/notation';

/** An answer that can be had in several forms; each is made when it is asked for. */
export interface InForms {
  readonly json: () => unknown;
  readonly svg: () => string;
  readonly txt: () => string;
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
  readonly reach?: number | undefined;
}

/** The fields that say which neck an answer is about. */
export function neckFields(neck: Neck) {
  return {
    instrument: neck.instrument.id,
    tuning: openStringNames(neck.tuning),
    tuningId: neck.tuning.id,
    capo: neck.capoFret,
    scaleLengthMm: neck.scaleLengthMm,
  };
}

/** One line that names what is on a neck, and the neck. */
export function headline(name: string, neck: Neck): string {
  const capo = neck.capoFret > 0 ? `, capo at ${neck.capoFret}` : '';
  return `${name}, ${neck.instrument.name}, ${openStringNames(neck.tuning).join(' ')}${capo}`;
}

/** What a query asks of a hand, as core takes it. */
export function handOptions({ style, fret, reach }: HandQuery): FingeringOptions {
  return { style, ...(fret !== undefined && { fret }), ...(reach !== undefined && { reachMm: reach }) };
}

/** How a picture that stands alone is drawn. */
export function svgOptions({ hand }: PictureQuery): NeckSvgOptions {
  return { leftHanded: hand === 'left', standalone: true };
}
