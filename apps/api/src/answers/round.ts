/**
 * Answers about rounds.
 */
import { type FamilyEntry, modeEntryOf } from '@stillroot/catalog';
import type { Pattern } from '@stillroot/contract';
import {
  type Fingering,
  type Neck,
  type Order,
  type Root,
  type Round,
  roundOf,
  type Sharing,
} from '@stillroot/core';
import { drawFingering, drawFretboard, fingeringSummary, fingeringText, sheetSvg } from '@stillroot/notation';
import type { AskedNeck } from '../resolve.ts';
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

/** What may be asked of a round. */
export interface RoundQuery extends HandQuery, PictureQuery {
  readonly order: Order;
  readonly sharing: Sharing;
  readonly pattern: Pattern;
  readonly tempo: number;
  readonly columns: number;
}

export function round(family: FamilyEntry, root: Root, asked: AskedNeck, query: RoundQuery): InForms {
  const { neck } = asked;
  const { order, sharing } = query;
  const answer = roundOf(neck, family.head.mode, root, { ...handOptions(query), order, sharing });
  const title = headline(`Round of ${family.name} from ${root.name}`, neck);
  return {
    json: () => roundJson(answer, family, asked, query),
    svg: () => roundSvg(answer, title, neck, query),
    txt: () => roundText(answer, title, neck),
  };
}

function roundJson(answer: Round, family: FamilyEntry, asked: AskedNeck, query: RoundQuery) {
  const { pattern, tempo, sharing } = query;
  const { root, order, style, area, reason, alternative, cautions } = answer;
  const played = answer.modes.flatMap(({ fingering }) => fingering ?? []);
  const sequence = sequenceOf(played[0]?.notes.length ?? 0, pattern);
  return {
    ...neckFields(asked),
    family: family.slug,
    familyName: family.name,
    root: root.name,
    order,
    style,
    sharing,
    pattern,
    sequence,
    tempoBpm: tempo,
    durationSeconds: Math.round(((played.length * sequence.length * 60) / tempo) * 1000) / 1000,
    area: area ?? null,
    modes: answer.modes.map(({ scale, moved, fingering, reason: leftOut }) => {
      const { slug, name, degree } = modeEntryOf(scale.mode);
      const { id, formula } = scale.mode;
      const notes = scale.notes;
      return {
        mode: slug,
        id,
        name,
        degree,
        formula,
        notes,
        moved,
        fingering: fingering ?? null,
        ...(leftOut && { reason: leftOut }),
      };
    }),
    ...(reason && { reason }),
    ...(alternative && { alternative }),
    cautions,
  };
}

function roundSvg({ modes, area }: Round, title: string, neck: Neck, query: RoundQuery): string {
  const { labels } = query;
  const drawings = modes.map(({ scale, fingering }, at) => {
    const before = modes[at - 1]?.scale;
    const name = scaleName(scale);
    return fingering && area
      ? drawFingering(neck, scale, fingering, name, { labels, area, ...(before && { before }) })
      : drawFretboard(neck, scale, name, labels);
  });
  return sheetSvg(title, drawings, { ...svgOptions(query), columns: query.columns });
}

function roundText({ modes, area, reason, cautions }: Round, title: string, neck: Neck): string {
  return [
    title,
    ...(area ? [`frets ${area.from} to ${area.to}`] : []),
    ...(reason ? [`${reason}.`] : []),
    ...modes.flatMap(({ scale, fingering, reason: leftOut }) => [
      '',
      scaleName(scale),
      ...tabLines(neck, fingering, leftOut),
    ]),
    '',
    ...cautions,
    '',
  ].join('\n');
}

function tabLines(
  neck: Neck,
  fingering: Fingering | undefined,
  reason: string | undefined,
): readonly string[] {
  if (fingering) return [fingeringSummary(fingering), fingeringText(neck, fingering)];
  return reason ? [`left out: ${reason}`] : [];
}

function sequenceOf(count: number, pattern: Pattern): readonly number[] {
  const up = Array.from({ length: count }, (_, at) => at);
  switch (pattern) {
    case 'up':
      return up;
    case 'down':
      return up.toReversed();
    case 'up-and-down':
      return [...up, ...up.toReversed().slice(1)];
  }
}
