/**
 * What is to be drawn on a neck, as data: marks at places, and the moves between two modes.
 */
import {
  type Fingering,
  type Neck,
  openSlot,
  type Place,
  placesOn,
  type Scale,
  toSigns,
} from '@stillroot/core';

/** What stands in a mark. */
export type Labels = 'degrees' | 'notes' | 'fingers';

/** A mark on a neck. */
export interface Mark {
  /** String number, 1 at the highest-sounding side. */
  readonly string: number;
  readonly slot: number;
  /** 1 to 7. */
  readonly degree: number;
  readonly alteration: number;
  readonly label: string;
  /** Whether it lies in the area but is not part of what is played. */
  readonly isQuiet: boolean;
}

/** A note that lay elsewhere in the mode before. */
export interface Move {
  readonly string: number;
  readonly fromSlot: number;
  readonly toSlot: number;
}

/** A stretch of a neck with what is on it. */
export interface NeckDrawing {
  readonly neck: Neck;
  readonly fromSlot: number;
  readonly toSlot: number;
  readonly marks: readonly Mark[];
  readonly moves: readonly Move[];
  /** One line that names it. */
  readonly title: string;
  /** The same in words, for those who do not see it. */
  readonly description: string;
}

/** Every place of a scale along the whole neck. */
export function drawFretboard(
  neck: Neck,
  scale: Scale,
  title: string,
  labels: Labels = 'degrees',
): NeckDrawing {
  const texts = textsOf(scale, labels);
  const marks = placesOn(neck, scale).map((place) => markAt(place, scale, texts, false));
  return {
    neck,
    fromSlot: 0,
    toSlot: neck.slots.length - 1,
    marks,
    moves: [],
    title,
    description: describeMarks(neck, marks, scale),
  };
}

/** What may be asked of the drawing of a fingering. */
export interface FingeringDrawingOptions {
  readonly labels?: Labels;
  /** The frets to show; those of the fingering itself where absent. */
  readonly area?: { readonly from: number; readonly to: number };
  /** The mode before it on the same root, whose moved notes are drawn as arrows. */
  readonly before?: Scale;
}

/** A fingering in its area; the scale's other notes in the same frets are drawn quietly. */
export function drawFingering(
  neck: Neck,
  scale: Scale,
  fingering: Fingering,
  title: string,
  options: FingeringDrawingOptions = {},
): NeckDrawing {
  const { labels = 'degrees', area = fingering.area, before } = options;
  const fromSlot = slotOf(neck, area.from);
  const toSlot = slotOf(neck, area.to);
  const isShown = ({ fret }: Place): boolean => fret >= area.from && fret <= area.to;
  const texts = textsOf(scale, labels);
  const fingers = new Map(fingering.notes.map((note) => [`${note.string} ${note.fret}`, note.finger]));
  const marks = placesOn(neck, scale)
    .filter(isShown)
    .map((place) => {
      const finger = fingers.get(`${place.string} ${place.fret}`);
      return markAt(place, scale, texts, finger === undefined, finger);
    });
  return {
    neck,
    fromSlot,
    toSlot: Math.min(Math.max(toSlot, fromSlot + 1), neck.slots.length - 1),
    marks,
    moves: before ? movesBetween(neck, before, scale, isShown) : [],
    title,
    description: describeFingering(neck, fingering, scale),
  };
}

/** What stands in the marks of each degree; nothing where fingers do, which differ from note to note. */
function textsOf(scale: Scale, labels: Labels): readonly string[] | undefined {
  if (labels === 'fingers') return undefined;
  return labels === 'notes' ? noteTexts(scale) : degreeTexts(scale);
}

/** A scale's notes with proper signs. */
function noteTexts({ notes }: Scale): readonly string[] {
  return notes.map(toSigns);
}

/** A scale's degrees with proper signs. */
function degreeTexts({ mode }: Scale): readonly string[] {
  return mode.formula.map(toSigns);
}

function markAt(
  { string, slot, degree }: Place,
  scale: Scale,
  texts: readonly string[] | undefined,
  isQuiet: boolean,
  finger?: number,
): Mark {
  const alteration = scale.mode.alterations[degree - 1] as number;
  const label = texts ? (texts[degree - 1] as string) : String(finger ?? '');
  return { string, slot, degree, alteration, label, isQuiet };
}

/** On each string, the places where a degree now lies and where it lay before, within what is shown. */
function movesBetween(
  neck: Neck,
  before: Scale,
  after: Scale,
  isShown: (place: Place) => boolean,
): readonly Move[] {
  const moves: Move[] = [];
  const old = placesOn(neck, before);
  for (const place of placesOn(neck, after).filter(isShown)) {
    const by =
      (after.mode.semitones[place.degree - 1] as number) -
      (before.mode.semitones[place.degree - 1] as number);
    if (by === 0) continue;
    const from = old.find(
      (one) => one.string === place.string && one.degree === place.degree && one.midi === place.midi - by,
    );
    if (from) moves.push({ string: place.string, fromSlot: from.slot, toSlot: place.slot });
  }
  return moves;
}

function slotOf(neck: Neck, fret: number): number {
  if (fret === 0) return openSlot(neck);
  return neck.slots.findIndex((slot) => slot.fret === fret);
}

function describeFingering(neck: Neck, fingering: Fingering, scale: Scale): string {
  const degrees = degreeTexts(scale);
  const notes = fingering.notes.map(({ string, fret, finger, note, degree }) => {
    const where = fret === 0 ? `string ${string} open` : `string ${string} fret ${fret} finger ${finger}`;
    return `${degrees[degree - 1]} ${toSigns(note)}: ${where}`;
  });
  return `${neck.strings.length} strings, counted from the highest-sounding side. ${notes.join('; ')}.`;
}

function describeMarks(neck: Neck, marks: readonly Mark[], scale: Scale): string {
  const texts = noteTexts(scale);
  const lines = neck.strings.map(({ number, startSlot }) => {
    const onString = marks.filter(({ string }) => string === number);
    const places = onString.map(({ slot, degree }) => {
      const note = texts[degree - 1];
      return slot === startSlot ? `open ${note}` : `${neck.slots[slot]?.fret} ${note}`;
    });
    return `String ${number}: ${places.join(', ')}`;
  });
  return `${lines.join('. ')}.`;
}
