/**
 * Remembering: what a function gave for the questions that were asked last, a bounded number of them.
 */

/**
 * A function that works out each answer once for as long as it is among the last that were asked for.
 * @param most how many answers are remembered
 * @param keyOf what tells one question from another
 */
export function remember<Question, Answer>(
  most: number,
  keyOf: (question: Question) => string,
  work: (question: Question) => Answer,
): (question: Question) => Answer {
  const known = new Map<string, Answer>();
  return (question) => {
    const key = keyOf(question);
    const before = known.get(key);
    if (before !== undefined) {
      known.delete(key);
      known.set(key, before);
      return before;
    }
    const answer = work(question);
    known.set(key, answer);
    if (known.size > most) known.delete(known.keys().next().value as string);
    return answer;
  };
}
