import type { Count } from "../plane/types.ts";

/**
 * Whole numbers that follow words of a command: `--runs 300 --seed 7`.
 *
 * @param otherwise the words known, without their dashes, with what each is where it is not given
 * @throws on a word that is not known, or without a whole number after it
 */
export function readCounts<Name extends string>(
  words: readonly string[],
  otherwise: Readonly<Record<Name, Count>>,
): Readonly<Record<Name, Count>> {
  const counts: Record<Name, Count> = { ...otherwise };
  for (let i = 0; i < words.length; i += 2) {
    const name = words[i]!.replace(/^--/, "");
    if (!words[i]!.startsWith("--") || !Object.hasOwn(otherwise, name)) {
      const known = Object.keys(otherwise).map((one) => `--${one}`);
      throw new Error(`bench does not know ${words[i]}; it takes ${known.join(" and ")}`);
    }
    const count = Number(words[i + 1]);
    if (!Number.isInteger(count) || count < 1) throw new Error(`${words[i]} needs a whole number`);
    counts[name as Name] = count;
  }
  return counts;
}
