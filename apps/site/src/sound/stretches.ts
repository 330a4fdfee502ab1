/**
 * Stretches: the runs of ticks that are played one after another, each at one tempo. A play-along begins with
 * its count-in, goes on from wherever it was begun, and then goes round; a ladder raises the tempo every few
 * rounds.
 */

/** A tempo that climbs: by so much, up to so much, after every so many rounds. */
export interface Ladder {
  readonly stepBpm: number;
  readonly topBpm: number;
  readonly everyRounds: number;
}

/** What goes round, and how. */
export interface Course {
  /** The ticks that are gone through again and again. */
  readonly fromTicks: number;
  readonly toTicks: number;
  readonly countInTicks: number;
  readonly tempoBpm: number;
  readonly ladder?: Ladder;
  readonly goesRound: boolean;
}

/** A run of ticks at one tempo. */
export interface Stretch {
  readonly fromTicks: number;
  readonly toTicks: number;
  readonly tempoBpm: number;
  /** How many rounds came before. */
  readonly round: number;
}

/** The tempo of a round, counted from 0. */
export function tempoOfRound({ tempoBpm, ladder }: Course, round: number): number {
  if (!ladder) return tempoBpm;
  const climbed = tempoBpm + ladder.stepBpm * Math.floor(round / ladder.everyRounds);
  return Math.max(tempoBpm, Math.min(ladder.topBpm, climbed));
}

/** The stretches of a course begun at a tick, without end where it goes round. */
export function* stretchesFrom(
  course: Course,
  startTicks: number,
  { withCountIn, firstRound = 0 }: { readonly withCountIn: boolean; readonly firstRound?: number },
): Generator<Stretch, void> {
  const { fromTicks, toTicks, countInTicks, goesRound } = course;
  const begin = startTicks >= fromTicks && startTicks < toTicks ? startTicks : fromTicks;
  const stretch = (from: number, to: number, round: number): Stretch => ({
    fromTicks: from,
    toTicks: to,
    tempoBpm: tempoOfRound(course, round),
    round,
  });
  if (withCountIn && countInTicks > 0) yield stretch(0, countInTicks, firstRound);
  yield stretch(begin, toTicks, firstRound);
  for (let round = firstRound + 1; goesRound; round += 1) yield stretch(fromTicks, toTicks, round);
}

/** How long a stretch lasts, in seconds. */
export function secondsOf(stretch: Stretch, ticksPerBeat: number): number {
  return secondsInto(stretch, stretch.toTicks, ticksPerBeat);
}

/** From the beginning of a stretch to a tick, in seconds. */
export function secondsInto({ fromTicks, tempoBpm }: Stretch, ticks: number, ticksPerBeat: number): number {
  return ((ticks - fromTicks) * 60) / (tempoBpm * ticksPerBeat);
}
