import type { Count } from "../plane/types.ts";
import type { BoardSet } from "./bench-types.ts";
import { firstFit, packLengths } from "./pack-lengths.ts";

/** One line of the board bench. */
export interface BoardBench {
  readonly name: string;
  readonly pieces: Count;
  readonly boards: Count;
  /** No plan can use fewer, by our own bound. */
  readonly bound: Count;
  /** First-fit decreasing, in the same run. */
  readonly firstFit: Count;
  readonly bestKnown: Count | null;
  /** Whether the best known is proven best, by the file. */
  readonly isProven: boolean;
}

/** Cut one benchmark set of lengths and measure it. */
export function benchBoardSet(set: BoardSet, dives?: Count): BoardBench {
  const { patterns, lowerBound } = packLengths(set.capacity, set.sizes, set.demand, dives);
  return {
    name: set.name,
    pieces: set.demand.reduce((sum, count) => sum + count, 0),
    boards: patterns.length,
    bound: lowerBound,
    firstFit: firstFit(set.capacity, set.sizes, set.demand).length,
    bestKnown: set.bestFound ?? null,
    isProven: set.proven ?? false,
  };
}
