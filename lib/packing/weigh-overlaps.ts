import type { Count, Mm } from "../plane/types.ts";
import { noFitDepth } from "./no-fit-depth.ts";
import type { SearchState } from "./search-state.ts";

/** Weights of overlaps that last grow by these factors, the deepest overlap's by the larger. */
const growth = { least: 1.2, most: 2 } as const;
/** Weights of pairs that are clear fade by this factor, down to 1. */
const fading = 0.95;

/** Depth of all overlaps as the items lie now. */
export function measureAll(state: SearchState): void {
  for (let item = 0; item < state.count; item++) measureItem(state, item);
}

/** Depth of the overlaps of one item with all others, and with walls. */
export function measureItem(state: SearchState, item: Count): void {
  const { count, x, y, form, depth } = state;
  for (let other = 0; other < count; other++) {
    if (other === item) continue;
    const region = state.region(form[other]!, form[item]!);
    const deep = noFitDepth(region, x[item]! - x[other]!, y[item]! - y[other]!);
    depth[item * count + other] = deep;
    depth[other * count + item] = deep;
  }
  depth[item * count + item] = wallDepth(state, item);
  state.work += state.lookWork;
}

function wallDepth(state: SearchState, item: Count): Mm {
  const low = state.y[item]!;
  const top = low + state.formHeight[state.form[item]!]!;
  return state.job.walls.reduce(
    (deepest, wall) => Math.max(deepest, Math.min(wall - low, top - wall)),
    0,
  );
}

/** All depths together, and the deepest. */
export function sumDepths({ count, depth }: SearchState): {
  readonly total: Mm;
  readonly deepest: Mm;
} {
  let total = 0;
  let deepest = 0;
  for (let i = 0; i < count; i++) {
    for (let k = i * count, end = k + i; k <= end; k++) {
      total += depth[k]!;
      if (depth[k]! > deepest) deepest = depth[k]!;
    }
  }
  return { total, deepest };
}

export function isOverlapping({ count, depth }: SearchState, item: Count): boolean {
  for (let k = item * count, end = k + count; k < end; k++) if (depth[k]! > 0) return true;
  return false;
}

/**
 * Let the weights of overlaps grow, the deepest most, and those of clear pairs fade.
 *
 * @source Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329
 */
export function growWeights(state: SearchState, deepest: Mm): void {
  const { count, weight, wallWeight, depth } = state;
  const grown = (old: number, deep: Mm): number =>
    deep > 0
      ? old * (growth.least + (growth.most - growth.least) * (deep / deepest))
      : Math.max(1, old * fading);
  for (let k = 0; k < weight.length; k++) weight[k] = grown(weight[k]!, depth[k]!);
  for (let i = 0; i < count; i++) wallWeight[i] = grown(wallWeight[i]!, depth[i * count + i]!);
}

/** Forget what the weights have learnt. */
export function resetWeights({ weight, wallWeight }: SearchState): void {
  weight.fill(1);
  wallWeight.fill(1);
}
