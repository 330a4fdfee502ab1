/**
 * What a page's play-along is made of: the neck and the round or the fingering that the page shows, read from
 * its address and its attributes as the island that draws them reads them.
 */
import {
  type FingeringAnswer,
  type FretRange,
  fail,
  fingeringsOf,
  type Neck,
  type Piece,
  type PlayOptions,
  parseRoot,
  playFingering,
  playRound,
  type Result,
  type Root,
  roundOf,
  type Scale,
  spell,
  UNIVERSE,
} from '@stillroot/core';
import { pageRoot, scaleName } from '../markup/names.ts';
import { roundTitle } from '../words/titles.ts';
import type { Known } from './catalogue.ts';
import { readChoices } from './choices.ts';
import { neckFrom, playingFrom } from './neck-from.ts';

/** Where a mode of the material is drawn on the page. */
export interface Drawn {
  /** The ids of its drawings begin so. */
  readonly idPrefix: string;
  readonly scale: Scale;
  /** The frets that it shows; all of the neck where absent. */
  readonly area?: FretRange;
  /** The mode's place in the round, 0 to 6. */
  readonly modeIndex: number;
}

/** What can be played on a page. */
export interface Material {
  readonly title: string;
  /** What its files are called, without tempo and ending. */
  readonly fileName: string;
  readonly neck: Neck;
  readonly isRound: boolean;
  readonly drawn: readonly Drawn[];
  readonly pieceOf: (options: PlayOptions) => Result<Piece>;
}

/** The material of a page. */
export function materialOf(data: DOMStringMap, query: URLSearchParams, known: Known): Material {
  const choices = readChoices(query);
  const { neck } = neckFrom(choices, known.instruments, data['instrument'] ?? '');
  const { order, sharing, answer: at } = choices;
  const how = playingFrom(choices);
  const nameScale = ({ root, mode }: Scale): string => scaleName(root, known.nameOf(mode).name);
  const mode = UNIVERSE.modesById.get(data['mode'] ?? '');
  const root = rootOf(data['root'] ?? '');
  if (mode) {
    const scale = spell(mode, root);
    const answer = fingeringsOf(neck, scale, { ...how, limit: at });
    const fileName = `${known.nameOf(mode).slug}-${root.slug}-${neck.instrument.id}`;
    return { fileName, ...ofScale(neck, scale, chosenOf(answer, at), nameScale) };
  }
  const asked = query.get('family');
  const family =
    known.plain.families.find(({ slug }) => slug === asked) ??
    known.plain.families.find(({ slug }) => slug === data['family']);
  const head = UNIVERSE.modesById.get(family?.modes[0] ?? '');
  if (!family || !head) throw new Error('the page names a round');
  const turned = rootOf(query.get('root') ?? data['root'] ?? '', root);
  const round = roundOf(neck, head, turned, { ...how, order, sharing });
  return {
    title: roundTitle(family.name, turned),
    fileName: `${family.slug}-${turned.slug}-round-${neck.instrument.id}`,
    neck,
    isRound: true,
    drawn: round.modes.flatMap(({ scale, fingering }, modeIndex) =>
      fingering && round.area
        ? [{ idPrefix: `turn${modeIndex + 1}`, scale, area: round.area, modeIndex }]
        : [],
    ),
    pieceOf: (options) => playRound(round, options, nameScale),
  };
}

/** An answer whose first fingering is the one that the page shows. */
function chosenOf(answer: FingeringAnswer, at: number): FingeringAnswer {
  return answer.shifts ? answer : { ...answer, fingerings: answer.fingerings.slice(0, at).slice(-1) };
}

function ofScale(
  neck: Neck,
  scale: Scale,
  { fingerings: [fingering], reason }: FingeringAnswer,
  nameScale: (scale: Scale) => string,
): Omit<Material, 'fileName'> {
  const title = nameScale(scale);
  return {
    title,
    neck,
    isRound: false,
    drawn: [
      { idPrefix: 'whole', scale, modeIndex: 0 },
      ...(fingering ? [{ idPrefix: 'place', scale, area: fingering.area, modeIndex: 0 }] : []),
    ],
    pieceOf: (options) =>
      fingering
        ? playFingering(scale, fingering, options, nameScale)
        : fail('style', title, { kind: 'playable-fingering', ...(reason && { reason }) }),
  };
}

function rootOf(text: string, usual?: Root): Root {
  const root = parseRoot(text);
  if (root.ok) return pageRoot(root.value);
  if (usual) return usual;
  throw new Error('the page names a root');
}
