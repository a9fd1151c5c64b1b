import type { Count, Mm } from "../plane/types.ts";
import { type SampleCounts, findPlace } from "./find-place.ts";
import { noFitDepth, touching } from "./no-fit-depth.ts";
import { shuffle } from "../plane/random.ts";
import type { SearchState } from "./search-state.ts";

/** Weights of overlaps that last grow by these factors, the deepest overlap's by the larger. */
const growth = { least: 1.2, most: 2 } as const;
/** Weights of pairs that are clear fade by this factor, down to 1. */
const fading = 0.95;

/** Depth of every overlap, and the sum of all. */
interface Overlaps {
  readonly depth: Float64Array;
  readonly total: number;
  readonly deepest: Mm;
}

/**
 * Part all items on a strip of fixed length: move each overlapping item to the place of least
 * weighted overlap, then let the weights of the overlaps that remain grow, until none is left or
 * `patience` rounds have brought nothing. Gives the overlap that is left, all depths together: 0 when
 * all are clear. Then the items lie where they overlapped least.
 *
 * @source Umetani et al. 2009 (guided local search); growth and fading after Gardeyn et al. 2025
 */
export function separateStrip(
  state: SearchState,
  samples: SampleCounts,
  patience: Count,
  budget: number,
): Mm {
  let overlaps = measureOverlaps(state);
  let least = overlaps.total;
  let kept = keepPlaces(state);
  let waited = 0;
  while (overlaps.deepest > touching * 0.5) {
    if (waited >= patience || state.work >= budget) {
      putBack(state, kept);
      return least;
    }
    for (const item of shuffle(overlapping(state, overlaps), state.random)) {
      const place = findPlace(state, item, samples);
      state.form[item] = place.form;
      state.x[item] = place.x;
      state.y[item] = place.y;
    }
    overlaps = measureOverlaps(state);
    waited = overlaps.total < 0.98 * least ? 0 : waited + 1;
    if (overlaps.total < least) {
      least = overlaps.total;
      kept = keepPlaces(state);
    }
    growWeights(state, overlaps);
  }
  return 0;
}

/** Where all items lie, to come back to. */
interface KeptPlaces {
  readonly form: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

const keepPlaces = ({ form, x, y }: SearchState): KeptPlaces => ({
  form: form.slice(),
  x: x.slice(),
  y: y.slice(),
});

function putBack(state: SearchState, { form, x, y }: KeptPlaces): void {
  state.form.set(form);
  state.x.set(x);
  state.y.set(y);
}

/** Depth of all overlaps as the items lie now. */
export function measureOverlaps(state: SearchState): Overlaps {
  const { count, x, y, form } = state;
  const depth = new Float64Array(count * count);
  let total = 0;
  let deepest = 0;
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      const shape = state.region(form[j]!, form[i]!);
      const deep = noFitDepth(shape, x[i]! - x[j]!, y[i]! - y[j]!);
      if (deep === 0) continue;
      depth[i * count + j] = deep;
      depth[j * count + i] = deep;
      total += deep;
      deepest = Math.max(deepest, deep);
    }
    const across = wallDepth(state, i);
    depth[i * count + i] = across;
    total += across;
    deepest = Math.max(deepest, across);
  }
  state.work += (count * count) / 2;
  return { depth, total, deepest };
}

function wallDepth(state: SearchState, item: Count): Mm {
  const low = state.y[item]!;
  const top = low + state.formHeight[state.form[item]!]!;
  return state.job.walls.reduce(
    (deepest, wall) => Math.max(deepest, Math.min(wall - low, top - wall)),
    0,
  );
}

function overlapping(state: SearchState, { depth }: Overlaps): Count[] {
  const { count } = state;
  const items: Count[] = [];
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      if (depth[i * count + j]! <= 0) continue;
      items.push(i);
      break;
    }
  }
  return items;
}

function growWeights(state: SearchState, { depth, deepest }: Overlaps): void {
  const { count, weight, wallWeight } = state;
  if (deepest === 0) return;
  const grown = (old: number, deep: Mm): number =>
    deep > 0
      ? old * (growth.least + (growth.most - growth.least) * (deep / deepest))
      : Math.max(1, old * fading);
  for (let k = 0; k < weight.length; k++) weight[k] = grown(weight[k]!, depth[k]!);
  for (let i = 0; i < count; i++) {
    wallWeight[i] = grown(wallWeight[i]!, depth[i * count + i]!);
  }
}
