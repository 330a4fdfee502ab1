/**
 * Remembering: what a function gave for the questions that were asked again of late, a bounded number of
 * them. Most questions are asked once; their answers would only be carried about by the garbage collector.
 */
import { AskedBefore } from './asked-before.ts';

/** For each answer that is remembered, of about how many questions it is known that they were asked. */
const ASKED_PER_KNOWN = 20;

/**
 * A function that remembers an answer from the second time it is asked for, for as long as it is among the
 * last that were.
 * @param most how many answers are remembered
 * @param keyOf what tells one question from another
 */
export function remember<Question, Answer>(
  most: number,
  keyOf: (question: Question) => string,
  work: (question: Question) => Answer,
): (question: Question) => Answer {
  const known = new Map<string, Answer>();
  const asked = new AskedBefore(most * ASKED_PER_KNOWN);
  return (question) => {
    const key = keyOf(question);
    const before = known.get(key);
    if (before !== undefined) {
      known.delete(key);
      known.set(key, before);
      return before;
    }
    const answer = work(question);
    if (asked.ask(key)) {
      known.set(key, answer);
      if (known.size > most) known.delete(known.keys().next().value as string);
    }
    return answer;
  };
}
