import type { Count } from "../plane/types.ts";

/** A size of stock that can be bought. */
export interface SoldSize {
  readonly cost: number;
  readonly content: number;
}

/** Counts tried before the plain rate is taken. @source our choice */
const mostTried: Count = 50_000;

/**
 * The least that whole pieces of stock cost whose content, melted together, makes up what is needed,
 * and which are no fewer than `fewest`. No plan that buys can cost less.
 *
 * @source Martello and Toth 1990, "Knapsack Problems", ch. 3 (minimisation form of the unbounded knapsack)
 */
export function coverCost(sizes: readonly SoldSize[], needed: number, fewest: Count): number {
  const least = 1e-9 * Math.max(1, needed);
  if (sizes.length === 0 || (needed <= least && fewest <= 0)) return 0;
  const cheapest = sizes.toSorted((a, b) => a.cost / a.content - b.cost / b.content);
  const rate = cheapest[0]!.cost / cheapest[0]!.content;
  let best = Infinity;
  let tried = 0;
  const search = (at: Count, room: number, missing: Count, spent: number): void => {
    tried += 1;
    if (tried > mostTried || spent + Math.max(0, room) * rate >= best) return;
    const { cost, content } = cheapest[at]!;
    const enough = Math.max(0, missing, Math.ceil((room - least) / content));
    if (at === cheapest.length - 1 || enough === 0) {
      best = Math.min(best, spent + enough * cost);
      return;
    }
    for (let n = enough; n >= 0; n--) {
      search(at + 1, room - n * content, missing - n, spent + n * cost);
    }
  };
  search(0, needed, fewest, 0);
  return tried > mostTried ? needed * rate : best;
}
