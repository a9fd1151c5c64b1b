import type { Count } from "../plane/types.ts";
import type { Banks } from "./cloth-banks.ts";
import type { Unordered } from "./list-stretches.ts";

/**
 * Seams that one zip or tape runs along, though it turns corners: closing seams that follow one another
 * on some panel. For each seam by number the seams of its chain; none for other seams.
 */
export function closingChains(seams: readonly Unordered[], banks: Banks): readonly Count[][] {
  const isClosing = (seam: Count) => seams[seam]!.state === "closing";
  const chains = seams.map((_, i) => (isClosing(i) ? [i] : []));
  banks.after.forEach((next, bank) => {
    const [a, b] = [bank >> 1, next >> 1];
    if (next < 0 || !isClosing(a) || !isClosing(b) || chains[a] === chains[b]) return;
    const joined = [...chains[a]!, ...chains[b]!];
    joined.forEach((seam) => (chains[seam] = joined));
  });
  return chains;
}
