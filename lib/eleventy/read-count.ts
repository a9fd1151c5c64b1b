import type { Count } from "../plane/types.ts";

/** The whole number after a word of a command, or another where the word is not there. */
export function readCount(words: readonly string[], name: string, otherwise: Count): Count {
  const at = words.indexOf(name);
  if (at < 0) return otherwise;
  const count = Number(words[at + 1]);
  if (!Number.isInteger(count) || count < 1) throw new Error(`${name} needs a whole number`);
  return count;
}
