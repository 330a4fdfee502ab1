/**
 * Answers about rounds.
 */
import { type FamilyEntry, modeEntryOf } from '@stillroot/catalog';
import {
  cautionInWords,
  type Neck,
  type Order,
  type Piece,
  playRound,
  type Result,
  type Root,
  type Round,
  type RoundOptions,
  reasonInWords,
  roundOf,
  type Sharing,
  secondsAt,
} from '@stillroot/core';
import { drawFingering, drawFretboard, fingeringSummary, pieceText, sheetSvg } from '@stillroot/notation';
import { remember } from '../remember.ts';
import { type AskedNeck, orRefuse } from '../resolve.ts';
import {
  fileNameOf,
  type HandQuery,
  handOptions,
  headline,
  type InForms,
  neckFields,
  type PictureQuery,
  saying,
  svgOptions,
  whyOf,
} from './neck-answer.ts';
import { knownName, midiOf, musicXmlOf, type PlayQuery, pieceIn, playOptions } from './playing.ts';
import { scaleName } from './scales.ts';

/** What may be asked of a round. */
export interface RoundQuery extends HandQuery, PictureQuery, PlayQuery {
  readonly order: Order;
  readonly sharing: Sharing;
  readonly columns: number;
}

/** A round that is asked for. */
interface Layout {
  readonly neck: Neck;
  readonly family: FamilyEntry;
  readonly root: Root;
  readonly options: RoundOptions;
}

/** Rounds that were laid out of late: another pattern, tempo or form of one is near at hand. */
const laidOut = remember(
  24,
  ({ neck, family, root, options }: Layout) =>
    `${numberOf(neck)} ${family.id} ${root.name} ${JSON.stringify(options)}`,
  ({ neck, family, root, options }) => roundOf(neck, family.head.mode, root, options),
);

const numbers = new WeakMap<Neck, number>();
let necks = 0;

/** A number of a neck's own. */
function numberOf(neck: Neck): number {
  const known = numbers.get(neck);
  if (known !== undefined) return known;
  necks += 1;
  numbers.set(neck, necks);
  return necks;
}

export function round(family: FamilyEntry, root: Root, asked: AskedNeck, query: RoundQuery): InForms {
  const { neck } = asked;
  const { order, sharing } = query;
  const answer = laidOut({ neck, family, root, options: { ...handOptions(query), order, sharing } });
  const isPlayable = answer.modes.some(({ fingering }) => fingering !== undefined);
  const play = (): Result<Piece> => playRound(answer, playOptions(query), knownName);
  const playable = { isPlayable, style: query.style, alternative: answer.alternative };
  const name = `Round of ${family.name} from ${root.name}`;
  const title = () => headline(name, neck);
  const titles = () => ({ title: name, remarks: [title()] });
  return {
    fileName: () => fileNameOf(['round', family.slug, root.name], neck),
    json: () => roundJson(answer, isPlayable ? orRefuse(play()) : undefined, family, asked, query),
    svg: () => roundSvg(answer, saying(title(), answer.reason), neck, query),
    txt: () => roundText(answer, title(), isPlayable ? pieceText(orRefuse(play()), neck) : ''),
    mid: () => midiOf(pieceIn(play(), playable), asked, query, titles()),
    musicxml: () => musicXmlOf(pieceIn(play(), playable), asked, query, titles()),
  };
}

function roundJson(
  answer: Round,
  piece: Piece | undefined,
  family: FamilyEntry,
  asked: AskedNeck,
  query: RoundQuery,
) {
  const { pattern, value, tempo, meter, countIn, sharing } = query;
  const { root, order, style, area, reason, alternative, cautions } = answer;
  return {
    ...neckFields(asked),
    family: family.slug,
    familyName: family.name,
    root: root.name,
    order,
    style,
    sharing,
    pattern,
    noteValue: value,
    tempoBpm: tempo,
    meter: `${meter.beats}/${meter.unit}`,
    countInBars: countIn,
    durationSeconds: piece ? inMilliseconds(secondsAt(piece.timing, piece.totalTicks)) : 0,
    area: area ?? null,
    modes: answer.modes.map(({ scale, moved, fingering, reason: leftOut }, modeIndex) => {
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
        ...playedIn(piece, modeIndex),
        ...whyOf(leftOut),
      };
    }),
    ...whyOf(reason),
    ...(alternative && { alternative }),
    cautions: cautions.map(cautionInWords),
  };
}

/** In which order the notes of a mode are played, and from when. */
function playedIn(piece: Piece | undefined, modeIndex: number) {
  const section = piece?.sections.find((one) => one.modeIndex === modeIndex);
  if (!piece || !section) return { sequence: [], startSeconds: null };
  return {
    sequence: piece.notes.filter((note) => note.modeIndex === modeIndex).map(({ noteIndex }) => noteIndex),
    startSeconds: inMilliseconds(secondsAt(piece.timing, section.startTicks)),
  };
}

function inMilliseconds(seconds: number): number {
  return Math.round(seconds * 1000) / 1000;
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

function roundText({ modes, area, reason, cautions }: Round, title: string, tablature: string): string {
  const hands = modes.map(({ scale, fingering, reason: own }) => {
    const why = own ?? reason;
    const leftOut = ['left out', ...(why ? [reasonInWords(why)] : [])].join(': ');
    return `${scaleName(scale)}: ${fingering ? fingeringSummary(fingering) : leftOut}`;
  });
  return [
    title,
    ...(area ? [`frets ${area.from} to ${area.to}`] : []),
    ...(reason ? [`${reasonInWords(reason)}.`] : []),
    '',
    ...hands,
    '',
    ...(tablature === '' ? [] : [tablature]),
    ...cautions.map(cautionInWords),
    '',
  ].join('\n');
}
