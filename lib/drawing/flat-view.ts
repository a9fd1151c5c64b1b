import type { Point, Ratio } from "../plane/types.ts";
import type { ToPaper } from "./types.ts";

/** Flat work seen from above: y up becomes y down, `origin` lands at `at` on the paper. */
export function flatView(scale: Ratio, at: Point = [0, 0], origin: Point = [0, 0]): ToPaper {
  return ([x, y]) => [at[0] + (x - origin[0]) * scale, at[1] - (y - origin[1]) * scale];
}
