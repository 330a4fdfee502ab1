/**
 * Tunings by their names, as players write them: `drop-d`, `Drop D`, `open g`.
 */
import { toAscii } from '../pitch/accidental.ts';
import type { Instrument, Tuning } from './instrument.ts';

/** Longer text than this names no tuning. */
const LONGEST = 80;

/**
 * The tuning of an instrument with this id or name. Neither case counts, nor whether words are parted by spaces
 * or hyphens, nor how accidentals are written, and what a name explains in brackets may be left out. An id comes
 * before a name, an earlier tuning before a later one.
 * @example tuningNamed(guitar, 'Drop-D')?.id // 'drop-d'
 * @example tuningNamed(guitar, 'open g')?.id // 'open-g'
 */
export function tuningNamed({ tunings }: Pick<Instrument, 'tunings'>, text: string): Tuning | undefined {
  if (text.length > LONGEST) return undefined;
  const wanted = keyOf(text);
  if (wanted === '' || wanted === '-') return undefined;
  return (
    tunings.find(({ id }) => keyOf(id) === wanted) ??
    tunings.find(({ name }) => keyOf(name) === wanted || keyOf(name.replace(/\(.*/, '')) === wanted)
  );
}

function keyOf(text: string): string {
  return toAscii(text)
    .toLowerCase()
    .replace(/[\s-]sharp\b/g, '#')
    .replace(/[\s-]flat\b/g, 'b')
    .trim()
    .replace(/[\s_-]+/g, '-');
}
