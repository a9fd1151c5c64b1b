import type { Count, Mm } from "../plane/types.ts";
import { shuffle } from "../plane/random.ts";
import { type SampleCounts, findPlace } from "./find-place.ts";
import { touching } from "./no-fit-depth.ts";
import { type Places, type SearchState, keepPlaces, putBack } from "./search-state.ts";
import {
  growWeights,
  isOverlapping,
  measureAll,
  measureItem,
  resetWeights,
  sumDepths,
} from "./weigh-overlaps.ts";

/** A gain in overlap below this share does not count. */
const worthwhile = 0.02;
/** Rounds without gain after which the best arrangement so far is shown to the caller. */
const lull = 5;

export interface SeparationRules {
  readonly samples: SampleCounts;
  /** Rounds without gain before the items are given up. */
  readonly patience: Count;
  readonly budget: number;
  /** Shown the least overlap whenever the search lulls; true ends the search. */
  readonly isEnough: (left: Mm, places: Places) => boolean;
}

/**
 * Part all items on a strip of fixed length: move each overlapping item to the place of least
 * weighted overlap, then let the weights of the overlaps that remain grow, until none is left or
 * `patience` rounds have brought nothing. Gives the overlap that is left, all depths together: 0 when
 * all are clear. Then the items lie where they overlapped least.
 *
 * @source Umetani et al. 2009, "Solving the irregular strip packing problem via guided local search
 * for overlap minimization", ITOR 16
 */
export function separateStrip(state: SearchState, rules: SeparationRules): Mm {
  resetWeights(state);
  measureAll(state);
  let now = sumDepths(state);
  let least = now.total;
  let kept = keepPlaces(state);
  let shown = Infinity;
  let waited = 0;
  while (now.deepest > touching * 0.5) {
    if (waited >= rules.patience || state.work >= rules.budget) break;
    moveOverlapping(state, rules.samples);
    now = sumDepths(state);
    waited = now.total < (1 - worthwhile) * least ? 0 : waited + 1;
    if (now.total < least) {
      least = now.total;
      kept = keepPlaces(state);
    }
    if (waited % lull === lull - 1 && least < shown) {
      shown = least;
      if (rules.isEnough(least, kept)) break;
    }
    if (now.deepest > 0) growWeights(state, now.deepest);
  }
  if (now.deepest <= touching * 0.5) return 0;
  putBack(state, kept, state.length);
  return least;
}

/** Move every item that overlaps, in a new order each round. */
function moveOverlapping(state: SearchState, samples: SampleCounts): void {
  const items = Array.from({ length: state.count }, (_, item) => item);
  const overlapping = items.filter((item) => isOverlapping(state, item));
  for (const item of shuffle(overlapping, state.random)) {
    if (!isOverlapping(state, item)) continue; // others have made room meanwhile
    const { around, x, y } = findPlace(state, item, samples);
    if (around.form === state.form[item] && x === state.x[item] && y === state.y[item]) continue;
    state.form[item] = around.form;
    state.x[item] = x;
    state.y[item] = y;
    measureItem(state, item);
  }
}
