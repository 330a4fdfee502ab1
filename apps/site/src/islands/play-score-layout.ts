/**
 * How the bars of a score are spread over systems.
 */
import type { ScoreBar } from './play-score-read.ts';

/** Bars that stand side by side. */
export interface System {
  readonly bars: readonly ScoreBar[];
  /** Whether it opens the score, and so names the time. */
  readonly isFirst: boolean;
  /** Whether it ends the score. */
  readonly isLast: boolean;
  readonly width: number;
}

/** The clef, and the time signature beside it. */
const CLEF_WIDTH = 42;
const METER_WIDTH = 26;
/** Room before the first line of the staff. */
export const LEFT = 2;

/** Spreads bars over systems no wider than is to be had, where one bar is not wider by itself. */
export function systemsOf(
  bars: readonly ScoreBar[],
  width: number,
  { isOpening, isClosing }: { readonly isOpening: boolean; readonly isClosing: boolean },
): readonly System[] {
  const systems: System[] = [];
  let from = 0;
  while (from < bars.length) {
    const isFirst = isOpening && from === 0;
    const head = headWidth(isFirst);
    let used = head + leastWidth(bars[from] as ScoreBar);
    let to = from + 1;
    for (let next = bars[to]; next && used + leastWidth(next) <= width; next = bars[to]) {
      used += leastWidth(next);
      to += 1;
    }
    const isLast = to >= bars.length;
    // A last line is not drawn out over the whole width.
    const own = isLast ? Math.min(width, used * 1.35) : width;
    systems.push({
      bars: bars.slice(from, to),
      isFirst,
      isLast: isLast && isClosing,
      width: Math.round(Math.max(used, own)),
    });
    from = to;
  }
  return systems;
}

/** The room that a system needs before its first note. */
export function headWidth(isFirst: boolean): number {
  return LEFT + CLEF_WIDTH + (isFirst ? METER_WIDTH : 0);
}

/** The room that a bar needs at least, in pixels. */
export function leastWidth(bar: ScoreBar): number {
  const signs = bar.staff.map(({ type, pitch, hasAccidental }) => {
    const spread = type === 'whole' ? 60 : type === 'half' ? 44 : type === 'quarter' ? 34 : 25;
    return spread + (hasAccidental ? 9 + 6 * Math.max(0, Math.abs(pitch?.alter ?? 0) - 1) : 0);
  });
  return Math.max(
    60,
    signs.reduce((sum, one) => sum + one, 16),
  );
}
