/**
 * Remembering: what a function gave for the questions that were asked again of late, a bounded number of
 * them. Most questions are asked once; their answers would only be carried about by the garbage collector.
 */
import { AskedBefore } from './asked-before.ts';

/** For each answer that is remembered, of about how many questions it is known that they were asked. */
const ASKED_PER_KNOWN = 20;

/**
 * A function that remembers an answer from the second time it is asked for, for as long as it is among the
 * last that were: at least half of `most`. What is asked for is moved nowhere, since a map whose entries move
 * is made anew again and again; the older half goes as a whole.
 * @param most how many answers are remembered
 * @param keyOf what tells one question from another
 */
export function remember<Question, Answer>(
  most: number,
  keyOf: (question: Question) => string,
  work: (question: Question) => Answer,
): (question: Question) => Answer {
  let newer = new Map<string, Answer>();
  let older = new Map<string, Answer>();
  const asked = new AskedBefore(most * ASKED_PER_KNOWN);
  const keep = (key: string, answer: Answer): void => {
    newer.set(key, answer);
    if (newer.size < most / 2) return;
    older = newer;
    newer = new Map();
  };
  return (question) => {
    const key = keyOf(question);
    const known = newer.get(key);
    if (known !== undefined) return known;
    const before = older.get(key);
    const answer = before ?? work(question);
    if (before !== undefined || asked.ask(key)) keep(key, answer);
    return answer;
  };
}
