import type { Count } from "../plane/types.ts";

/** How many of each length are cut from one board. */
export type Pattern = readonly Count[];

export interface BestPattern {
  readonly pattern: Pattern;
  readonly value: number;
  /** False when the search was cut short, so that a better pattern may exist. */
  readonly isProven: boolean;
}

/** Nodes looked at before the search is cut short. */
const mostNodes = 300_000;

/**
 * The pattern of most value that fits a capacity, each length used at most `most` times: branch and
 * bound in order of value per length. Lengths and the capacity are whole numbers.
 *
 * @source Martello and Toth 1990, "Knapsack Problems", ch. 3 (bounded knapsack)
 */
export function bestPattern(
  capacity: number,
  sizes: readonly number[],
  values: readonly number[],
  most: readonly Count[],
): BestPattern {
  const order = sizes
    .map((_, i) => i)
    .filter((i) => values[i]! > 1e-12 && most[i]! > 0 && sizes[i]! <= capacity)
    .sort((a, b) => values[b]! / sizes[b]! - values[a]! / sizes[a]! || sizes[b]! - sizes[a]!);
  const size = order.map((i) => sizes[i]!);
  const value = order.map((i) => values[i]!);
  const limit = order.map((i) => most[i]!);
  const smallest = order.map((_, i) => Math.min(...size.slice(i)));
  const counts = order.map(() => 0);
  let bestValue = 0;
  let best = [...counts];
  let nodes = 0;
  const search = (at: number, room: number, gained: number): void => {
    if (gained > bestValue + 1e-12) {
      bestValue = gained;
      best = [...counts];
    }
    for (let i = at; i < order.length; i++) {
      if (smallest[i]! > room || nodes >= mostNodes) return;
      if (gained + room * (value[i]! / size[i]!) <= bestValue + 1e-12) return;
      const fits = Math.min(limit[i]!, Math.floor(room / size[i]!));
      for (let n = fits; n > 0; n--) {
        nodes += 1;
        counts[i] = n;
        search(i + 1, room - n * size[i]!, gained + n * value[i]!);
      }
      counts[i] = 0;
    }
  };
  search(0, capacity, 0);
  const pattern = sizes.map(() => 0);
  order.forEach((original, i) => (pattern[original] = best[i]!));
  return { pattern, value: bestValue, isProven: nodes < mostNodes };
}
