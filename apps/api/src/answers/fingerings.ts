/**
 * Answers about fingerings of one scale.
 */
import type { ModeEntry } from '@stillroot/catalog';
import {
  cautionInWords,
  type Fingering,
  type FingeringAnswer,
  fail,
  fingeringsOf,
  type Neck,
  type Piece,
  playFingering,
  type Result,
  type Root,
  spell,
} from '@stillroot/core';
import {
  drawFingering,
  drawFretboard,
  fingeringSummary,
  fingeringText,
  neckSvg,
  pieceText,
} from '@stillroot/notation';
import { type AskedNeck, orRefuse } from '../resolve.ts';
import {
  fileNameOf,
  type HandQuery,
  handOptions,
  headline,
  type InForms,
  neckFields,
  type PictureQuery,
  reachOf,
  saying,
  svgOptions,
  whyOf,
} from './neck-answer.ts';
import { knownName, midiOf, musicXmlOf, type PlayQuery, pieceIn, playOptions } from './playing.ts';
import { scaleName } from './scales.ts';

export function fingerings(
  entry: ModeEntry,
  root: Root,
  asked: AskedNeck,
  query: HandQuery & PictureQuery & PlayQuery & { limit: number },
): InForms {
  const { neck } = asked;
  const scale = spell(entry.mode, root);
  const name = scaleName(scale);
  const answer = fingeringsOf(neck, scale, { ...handOptions(query), limit: query.limit });
  const why = whyOf(answer.reason);
  const cautions = () => answer.cautions.map(cautionInWords);
  const best = answer.fingerings[0] ?? answer.alternative?.fingering;
  const title = () => headline(name, neck);
  // The picture shows the nearest that can be played, where what was asked for cannot.
  const pictureTitle = () => {
    const { alternative } = answer;
    const said = saying(title(), answer.reason);
    return alternative ? `${said}; instead, in style ${alternative.style}` : said;
  };
  const titles = () => ({ title: name, remarks: [title()] });
  // Without a fingering that was asked for there is nothing to be played; the nearest one is only shown.
  const isPlayable = answer.fingerings.length > 0;
  const playable = { isPlayable, style: query.style, alternative: answer.alternative };
  const play = (): Result<Piece> =>
    isPlayable && best
      ? playFingering(scale, best, playOptions(query), knownName)
      : fail('fingering', name, {
          kind: 'playable-fingering',
          ...(answer.reason && { reason: answer.reason }),
        });
  return {
    fileName: () => fileNameOf([root.name, entry.slug], neck),
    json: () => ({
      ...neckFields(asked),
      name,
      root: root.name,
      handReachMm: reachOf(query),
      ...answer,
      ...why,
      cautions: cautions(),
    }),
    svg: () =>
      neckSvg(
        best
          ? drawFingering(neck, scale, best, pictureTitle(), { labels: query.labels })
          : drawFretboard(neck, scale, pictureTitle(), query.labels),
        svgOptions(query),
      ),
    txt: () =>
      [
        title(),
        ...(why ? [`No fingering: ${why.reason}.`] : []),
        ...(answer.alternative
          ? [`The nearest that can be played is in style ${answer.alternative.style}:`]
          : []),
        ...textOf(neck, answer, best),
        '',
        ...(isPlayable ? [pieceText(orRefuse(play()), neck)] : []),
        ...cautions(),
        '',
      ].join('\n'),
    mid: () => midiOf(pieceIn(play(), playable), asked, query, titles()),
    musicxml: () => musicXmlOf(pieceIn(play(), playable), asked, query, titles()),
  };
}

/** The best fingering, or every area of a chain across the neck. */
function textOf(neck: Neck, { fingerings, shifts }: FingeringAnswer, best: Fingering | undefined) {
  const shown = shifts ? fingerings : best ? [best] : [];
  return shown.flatMap((fingering, at) => {
    const shift = shifts?.[at - 1];
    return [
      ...(shift
        ? ['', `Then shift from fret ${shift.fromFret} to fret ${shift.toFret}, ${shift.distanceMm} mm:`]
        : []),
      fingeringSummary(fingering),
      '',
      fingeringText(neck, fingering),
    ];
  });
}
