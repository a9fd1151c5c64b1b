import type { Count, Mm } from "../plane/types.ts";
import { randomBelow } from "../plane/random.ts";
import type { SearchState } from "./search-state.ts";
import { type Surroundings, narrowTo, nearCost } from "./surroundings.ts";

/** A place tried for one item, with its weighted overlap. */
export interface TriedPlace {
  readonly around: Surroundings;
  x: Mm;
  y: Mm;
  cost: number;
}

/** First and last length of step, and how far to look, as shares of the item's smaller size. */
const shares = { first: 0.1, last: 0.01, reach: 0.5 } as const;

/** Small moves along eight directions, longer after success, shorter after failure. */
export function walkDownhill(state: SearchState, item: Count, place: TriedPlace): void {
  if (place.cost === 0) return;
  const { around } = place;
  const size = Math.min(state.formWidth[around.form]!, around.height);
  narrowTo(around, place.x, place.y, shares.reach * size);
  let step = shares.first * size;
  while (step > shares.last * size && place.cost > 0) {
    const axis = randomBelow(state.random, 4);
    const dx = axis === 1 ? 0 : step;
    const dy = axis === 0 ? 0 : axis === 3 ? -step : step;
    const isBetter = tryMove(state, item, place, dx, dy) || tryMove(state, item, place, -dx, -dy);
    step *= isBetter ? 1.1 : 0.5;
  }
}

/** Move a place when that lessens its cost; says whether it did. */
export function tryMove(
  state: SearchState,
  item: Count,
  place: TriedPlace,
  dx: Mm,
  dy: Mm,
): boolean {
  const { stepX, stepY, startX = 0, startY = 0 } = state.job.items[item]!;
  const x = snap(place.x + dx, place.around.roomX, stepX, startX);
  const y = snap(place.y + dy, place.around.roomY, stepY, startY);
  if (x === place.x && y === place.y) return false;
  state.work += state.nearWork;
  const cost = nearCost(place.around, x, y, place.cost);
  if (cost >= place.cost) return false;
  place.x = x;
  place.y = y;
  place.cost = cost;
  return true;
}

/**
 * A place within its room, at a multiple of the print's repeat, or some way past one, where the item
 * asks for it.
 */
export function snap(value: Mm, room: Mm, step: Mm, start: Mm): Mm {
  const held = value < 0 ? 0 : value > room ? room : value;
  if (step === 0) return held;
  const most = Math.floor((room - start) / step + 1e-9);
  return start + Math.max(0, Math.min(Math.round((held - start) / step), most)) * step;
}
