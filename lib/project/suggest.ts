import { nearestWord } from "../units/nearest-word.ts";

/** How to mend a name that is not known: the nearest one, the few there are, or what to do instead. */
export function suggest(name: string, known: readonly string[], otherwise: string): string {
  const nearest = nearestWord(name, known);
  if (nearest !== null) return `Write ${nearest} if that was meant`;
  return known.length > 0 ? `Use ${known.join(" or ")}` : otherwise;
}
