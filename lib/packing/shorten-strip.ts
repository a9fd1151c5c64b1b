import type { Mm } from "../plane/types.ts";
import type { SampleCounts } from "./find-place.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import { randomBelow } from "../plane/random.ts";
import { type SearchState, readStrip, restore, startSearch } from "./search-state.ts";
import { separateStrip } from "./separate-strip.ts";
import { settleStrip } from "./settle-strip.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** How hard to search: overlap tests allowed in all, and how each move samples. */
export interface SearchPlan {
  readonly budget: number;
  readonly samples: SampleCounts;
  /** Rounds without gain before a length is given up. */
  readonly patience: number;
  /** How often a length is tried before it is given up. */
  readonly tries: number;
  readonly seed: number;
}

/** Share of the budget spent on finding a good arrangement; the rest presses it together. */
const exploring = 0.8;
/** First shortening while exploring, and the smallest while pressing, as shares of the length. */
const steps = { explore: 0.02, press: 0.003, least: 0.0001 } as const;

/**
 * Shorten a strip by parting its items on ever shorter lengths. While exploring, a length that
 * fails is tried again from the best arrangement with two large items changed over. Then the best
 * is pressed together by small steps. Bounded by work, never by the clock; never longer than before.
 *
 * @source Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329 (exploration and compression)
 */
export function shortenStrip(
  job: StripJob,
  table: NoFitTable,
  start: Strip,
  least: Mm,
  plan: SearchPlan,
): Strip {
  const state = startSearch(job, table, start, plan.seed);
  let best = start;
  let step: number = steps.explore;
  while (state.work < exploring * plan.budget && best.length > least * (1 + 1e-9)) {
    const shorter = tryLength(state, best, Math.max(least, best.length * (1 - step)), plan);
    step = shorter === null ? Math.max(steps.press, step * 0.5) : Math.min(0.04, step * 1.25);
    best = shorter ?? best;
    restore(state, best);
  }
  step = steps.press;
  while (state.work < plan.budget && step > steps.least && best.length > least * (1 + 1e-9)) {
    const target = Math.max(least, best.length * (1 - step));
    const shorter = tryLength(state, best, target, { ...plan, tries: 1 });
    if (shorter === null) step *= 0.6;
    best = shorter ?? best;
    restore(state, best);
  }
  return settleStrip(job, table, best);
}

/**
 * Part the items on a shorter length. A near miss is tried again on a little more length; after any
 * other failure two large items are changed over.
 */
function tryLength(state: SearchState, best: Strip, length: Mm, plan: SearchPlan): Strip | null {
  for (let attempt = 0; attempt < plan.tries && state.work < plan.budget; attempt++) {
    state.length = length;
    if (attempt > 0) disturb(state);
    let left = separateAnew(state, plan, plan.patience);
    for (let give = 0; left > 0 && give < mostGiving; give++) {
      state.length += 2 * left;
      if (state.length >= best.length * (1 - 1e-6)) break;
      left = separateAnew(state, plan, plan.patience / 4);
    }
    if (left > 0) continue;
    const found = readStrip(state);
    if (found.length < best.length) return found;
  }
  return null;
}

/** Times a near miss is given more length. */
const mostGiving = 3;

function separateAnew(state: SearchState, plan: SearchPlan, patience: number): Mm {
  holdInside(state);
  state.weight.fill(1);
  state.wallWeight.fill(1);
  return separateStrip(state, plan.samples, patience, plan.budget);
}

/** Push items that stick out at the end of the strip back onto it. */
function holdInside(state: SearchState): void {
  for (let i = 0; i < state.count; i++) {
    const room = Math.max(0, state.length - state.formHeight[state.form[i]!]!);
    const { stepY, startY = 0 } = state.job.items[i]!;
    const highest =
      stepY > 0 ? startY + Math.max(0, Math.floor((room - startY) / stepY + 1e-9)) * stepY : room;
    state.y[i] = Math.min(state.y[i]!, highest);
  }
}

/** Let two of the larger items change places. */
function disturb(state: SearchState): void {
  const large = state.job.items
    .map((item, index) => ({ index, area: item.area }))
    .sort((a, b) => b.area - a.area)
    .slice(0, Math.max(2, Math.ceil(state.count / 2)));
  const one = large[randomBelow(state.random, large.length)]!.index;
  const two = large[randomBelow(state.random, large.length)]!.index;
  const [x, y] = [state.x[one]!, state.y[one]!];
  putNear(state, one, state.x[two]!, state.y[two]!);
  putNear(state, two, x, y);
}

function putNear(state: SearchState, item: number, x: Mm, y: Mm): void {
  const form = state.form[item]!;
  state.x[item] = Math.min(x, Math.max(0, state.job.width - state.formWidth[form]!));
  state.y[item] = Math.min(y, Math.max(0, state.length - state.formHeight[form]!));
}
