/**
 * Answers about the whole neck: every place of every note of a scale.
 */
import type { ModeEntry } from '@stillroot/catalog';
import { placesOn, type Root, spell } from '@stillroot/core';
import { drawFretboard, fretboardText, neckSvg } from '@stillroot/notation';
import type { AskedNeck } from '../resolve.ts';
import {
  fileNameOf,
  headline,
  type InForms,
  neckFields,
  type PictureQuery,
  svgOptions,
} from './neck-answer.ts';
import { scaleName } from './scales.ts';

export function fretboard(entry: ModeEntry, root: Root, asked: AskedNeck, picture: PictureQuery): InForms {
  const { neck } = asked;
  const scale = spell(entry.mode, root);
  const name = scaleName(scale);
  return {
    fileName: () => fileNameOf([root.name, entry.slug, 'fretboard'], neck),
    json: () => ({
      ...neckFields(asked),
      name,
      root: root.name,
      places: placesOn(neck, scale).map(({ string, fret, note, degree, midi }) => ({
        string,
        fret,
        note,
        degree,
        midi,
      })),
    }),
    svg: () => neckSvg(drawFretboard(neck, scale, headline(name, neck), picture.labels), svgOptions(picture)),
    txt: () => `${headline(name, neck)}\n\n${fretboardText(neck, scale)}\n`,
  };
}
