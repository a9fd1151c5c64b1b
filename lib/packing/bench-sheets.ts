import type { Count } from "../plane/types.ts";
import type { SheetSet } from "./bench-types.ts";
import { bestSheetValue } from "./best-sheet-value.ts";

/** One line of the sheet bench. */
export interface SheetBench {
  readonly name: string;
  readonly kinds: Count;
  readonly value: number;
  /** No plan can be worth more. */
  readonly bound: number;
  readonly optimum: number | null;
  /** Value as a share of the known optimum. */
  readonly ofOptimum: number | null;
}

/** Cut one benchmark sheet and measure it. */
export function benchSheetSet(set: SheetSet): SheetBench {
  const { value, bound } = bestSheetValue(set);
  const optimum = set.optimum ?? null;
  return {
    name: set.name,
    kinds: set.items.length,
    value,
    bound,
    optimum,
    ofOptimum: optimum === null ? null : value / optimum,
  };
}
