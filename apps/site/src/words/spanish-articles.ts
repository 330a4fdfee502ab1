/**
 * The articles that names of modes and scales take in Spanish.
 */

/**
 * A displayed name with its article: `el dórico`, `la menor armónica`; in Spanish a mode is masculine, a scale
 * feminine.
 */
export function withArticle(name: string): string {
  if (/^tonos /.test(name)) return `la de ${name}`;
  return `${/^\p{L}*(?:jónico|dórico|frigio|lidio|eólico|locrio)(?!\p{L})/u.test(name) ? 'el' : 'la'} ${name}`;
}

/** Where something begins and where it goes: `del lidio a la menor armónica`. */
export function fromTo(from: string, to: string): string {
  return `de ${withArticle(from)} a ${withArticle(to)}`.replaceAll(
    /\b(de|a) el (?=\p{L})/gu,
    (_, word: string) => (word === 'de' ? 'del ' : 'al '),
  );
}
