import type { CutPlan, UsedStock } from "./types.ts";

/** Pieces of stock that are cut in the same way, at least one. */
export type AlikeStock = readonly [UsedStock, ...UsedStock[]];

/**
 * The used stock of a plan, pieces with the same cuts and the same parts together, in order. Which copy
 * or which layer of a block a piece becomes does not matter to whoever cuts it.
 */
export function groupAlike(plan: CutPlan): AlikeStock[] {
  const groups = new Map<string, AlikeStock>();
  for (const used of plan.used) {
    const places = used.places.map(({ part, at, size, layer: [, of], twin }) => [
      part,
      at,
      size,
      of,
      twin,
    ]);
    const key = JSON.stringify({ size: used.size, cuts: used.cuts, places });
    const group = groups.get(key);
    groups.set(key, group === undefined ? [used] : [...group, used]);
  }
  return [...groups.values()];
}
