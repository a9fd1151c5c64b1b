import type { Count, Mm } from "../plane/types.ts";
import type { NoFit } from "./no-fit.ts";
import { noFitDepth } from "./no-fit-depth.ts";
import type { SearchState } from "./search-state.ts";

/**
 * All other items as one item sees them in one form: their no-fit regions where they lie, and how
 * much an overlap counts. Holds as long as the others lie still.
 */
export interface Surroundings {
  readonly form: Count;
  readonly regions: NoFit[];
  /** For each region: left, right, low and high bound, place x and y, weight. */
  readonly figures: Float64Array;
  count: Count;
  readonly walls: readonly Mm[];
  readonly wallWeight: number;
  readonly height: Mm;
}

const perOther = 7;

/** Look round from one item in one form. Overlaps of large items count more. */
export function lookRound(state: SearchState, item: Count, form: Count): Surroundings {
  const { count, x, y, form: forms, weight, region } = state;
  const regions: NoFit[] = [];
  const figures = new Float64Array(perOther * count);
  const size = state.bulk[item]!;
  let k = 0;
  for (let other = 0; other < count; other++) {
    if (other === item) continue;
    const shape = region(forms[other]!, form);
    const atX = x[other]!;
    const atY = y[other]!;
    regions.push(shape);
    figures[k] = shape.minX + atX;
    figures[k + 1] = shape.maxX + atX;
    figures[k + 2] = shape.minY + atY;
    figures[k + 3] = shape.maxY + atY;
    figures[k + 4] = atX;
    figures[k + 5] = atY;
    figures[k + 6] = weight[item * count + other]! * size * state.bulk[other]!;
    k += perOther;
  }
  state.work += 4 * count;
  return {
    form,
    regions,
    figures,
    count: regions.length,
    walls: state.job.walls,
    wallWeight: state.wallWeight[item]!,
    height: state.formHeight[form]!,
  };
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
  let cost = around.walls.length === 0 ? 0 : wallCost(around, y);
  for (let other = 0, k = 0; other < count; other++, k += perOther) {
    if (x <= figures[k]! || x >= figures[k + 1]!) continue;
    if (y <= figures[k + 2]! || y >= figures[k + 3]!) continue;
    const depth = noFitDepth(regions[other]!, x - figures[k + 4]!, y - figures[k + 5]!);
    if (depth === 0) continue;
    cost += figures[k + 6]! * depth;
    if (cost >= limit) return cost;
  }
  return cost;
}

/** Calls back for each overlap at a place: the region, and the place seen from its fixed item. */
export function forEachOverlap(
  around: Surroundings,
  x: Mm,
  y: Mm,
  use: (region: NoFit, dx: Mm, dy: Mm) => void,
): void {
  for (let other = 0; other < around.count; other++) {
    const dx = x - around.figures[other * perOther + 4]!;
    const dy = y - around.figures[other * perOther + 5]!;
    const region = around.regions[other]!;
    if (noFitDepth(region, dx, dy) > 0) use(region, dx, dy);
  }
}

/** Weighted depth to which the item lies across walls. */
const wallCost = ({ walls, wallWeight, height }: Surroundings, y: Mm): number =>
  walls.reduce((sum, wall) => {
    const depth = Math.min(wall - y, y + height - wall);
    return depth > 0 ? sum + depth * wallWeight : sum;
  }, 0);
