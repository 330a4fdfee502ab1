/**
 * Accidentals. An alteration is a whole number of semitones: −2 double flat, −1 flat, 0 none, 1 sharp,
 * 2 double sharp. Data use ASCII (`bb`, `b`, `#`, `##`); screens use the signs of Unicode's Musical
 * Symbols (U+266D to U+266F, U+1D12A, U+1D12B).
 */

const SIGNS_BY_ASCII: ReadonlyMap<string, string> = new Map([
  ['', ''],
  ['b', '♭'],
  ['#', '♯'],
  ['nat', '♮'],
]);

/**
 * The ASCII accidental of an alteration.
 * @example formatAccidental(-2) // 'bb'
 */
export function formatAccidental(alteration: number): string {
  return alteration < 0 ? 'b'.repeat(-alteration) : '#'.repeat(alteration);
}

/**
 * A note, a degree or a name in ASCII with its accidentals turned into proper signs. Runs longer than a
 * triple are split into doubles from the left.
 * @example toSigns('Bbb')            // 'B𝄫'
 * @example toSigns('Locrian b4 bb7') // 'Locrian ♭4 𝄫7'
 * @example toSigns('Locrian nat6')   // 'Locrian ♮6'
 * @example toSigns('F##4')           // 'F𝄪4'
 */
export function toSigns(text: string): string {
  return text
    .replace(/(?<![A-Za-z#])(nat|b+|#+)(?=\d)/g, (_, accidental: string) => signOf(accidental))
    .replace(
      /(?<![A-Za-z])([A-G])(b+|#+)(?![a-z])/g,
      (_, letter: string, accidental: string) => letter + signOf(accidental),
    );
}

/**
 * Text with signs, words or ASCII brought to ASCII: the form in which names are looked up.
 * @example toAscii('Dorian ♯4') // 'Dorian #4'
 */
export function toAscii(text: string): string {
  return text
    .replaceAll('𝄫', 'bb')
    .replaceAll('♭', 'b')
    .replaceAll('𝄪', '##')
    .replaceAll('♯', '#')
    .replaceAll('♮', 'nat');
}

function signOf(accidental: string): string {
  const known = SIGNS_BY_ASCII.get(accidental);
  if (known !== undefined) return known;
  return (accidental.startsWith('b') ? '𝄫' : '𝄪') + signOf(accidental.slice(2));
}
