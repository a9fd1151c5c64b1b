/** The most words an action may have: ASD-STE100's limit for a procedural sentence. */
export const mostWords = 20;

/** Words of a sentence; a number, a fraction, a unit and a sign count as one each. */
export function countWords(sentence: string): number {
  return sentence.split(/\s+/).filter((word) => word !== "").length;
}

/** The first of several wordings, longest first, that is short enough; the last if none is. */
export function shortEnough(...wordings: readonly [string, ...string[]]): string {
  return (
    wordings.find((one) => countWords(one) <= mostWords) ?? wordings[wordings.length - 1] ?? ""
  );
}
