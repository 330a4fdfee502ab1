/**
 * Playing: a fingering or a round becomes a piece.
 */
import type { FingeredNote, Fingering } from '../fingering/fingering.ts';
import type { Scale } from '../mode/spelling.ts';
import { fail, type Result, succeed } from '../problem.ts';
import type { Round } from '../round/round.ts';
import { ticksOf } from './note-value.ts';
import { type PatternLine, patternLine } from './pattern.ts';
import type { Click, Piece, PlayedNote, Section } from './piece.ts';
import { checkPlayOptions, type PlayOptions, type PlayPlan } from './play-options.ts';
import type { Timing } from './timing.ts';

/** Says what a section is called. */
export type NameScale = (scale: Scale) => string;

/** The most that a piece may hold: far more than a practice session. */
export const MOST_NOTES = 5000;
export const MOST_BARS = 2000;

/** A mode that is to be played. */
interface Part {
  readonly modeIndex: number;
  readonly scale: Scale;
  readonly fingering: Fingering;
}

/**
 * The modes of a round one after another, those that cannot be played left out.
 * @param nameScale what to call a section; its root and systematic name where absent: `A Dorian #4`
 */
export function playRound(
  round: Round,
  options: PlayOptions = {},
  nameScale: NameScale = systematicName,
): Result<Piece> {
  const parts = round.modes.flatMap(({ scale, fingering }, modeIndex) =>
    fingering ? [{ modeIndex, scale, fingering }] : [],
  );
  if (parts.length === 0) {
    return fail('round', round.root.name, {
      kind: 'playable-round',
      reason: round.reason ?? { kind: 'no-shared-area' },
    });
  }
  return playParts(parts, options, nameScale);
}

/** One fingering. */
export function playFingering(
  scale: Scale,
  fingering: Fingering,
  options: PlayOptions = {},
  nameScale: NameScale = systematicName,
): Result<Piece> {
  return playParts([{ modeIndex: 0, scale, fingering }], options, nameScale);
}

function systematicName({ root, mode }: Scale): string {
  return `${root.name} ${mode.systematicName}`;
}

/** A part with its pattern, and where it will lie. */
interface Layout extends Part {
  readonly line: PatternLine;
  /** How many notes it takes to play it once, and how often it is. */
  readonly passNotes: number;
  readonly passes: number;
  readonly lengthTicks: number;
}

function playParts(parts: readonly Part[], options: PlayOptions, nameScale: NameScale): Result<Piece> {
  if (parts.some(({ fingering }) => fingering.notes.length === 0)) {
    return fail('fingering', 'no notes', { kind: 'notes' });
  }
  const checked = checkPlayOptions(options);
  if (!checked.ok) return checked;
  const plan = checked.value;
  const { pattern, noteValue, timing, countInBars } = plan;
  const layouts = parts.map((part, at) => layOut(part, plan, at === parts.length - 1));
  const tooLong = refuseLength(layouts, plan);
  if (tooLong) return tooLong;
  const countInTicks = countInBars * timing.ticksPerBar;
  const sections: Section[] = [];
  const notes: PlayedNote[] = [];
  let startTicks = countInTicks;
  for (const layout of layouts) {
    const { modeIndex, scale, lengthTicks } = layout;
    const endTicks = startTicks + lengthTicks;
    sections.push({ modeIndex, name: nameScale(scale), scale, startTicks, endTicks });
    addNotes(notes, layout, plan, startTicks);
    startTicks = endTicks;
  }
  return succeed({
    timing,
    pattern,
    noteValue,
    countIn: clicks(timing, countInBars),
    countInTicks,
    sections,
    notes,
    vampDegrees: plan.vampDegrees,
    totalTicks: startTicks,
  });
}

function layOut(part: Part, plan: PlayPlan, isLast: boolean): Layout {
  const { pattern, seed, noteValue, timing, bars, repeats, restBeats } = plan;
  const line = patternLine(
    pattern,
    part.fingering.notes.map(({ degree }) => degree),
    seed,
  );
  const noteTicks = ticksOf(noteValue);
  const rest = isLast ? 0 : restBeats * timing.ticksPerBeat;
  if (bars !== undefined) {
    const passNotes = Math.ceil((bars * timing.ticksPerBar) / noteTicks);
    const lengthTicks = inBars(repeats * bars * timing.ticksPerBar + rest, timing);
    return { ...part, line, passNotes, passes: repeats, lengthTicks };
  }
  const passNotes = line.once.length + (repeats - 1) * line.loop.length;
  return { ...part, line, passNotes, passes: 1, lengthTicks: inBars(passNotes * noteTicks + rest, timing) };
}

/** The least whole number of bars that holds so many ticks, in ticks. */
function inBars(ticks: number, { ticksPerBar }: Timing): number {
  return Math.ceil(ticks / ticksPerBar) * ticksPerBar;
}

function refuseLength(
  layouts: readonly Layout[],
  { timing, noteValue, bars, repeats }: PlayPlan,
): Result<never> | undefined {
  let notes = 0;
  let ticks = 0;
  for (const { passNotes, passes, lengthTicks } of layouts) {
    notes += passNotes * passes;
    ticks += lengthTicks;
  }
  const barCount = ticks / timing.ticksPerBar;
  if (notes <= MOST_NOTES && barCount <= MOST_BARS) return undefined;
  const expected = {
    kind: 'piece-length',
    mostNotes: MOST_NOTES,
    mostBars: MOST_BARS,
    notes,
    bars: barCount,
  } as const;
  if (bars !== undefined && bars >= repeats) return fail('bars', String(bars), expected);
  return repeats > 1 ? fail('repeats', String(repeats), expected) : fail('value', noteValue, expected);
}

function addNotes(
  notes: PlayedNote[],
  { modeIndex, fingering, line, passNotes, passes }: Layout,
  { noteValue, timing, bars }: PlayPlan,
  sectionTicks: number,
): void {
  const noteTicks = ticksOf(noteValue);
  const passTicks = bars === undefined ? passNotes * noteTicks : bars * timing.ticksPerBar;
  for (let pass = 0; pass < passes; pass += 1) {
    const passStart = sectionTicks + pass * passTicks;
    for (let at = 0; at < passNotes; at += 1) {
      const noteIndex = line.loop[at % line.loop.length] as number;
      const fingered = fingering.notes[noteIndex] as FingeredNote;
      const startTicks = passStart + at * noteTicks;
      const durationTicks = Math.min(noteTicks, passStart + passTicks - startTicks);
      notes.push({ ...fingered, startTicks, durationTicks, modeIndex, noteIndex });
    }
  }
}

function clicks({ ticksPerBeat, meter }: Timing, bars: number): readonly Click[] {
  return Array.from({ length: bars * meter.beats }, (_, at) => ({
    startTicks: at * ticksPerBeat,
    durationTicks: ticksPerBeat,
    isAccent: at % meter.beats === 0,
  }));
}
