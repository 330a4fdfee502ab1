/**
 * The signs of a bar as the engraver's notes, on both staves, with what joins them.
 */
import { Accidental, Beam, Dot, GhostNote, StaveNote, Stem, TabNote, Tuplet, Voice } from 'vexflow/core';
import type { ReadScore, ScoreBar, ScoreSign } from './play-score-read.ts';

/** A fret in tablature that stands under the head of its note, as wide as either may be. */
export class CentredTabNote extends TabNote {
  private shift = 0;

  /** @param x the middle of the head, once the bar is laid out */
  centreUnder(x: number): void {
    this.shift = x - super.getAbsoluteX();
  }

  override getAbsoluteX(): number {
    return super.getAbsoluteX() + this.shift;
  }
}

/** A bar that is ready to be set. */
export interface BarNotes {
  readonly staff: readonly StaveNote[];
  readonly tab: readonly (TabNote | GhostNote)[];
  readonly voices: readonly Voice[];
  readonly beams: readonly Beam[];
  readonly brackets: readonly Tuplet[];
}

const DURATIONS: Readonly<Record<string, string>> = {
  whole: 'w',
  half: 'h',
  quarter: 'q',
  eighth: '8',
  '16th': '16',
  '32nd': '32',
  '64th': '64',
};

/** The clefs of fretted instruments as the engraver knows them. */
const CLEFS: Readonly<Record<string, string>> = { G2: 'treble', F4: 'bass', C3: 'alto', C4: 'tenor' };

/** Where rests stand: on the middle line of each clef. */
const MIDDLES: Readonly<Record<string, string>> = {
  treble: 'b/4',
  bass: 'd/3',
  alto: 'c/4',
  tenor: 'a/3',
};

/** Accidentals by their code points in SMuFL (W3C), from triple flat to triple sharp. */
const ACCIDENTALS = ['\uE266', '\uE264', '\uE260', '\uE261', '\uE262', '\uE263', '\uE265'] as const;

/** The engraver's name of a clef. */
export function clefName({ sign, line }: ReadScore['clef']): string {
  return CLEFS[`${sign}${line}`] ?? 'treble';
}

/** The notes of a bar. */
export function barNotes(score: ReadScore, bar: ScoreBar): BarNotes {
  const staff = bar.staff.map((sign) => staffNote(score, sign));
  const tab = bar.tab.map(tabNote);
  const brackets = groupsOf(
    bar.staff,
    ({ beginsBracket }) => beginsBracket,
    ({ endsBracket }) => endsBracket,
  );
  const beamed = groupsOf(
    bar.staff,
    ({ beam }) => beam === 'begin',
    ({ beam }) => beam === 'end',
  );
  const inBrackets = (notes: readonly (StaveNote | TabNote | GhostNote)[]): readonly Tuplet[] =>
    brackets.map(
      ([from, to]) => new Tuplet(notes.slice(from, to), { numNotes: 3, notesOccupied: 2, bracketed: true }),
    );
  const beams = beamed.map(([from, to]) => new Beam(staff.slice(from, to), true));
  const shown = inBrackets(staff);
  // Those of the tablature are not drawn, but keep its notes in time with the staff's.
  inBrackets(tab);
  return { staff, tab, voices: [voiceOf(score, staff), voiceOf(score, tab)], beams, brackets: shown };
}

function staffNote({ clef }: ReadScore, sign: ScoreSign): StaveNote {
  const name = clefName(clef);
  const { pitch, type = 'whole', isDotted } = sign;
  const duration = DURATIONS[type] ?? 'q';
  const dots = isDotted ? 1 : 0;
  if (!pitch) {
    const rest = new StaveNote({
      keys: [MIDDLES[name] ?? 'b/4'],
      clef: name,
      duration: `${duration}r`,
      dots,
    });
    return withDots(rest, dots);
  }
  const key = `${pitch.step.toLowerCase()}/${pitch.octave - clef.octaveChange}`;
  const note = new StaveNote({ keys: [key], clef: name, duration, dots, autoStem: true });
  if (sign.hasAccidental) {
    for (const code of accidentalsOf(pitch.alter)) note.addModifier(new Accidental(code));
  }
  return withDots(note, dots);
}

function tabNote({ type = 'whole', isDotted, string, fret, isTiedBack }: ScoreSign): TabNote | GhostNote {
  const duration = DURATIONS[type] ?? 'q';
  const dots = isDotted ? 1 : 0;
  if (string === undefined || fret === undefined || isTiedBack) return new GhostNote({ duration, dots });
  const note = new CentredTabNote({ positions: [{ str: string, fret }], duration, dots });
  note.setStemDirection(Stem.UP);
  return note;
}

function withDots(note: StaveNote, dots: number): StaveNote {
  if (dots > 0) Dot.buildAndAttach([note], { all: true });
  return note;
}

/** One sign as far as there is one, and beyond a triple accidental as many as it takes. */
function accidentalsOf(alter: number): readonly string[] {
  const most = 3;
  if (Math.abs(alter) <= most) return [ACCIDENTALS[alter + most] ?? ''];
  return [...accidentalsOf(Math.sign(alter) * 2), ...accidentalsOf(alter - Math.sign(alter) * 2)];
}

function voiceOf({ meter }: ReadScore, notes: readonly (StaveNote | TabNote | GhostNote)[]): Voice {
  const voice = new Voice({ numBeats: meter.beats, beatValue: meter.unit });
  return voice.setMode(Voice.Mode.SOFT).addTickables([...notes]);
}

/** From where a group begins to after where it ends. */
function groupsOf(
  signs: readonly ScoreSign[],
  begins: (sign: ScoreSign) => boolean,
  ends: (sign: ScoreSign) => boolean,
): readonly (readonly [number, number])[] {
  const groups: (readonly [number, number])[] = [];
  let from = -1;
  for (const [at, sign] of signs.entries()) {
    if (begins(sign)) from = at;
    if (ends(sign) && from >= 0) {
      groups.push([from, at + 1]);
      from = -1;
    }
  }
  return groups;
}
