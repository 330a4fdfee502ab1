/**
 * Several scales on one neck: notes that all of them hold are drawn quietly, the others as their degrees'
 * shapes, with a row of squares that says which scales hold them.
 */
import { formatDegree, type Neck, type Place, placesOn, type Scale } from '@stillroot/core';
import type { Labels, Mark, NeckDrawing } from '@stillroot/notation';
import { FIGURES } from '../words/interface.ts';
import { fretWords } from '../words/measures.ts';
import { joined } from '../words/numbers.ts';
import { signs } from '../words/signs.ts';
import { neckFigure } from './neck-figure.ts';

/** Scales on a neck and how they are to be shown. */
export interface CompareNeckView {
  readonly neck: Neck;
  readonly scales: readonly Scale[];
  /** With signs, one for each scale. */
  readonly names: readonly string[];
  readonly title: string;
  readonly labels: Labels;
  readonly leftHanded: boolean;
  /** What to say of a note that all scales hold. */
  readonly inAll: string;
}

/** A place on the neck, and the place of each scale there, where it has one. */
interface SharedPlace {
  readonly at: Place;
  readonly byScale: readonly (Place | undefined)[];
}

/** Half the width of a square, and from one to the next. */
const PIP = 2.6;
const PIP_STEP = 7;
const PIP_Y = 15.5;

/** The neck as a figure in HTML. */
export function compareNeckHtml(view: CompareNeckView): string {
  const { neck, scales, title, leftHanded } = view;
  const places = placesOf(neck, scales);
  const drawing: NeckDrawing = {
    neck,
    fromSlot: 0,
    toSlot: neck.slots.length - 1,
    marks: places.map((place) => markOf(place, view)),
    moves: [],
    title,
    description: describe(places, view),
  };
  const figure = neckFigure(drawing, { leftHanded, id: 'compared', isWhole: true });
  // The drawing's marks are in the order of the places; those that not all scales hold get their squares.
  let at = -1;
  return figure.replace(/<g class="mark[^>]*>.*?<\/g>/g, (mark) => {
    at += 1;
    const place = places[at];
    return place && !isShared(place) ? mark.replace('</g>', `${pips(place.byScale.map(Boolean))}</g>`) : mark;
  });
}

/** The squares by themselves, for the head of a table and the key. */
export function pipsSvg(holds: readonly boolean[]): string {
  const width = PIP_STEP * holds.length;
  return `<svg class="neck pips" viewBox="${-width / 2} ${PIP_Y - 5} ${width} 10" width="${width * 2}" height="20" aria-hidden="true">${pips(holds)}</svg>`;
}

/** A row of squares under a mark, one for each scale, full where it holds the note. */
function pips(holds: readonly boolean[]): string {
  const left = (-PIP_STEP * (holds.length - 1)) / 2;
  const square = (at: number): string => {
    const x = left + at * PIP_STEP - PIP;
    return `M${x} ${PIP_Y - PIP}h${2 * PIP}v${2 * PIP}h${-2 * PIP}z`;
  };
  const paths = [true, false].map((isFull) => {
    const squares = holds.flatMap((one, at) => (one === isFull ? [square(at)] : []));
    return squares.length > 0 ? `<path class="pip${isFull ? ' full' : ''}" d="${squares.join('')}"/>` : '';
  });
  return paths.join('');
}

function placesOf(neck: Neck, scales: readonly Scale[]): readonly SharedPlace[] {
  const lists = scales.map((scale) => new Map(placesOn(neck, scale).map((place) => [keyOf(place), place])));
  const all = new Map(lists.flatMap((list) => [...list]));
  return [...all]
    .map(([key, at]) => ({ at, byScale: lists.map((list) => list.get(key)) }))
    .toSorted((a, b) => a.at.string - b.at.string || a.at.slot - b.at.slot);
}

function keyOf({ string, slot }: Place): string {
  return `${string} ${slot}`;
}

function isShared({ byScale }: SharedPlace): boolean {
  return byScale.every((place) => place !== undefined);
}

function markOf(place: SharedPlace, { scales, labels }: CompareNeckView): Mark {
  const { at, byScale } = place;
  const first = byScale.findIndex((one) => one !== undefined);
  const degree = byScale[first]?.degree ?? at.degree;
  const alteration = scales[first]?.mode.alterations[degree - 1] ?? 0;
  const own = byScale.flatMap((one, which) => (one ? [labelOf(one, scales[which], labels)] : []));
  const label = [...new Set(own)].join('/');
  const { string, slot } = at;
  return { string, slot, degree, alteration, label, isQuiet: isShared(place) && degree !== 1 };
}

function labelOf({ degree, note }: Place, scale: Scale | undefined, labels: Labels): string {
  return labels === 'notes'
    ? signs(note)
    : signs(formatDegree(degree, scale?.mode.alterations[degree - 1] ?? 0));
}

/** String by string, every note with the scales that hold it. */
function describe(places: readonly SharedPlace[], { neck, names, inAll }: CompareNeckView): string {
  const lines = neck.strings.map(({ number, startSlot }) => {
    const here = places.filter(({ at }) => at.string === number);
    const texts = here.map((place) => {
      const { at, byScale } = place;
      const fret = at.slot === startSlot ? FIGURES.openString : fretWords(neck.slots[at.slot]?.fret ?? 0);
      const who = joined(names.filter((_, which) => byScale[which]));
      return `${fret} ${signs(at.note)} ${isShared(place) ? inAll : who}`;
    });
    return `${FIGURES.string} ${number}: ${texts.join(', ')}`;
  });
  return `${lines.join('. ')}.`;
}
