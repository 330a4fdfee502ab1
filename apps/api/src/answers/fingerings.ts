/**
 * Answers about fingerings of one scale.
 */
import type { ModeEntry } from '@stillroot/catalog';
import { DEFAULT_REACH_MM, fingeringsOf, type Neck, type Root, spell } from '@stillroot/core';
import { drawFingering, drawFretboard, fingeringSummary, fingeringText, neckSvg } from '@stillroot/notation';
import {
  type HandQuery,
  handOptions,
  headline,
  type InForms,
  neckFields,
  type PictureQuery,
  svgOptions,
} from './neck-answer.ts';
import { scaleName } from './scales.ts';

export function fingerings(
  entry: ModeEntry,
  root: Root,
  neck: Neck,
  query: HandQuery & PictureQuery & { limit: number },
): InForms {
  const scale = spell(entry.mode, root);
  const name = scaleName(scale);
  const answer = fingeringsOf(neck, scale, { ...handOptions(query), limit: query.limit });
  const best = answer.fingerings[0] ?? answer.alternative?.fingering;
  return {
    json: () => ({
      ...neckFields(neck),
      name,
      root: root.name,
      handReachMm: query.reach ?? DEFAULT_REACH_MM,
      ...answer,
    }),
    svg: () =>
      neckSvg(
        best
          ? drawFingering(neck, scale, best, headline(name, neck), { labels: query.labels })
          : drawFretboard(neck, scale, headline(name, neck), query.labels),
        svgOptions(query),
      ),
    txt: () =>
      [
        headline(name, neck),
        ...(answer.reason ? [`No fingering: ${answer.reason}.`] : []),
        ...(answer.alternative
          ? [`The nearest that can be played is in style ${answer.alternative.style}:`]
          : []),
        ...(best ? [fingeringSummary(best), '', fingeringText(neck, best)] : []),
        '',
        ...answer.cautions,
        '',
      ].join('\n'),
  };
}
