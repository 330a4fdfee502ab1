/**
 * What is wrong in a data file.
 */

/** One mistake: the file, the place inside it, and why it is one. */
export interface FileProblem {
  /** `data/instruments/bass-4.json` */
  readonly file: string;
  /** `tunings[1].courses[2]`; empty for the file as a whole. */
  readonly path: string;
  readonly reason: string;
}

/** A place inside a file, as code would write it. */
export function formatPath(path: readonly PropertyKey[]): string {
  return path
    .map((part, at) => (typeof part === 'number' ? `[${part}]` : `${at === 0 ? '' : '.'}${String(part)}`))
    .join('');
}

/** An error that lists every problem, one a line. */
export function errorOf(problems: readonly FileProblem[]): Error {
  return new Error(
    problems
      .map(({ file, path, reason }) => (path === '' ? `${file}: ${reason}` : `${file}: ${path}: ${reason}`))
      .join('\n'),
  );
}
