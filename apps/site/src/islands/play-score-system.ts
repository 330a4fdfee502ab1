/**
 * A system: some bars side by side, the staff over the tablature staff, drawn as SVG.
 */
import {
  Barline,
  Clef,
  Formatter,
  Renderer,
  Stave,
  StaveConnector,
  type SVGContext,
  TabStave,
} from 'vexflow/core';
import { drawFingers, drawTies, middleOf } from './play-score-joins.ts';
import { headWidth, LEFT, leastWidth, type System } from './play-score-layout.ts';
import { type BarNotes, barNotes, CentredTabNote, clefName } from './play-score-notes.ts';
import type { ReadScore, ScoreBar, ScoreSign } from './play-score-read.ts';

/** A note that was drawn, and the light behind it. */
export interface DrawnNote {
  readonly svg: SVGSVGElement;
  readonly x: number;
}

/** A drawn system. */
export interface DrawnSystem {
  readonly svg: SVGSVGElement;
  /** Each note that is struck, in order. */
  readonly notes: readonly DrawnNote[];
}

const STAFF_SPACE = 10;
const TAB_SPACE = 13;
/** Room for what stands over the staff: stems and brackets. */
const ABOVE = 26;
/** Room between the lowest note and the tablature, and for the fingers under it. */
const BETWEEN = 34;
const FINGERS = 22;
/** The wide sign of a tablature fits six lines; that for four, fewer. */
const TAB_SIGNS = { six: '\uE06D', four: '\uE06E' } as const;

/** Draws a system at the end of an element. */
export function drawSystem(inside: HTMLDivElement, score: ReadScore, system: System): DrawnSystem {
  const { bars, isFirst, isLast, width } = system;
  const set = bars.map((bar) => barNotes(score, bar));
  const { above, below } = reachOf(set);
  const staffTop = ABOVE + above * STAFF_SPACE;
  const tabTop = staffTop + (4 + below) * STAFF_SPACE + BETWEEN;
  const height = tabTop + (score.strings - 1) * TAB_SPACE + FINGERS + 6;
  const renderer = new Renderer(inside, Renderer.Backends.SVG).resize(width, height);
  const context = renderer.getContext() as SVGContext;
  context.setFillStyle('currentColor').setStrokeStyle('currentColor');
  const head = headWidth(isFirst);
  const least = bars.map(leastWidth);
  const spare = (width - head - LEFT) / least.reduce((sum, one) => sum + one, 0);
  let x = LEFT;
  for (const [at, notes] of set.entries()) {
    const barWidth = (least[at] as number) * spare + (at === 0 ? head - LEFT : 0);
    const bar = bars[at] as ScoreBar;
    const staff = new Stave(x, staffTop, barWidth, { spaceAboveStaffLn: 0 });
    const tab = new TabStave(x, tabTop, barWidth, {
      numLines: score.strings,
      spacingBetweenLinesPx: TAB_SPACE,
      spaceAboveStaffLn: 0,
    });
    if (at === 0) openStaves(score, staff, tab, isFirst);
    const isEnd = isLast && at === set.length - 1;
    for (const one of [staff, tab]) {
      one.setBegBarType(at === 0 ? Barline.type.SINGLE : Barline.type.NONE);
      const { END, DOUBLE, SINGLE } = Barline.type;
      one.setEndBarType(isEnd ? END : bar.endsSection ? DOUBLE : SINGLE);
    }
    const begin = Math.max(staff.getNoteStartX(), tab.getNoteStartX());
    staff.setNoteStartX(begin);
    tab.setNoteStartX(begin);
    setBar(context, notes, staff, tab);
    if (at === 0) {
      new StaveConnector(staff, tab).setType('singleLeft').setContext(context).drawWithStyle();
    }
    x += barWidth;
  }
  drawTies(
    context,
    bars.flatMap((bar) => bar.staff),
    set.flatMap((one) => one.staff),
  );
  drawFingers(context, bars, set, tabTop + (score.strings - 1) * TAB_SPACE + FINGERS);
  const svg = context.svg as SVGSVGElement;
  svg.removeAttribute('style');
  svg.setAttribute('width', String(width));
  svg.setAttribute('height', String(height));
  svg.setAttribute('viewBox', `0 0 ${width} ${height}`);
  const struck = set.flatMap(({ staff }, at) =>
    staff.filter((_, sign) => isStruck(bars[at]?.staff[sign])).map((note) => ({ svg, x: middleOf(note) })),
  );
  return { svg, notes: struck };
}

function openStaves(score: ReadScore, staff: Stave, tab: TabStave, isFirst: boolean): void {
  const { clef, strings, meter } = score;
  const octave = clef.octaveChange < 0 ? '8vb' : clef.octaveChange > 0 ? '8va' : undefined;
  staff.addClef(clefName(clef), 'default', octave);
  if (isFirst) staff.addTimeSignature(`${meter.beats}/${meter.unit}`);
  const sign = new Clef('tab');
  sign.setText(strings >= 6 ? TAB_SIGNS.six : TAB_SIGNS.four);
  sign.line = (strings - 1) / 2;
  if (strings < 4) sign.setFontSize(22);
  tab.addModifier(sign);
}

function setBar(context: SVGContext, notes: BarNotes, staff: Stave, tab: TabStave): void {
  staff.setContext(context).drawWithStyle();
  tab.setContext(context).drawWithStyle();
  const [upper, lower] = notes.voices;
  if (!upper || !lower) return;
  for (const note of notes.staff) note.setStave(staff);
  for (const note of notes.tab) note.setStave(tab);
  const formatter = new Formatter();
  formatter.joinVoices([upper]).joinVoices([lower]);
  formatter.format([upper, lower], staff.getNoteEndX() - staff.getNoteStartX() - 12);
  for (const [at, note] of notes.tab.entries()) {
    const over = notes.staff[at];
    if (note instanceof CentredTabNote && over) note.centreUnder(middleOf(over));
  }
  upper.setStave(staff).draw(context, staff);
  lower.setStave(tab).draw(context, tab);
  for (const beam of notes.beams) beam.setContext(context).drawWithStyle();
  for (const bracket of notes.brackets) bracket.setContext(context).drawWithStyle();
}

/** How many lines above and below the staff its notes reach. */
function reachOf(set: readonly BarNotes[]): { readonly above: number; readonly below: number } {
  const lines = set.flatMap(({ staff }) =>
    staff.flatMap((note) => (note.isRest() ? [] : note.getKeyProps())),
  );
  const heights = lines.map(({ line }) => line);
  // A stem is three and a half lines long, and turns towards the middle.
  return {
    above: Math.max(0, ...heights.map((line) => line - 4.5)),
    below: Math.max(0, ...heights.map((line) => 0.5 - line)),
  };
}

function isStruck(sign: ScoreSign | undefined): boolean {
  return sign?.pitch !== undefined && !sign.isTiedBack;
}
