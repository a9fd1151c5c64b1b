import type { Count, Mm } from "../plane/types.ts";
import type { NoFit } from "./no-fit.ts";
import { depthWithin } from "./no-fit-depth.ts";
import type { SearchState } from "./search-state.ts";

/**
 * All other items as one item sees them in one form: their no-fit regions where they lie, and how
 * much an overlap counts. Holds as long as the others lie still. One is kept for each form and filled
 * anew for every item, so that the search leaves no litter.
 */
export interface Surroundings {
  form: Count;
  /** Room across and along in which the lowest-left corner of the form may lie. */
  roomX: Mm;
  roomY: Mm;
  height: Mm;
  readonly regions: NoFit[];
  /** For each region: left, right, low and high bound, place x and y, weight. */
  readonly figures: Float64Array;
  count: Count;
  /** A part of the strip looked at closely, and the regions that reach into it. */
  readonly window: { left: Mm; right: Mm; low: Mm; high: Mm };
  readonly near: Int32Array;
  nearCount: Count;
  readonly walls: readonly Mm[];
  wallWeight: number;
}

const perOther = 7;

/** Empty surroundings among `count` items, to be filled. */
export const makeSurroundings = (count: Count, walls: readonly Mm[]): Surroundings => ({
  form: 0,
  roomX: 0,
  roomY: 0,
  height: 0,
  regions: [],
  figures: new Float64Array(perOther * count),
  count: 0,
  window: { left: 0, right: 0, low: 0, high: 0 },
  near: new Int32Array(count),
  nearCount: 0,
  walls,
  wallWeight: 1,
});

/** Look round from one item in one form. Overlaps of large items count more. */
export function lookRound(
  state: SearchState,
  item: Count,
  form: Count,
  around: Surroundings,
): Surroundings {
  const { count, x, y, form: forms, weight, bulk } = state;
  const { figures, regions } = around;
  const row = item * count;
  let n = 0;
  for (let other = 0, k = 0; other < count; other++) {
    if (other === item) continue;
    const shape = state.region(forms[other]!, form);
    const atX = x[other]!;
    const atY = y[other]!;
    regions[n++] = shape;
    figures[k] = shape.minX + atX;
    figures[k + 1] = shape.maxX + atX;
    figures[k + 2] = shape.minY + atY;
    figures[k + 3] = shape.maxY + atY;
    figures[k + 4] = atX;
    figures[k + 5] = atY;
    figures[k + 6] = weight[row + other]! * bulk[item]! * bulk[other]!;
    k += perOther;
  }
  state.work += state.lookWork;
  around.form = form;
  around.height = state.formHeight[form]!;
  around.roomX = Math.max(0, state.job.width - state.formWidth[form]!);
  around.roomY = Math.max(0, state.length - around.height);
  around.count = n;
  around.wallWeight = state.wallWeight[item]!;
  return around;
}

/**
 * Weighted depth of all overlaps at a place. Stops early, with some larger figure, as soon as the
 * sum passes `limit`.
 *
 * @source Umetani et al. 2009, "Solving the irregular strip packing problem via guided local search
 * for overlap minimization", ITOR 16 (penetration depth times weights)
 */
export function overlapCost(around: Surroundings, x: Mm, y: Mm, limit: number): number {
  const { figures, regions, count } = around;
  let cost = wallCost(around, y);
  for (let other = 0, k = 0; other < count; other++, k += perOther) {
    if (x <= figures[k]! || x >= figures[k + 1]!) continue;
    if (y <= figures[k + 2]! || y >= figures[k + 3]!) continue;
    const depth = depthWithin(regions[other]!, x - figures[k + 4]!, y - figures[k + 5]!);
    cost += figures[k + 6]! * depth;
    if (cost >= limit) return cost;
  }
  return cost;
}

/** Note which regions reach into a window of the strip, so that `nearCost` is quick within it. */
export function narrowTo(around: Surroundings, x: Mm, y: Mm, reach: Mm): void {
  const { figures, near, count, window } = around;
  const [left, right, low, high] = [x - reach, x + reach, y - reach, y + reach];
  Object.assign(window, { left, right, low, high });
  let n = 0;
  for (let other = 0, k = 0; other < count; other++, k += perOther) {
    if (right <= figures[k]! || left >= figures[k + 1]!) continue;
    if (high <= figures[k + 2]! || low >= figures[k + 3]!) continue;
    near[n++] = other;
  }
  around.nearCount = n;
}

/** As `overlapCost`, and quicker in the window that was narrowed to. */
export function nearCost(around: Surroundings, x: Mm, y: Mm, limit: number): number {
  const { figures, regions, near, nearCount, window } = around;
  if (x < window.left || x > window.right || y < window.low || y > window.high) {
    return overlapCost(around, x, y, limit);
  }
  let cost = wallCost(around, y);
  for (let n = 0; n < nearCount; n++) {
    const other = near[n]!;
    const k = other * perOther;
    if (x <= figures[k]! || x >= figures[k + 1]!) continue;
    if (y <= figures[k + 2]! || y >= figures[k + 3]!) continue;
    const depth = depthWithin(regions[other]!, x - figures[k + 4]!, y - figures[k + 5]!);
    cost += figures[k + 6]! * depth;
    if (cost >= limit) return cost;
  }
  return cost;
}

/** Calls back for each overlap at a place with its depth and weight; `wayOut` holds the way. */
export function forEachOverlap(
  around: Surroundings,
  x: Mm,
  y: Mm,
  use: (depth: Mm, weight: number) => void,
): void {
  const { figures, regions, count } = around;
  for (let other = 0, k = 0; other < count; other++, k += perOther) {
    if (x <= figures[k]! || x >= figures[k + 1]!) continue;
    if (y <= figures[k + 2]! || y >= figures[k + 3]!) continue;
    const depth = depthWithin(regions[other]!, x - figures[k + 4]!, y - figures[k + 5]!);
    if (depth > 0) use(depth, figures[k + 6]!);
  }
}

/** Weighted depth to which the item lies across walls. */
function wallCost({ walls, wallWeight, height }: Surroundings, y: Mm): number {
  let cost = 0;
  for (const wall of walls) {
    const depth = Math.min(wall - y, y + height - wall);
    if (depth > 0) cost += depth * wallWeight;
  }
  return cost;
}
