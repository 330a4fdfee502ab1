/**
 * Slips of typing: letters left out, put in, changed, or put in each other's place.
 */

/**
 * The fewest slips between two words, where two neighbouring letters that changed places are one slip
 * (optimal string alignment).
 * @returns `most + 1` where there are more than `most`
 * @example slipsBetween('dorain', 'dorian', 2)  // 1
 * @example slipsBetween('lydian', 'locrian', 2) // 3
 */
export function slipsBetween(typed: string, meant: string, most: number): number {
  if (Math.abs(typed.length - meant.length) > most) return most + 1;
  return Math.min(lastRow(typed, meant).at(-1) ?? most + 1, most + 1);
}

/**
 * The fewest slips between a word and any beginning of another: what somebody has typed so far.
 * @returns `most + 1` where there are more than `most`
 * @example slipsToBeginning('phrig', 'phrygian', 1) // 1
 */
export function slipsToBeginning(typed: string, meant: string, most: number): number {
  return Math.min(...lastRow(typed, meant.slice(0, typed.length + most)), most + 1);
}

/** The slips between a word and every beginning of another, the empty one first. */
function lastRow(typed: string, meant: string): readonly number[] {
  let twoBefore: readonly number[] = [];
  let before: readonly number[] = Array.from({ length: meant.length + 1 }, (_, at) => at);
  for (let i = 1; i <= typed.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= meant.length; j += 1) {
      const isSame = typed[i - 1] === meant[j - 1];
      const isSwapped = i > 1 && j > 1 && typed[i - 1] === meant[j - 2] && typed[i - 2] === meant[j - 1];
      row.push(
        Math.min(
          (before[j] ?? 0) + 1,
          (row[j - 1] ?? 0) + 1,
          (before[j - 1] ?? 0) + (isSame ? 0 : 1),
          isSwapped ? (twoBefore[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    twoBefore = before;
    before = row;
  }
  return before;
}
