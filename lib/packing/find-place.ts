import type { Count, Mm } from "../plane/types.ts";
import { type Random, randomBelow } from "../plane/random.ts";
import { perEdge } from "./no-fit.ts";
import { pushOut } from "./push-out.ts";
import type { SearchState } from "./search-state.ts";
import { type Surroundings, lookRound, makeSurroundings, overlapCost } from "./surroundings.ts";
import { type TriedPlace, snap, walkDownhill } from "./walk-downhill.ts";

/** Places tried for each move: anywhere, near where the item lies, and touching another item. */
export interface SampleCounts {
  readonly anywhere: Count;
  readonly nearby: Count;
  readonly touching: Count;
  /** How many of the best are walked downhill. */
  readonly descents: Count;
}

/** Places near where the item lies are up to this share of its size away. */
const nearbyShare = 0.25;

/**
 * Look for the place of one item with the least weighted overlap: sample over all its forms, walk
 * downhill from the best, and push out of the last overlaps exactly.
 *
 * @source Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329 (sampling, coarse to fine)
 */
export function findPlace(state: SearchState, item: Count, samples: SampleCounts): TriedPlace {
  const { forms } = state.job.items[item]!;
  const from = lookFrom(state, item);
  const own = from(forms.indexOf(state.form[item]!));
  const [x, y] = [state.x[item]!, state.y[item]!];
  const here: TriedPlace = { around: own, x, y, cost: overlapCost(own, x, y, Infinity) };
  const best: TriedPlace[] = [here];
  const anyForm = (): Surroundings => from(randomBelow(state.random, forms.length));
  const offer = (around: Surroundings, atX: Mm, atY: Mm): void =>
    keepBest(state, item, best, samples.descents, around, atX, atY);
  offerAnywhere(state.random, samples.anywhere, anyForm, offer);
  offerNearby(state, here, samples.nearby, anyForm, offer);
  offerTouching(state, item, samples.touching, anyForm, offer);
  let winner = here;
  for (const place of best) {
    walkDownhill(state, item, place);
    pushOut(state, item, place);
    if (place.cost < winner.cost) winner = place;
  }
  return winner;
}

/** What an item sees in each of its forms, worked out when first asked for. */
function lookFrom(state: SearchState, item: Count): (slot: Count) => Surroundings {
  const { forms } = state.job.items[item]!;
  const seen: (Surroundings | undefined)[] = [];
  return (slot) =>
    (seen[slot] ??= lookRound(
      state,
      item,
      forms[slot]!,
      (state.scratch[slot] ??= makeSurroundings(state.count, state.job.walls)),
    ));
}

type Offer = (around: Surroundings, x: Mm, y: Mm) => void;

function offerAnywhere(random: Random, most: Count, anyForm: () => Surroundings, offer: Offer) {
  for (let n = 0; n < most; n++) {
    const around = anyForm();
    offer(around, random() * around.roomX, random() * around.roomY);
  }
}

/** Every third of these in another form. */
function offerNearby(
  { random, formWidth, formHeight }: SearchState,
  { around: own, x, y }: TriedPlace,
  most: Count,
  anyForm: () => Surroundings,
  offer: Offer,
): void {
  const reachX = nearbyShare * formWidth[own.form]!;
  const reachY = nearbyShare * formHeight[own.form]!;
  for (let n = 0; n < most; n++) {
    const around = n % 3 === 0 ? anyForm() : own;
    const dx = (random() * 2 - 1) * reachX;
    offer(around, x + dx, y + (random() * 2 - 1) * reachY);
  }
}

/** Corners of other items' no-fit regions: there the two touch, corner to corner or nested. */
function offerTouching(
  state: SearchState,
  item: Count,
  most: Count,
  anyForm: () => Surroundings,
  offer: Offer,
): void {
  if (state.count < 2) return;
  for (let n = 0; n < most; n++) {
    const around = anyForm();
    let other = randomBelow(state.random, state.count - 1);
    if (other >= item) other += 1;
    const { edges } = state.region(state.form[other]!, around.form);
    const corner = perEdge * randomBelow(state.random, edges.length / perEdge);
    const x = state.x[other]! + edges[corner]!;
    const y = state.y[other]! + edges[corner + 1]!;
    if (x >= 0 && y >= 0 && x <= around.roomX && y <= around.roomY) offer(around, x, y);
  }
}

/** Measure a place and keep it if it is among the few best, best first. */
function keepBest(
  state: SearchState,
  item: Count,
  best: TriedPlace[],
  most: Count,
  around: Surroundings,
  atX: Mm,
  atY: Mm,
): void {
  const { stepX, stepY, startX = 0, startY = 0 } = state.job.items[item]!;
  const limit = best.length < most ? Infinity : best[best.length - 1]!.cost;
  const x = snap(atX, around.roomX, stepX, startX);
  const y = snap(atY, around.roomY, stepY, startY);
  state.work += state.testWork;
  const cost = overlapCost(around, x, y, limit);
  if (cost >= limit) return;
  let at = best.length;
  while (at > 0 && best[at - 1]!.cost > cost) at -= 1;
  best.splice(at, 0, { around, x, y, cost });
  if (best.length > most) best.length = most;
}
