/**
 * Frets and lengths as they are written, whatever the language: only the decimal sign differs.
 */

/** How a language writes lengths. */
export interface Measures {
  /** A number to a tenth: `863.6`; with `isFixed` also where it is whole: `648.0`. */
  readonly tenths: (value: number, isFixed?: boolean) => string;
  /** A length to a tenth of a millimetre: `863.6 mm`. */
  readonly lengthWords: (lengthMm: number, isFixed?: boolean) => string;
}

/**
 * Lengths with the decimal sign of a language.
 * @example measuresWith(',').lengthWords(863.6) // '863,6 mm'
 */
export function measuresWith(decimalSign: '.' | ','): Measures {
  const tenths: Measures['tenths'] = (value, isFixed = false) => {
    const rounded = Math.round(value * 10) / 10;
    return (isFixed ? rounded.toFixed(1) : String(rounded)).replace('.', decimalSign);
  };
  return { tenths, lengthWords: (lengthMm, isFixed) => `${tenths(lengthMm, isFixed)} mm` };
}

/** A fret as it is called: `6½`. */
export function fretWords(fret: number): string {
  return String(fret).replace('.5', '½');
}
