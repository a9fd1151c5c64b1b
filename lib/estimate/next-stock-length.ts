import type { Mm } from "../plane/types.ts";

/** The shortest length sold that is long enough, or null when none is. Order does not matter. */
export function nextStockLength(needed: Mm, lengths: readonly Mm[]): Mm | null {
  const enough = lengths.filter((length) => length >= needed - 1e-6);
  return enough.length === 0 ? null : Math.min(...enough);
}
