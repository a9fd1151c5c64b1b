import type { Loop, Mm2 } from "./types.ts";
import { regionArea, unite } from "./clip-polygons.ts";
import { flattenLoop } from "./flatten-loop.ts";
import { polygonArea } from "./polygon-area.ts";

/** Overlap smaller than this comes of rounding. */
const touching: Mm2 = 1;

/** Whether a loop winds over part of its area twice, or crosses itself. */
export function crossesItself(loop: Loop): boolean {
  const flat = flattenLoop(loop);
  return Math.abs(Math.abs(polygonArea(flat)) - Math.abs(regionArea(unite([flat])))) > touching;
}
