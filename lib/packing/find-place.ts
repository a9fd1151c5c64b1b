import type { Count, Mm } from "../plane/types.ts";
import { perEdge } from "./no-fit.ts";
import { randomBelow } from "../plane/random.ts";
import type { SearchState } from "./search-state.ts";
import { pushOut } from "./push-out.ts";
import { type Surroundings, lookRound, overlapCost } from "./surroundings.ts";

/** A place tried for one item, with its weighted overlap. */
export interface TriedPlace {
  readonly around: Surroundings;
  readonly form: Count;
  x: Mm;
  y: Mm;
  cost: number;
}

/** Places tried for each move: anywhere, near where the item lies, and touching another item. */
export interface SampleCounts {
  readonly anywhere: Count;
  readonly nearby: Count;
  readonly touching: Count;
  /** How many of the best are walked downhill. */
  readonly descents: Count;
}

/**
 * Look for the place of one item with the least weighted overlap: sample over all its forms, walk
 * downhill from the best, and push out of the last overlaps exactly.
 *
 * @source Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329 (sampling, coarse to fine)
 */
export function findPlace(state: SearchState, item: Count, samples: SampleCounts): TriedPlace {
  const { forms } = state.job.items[item]!;
  const seen: (Surroundings | undefined)[] = [];
  const from = (form: Count): Surroundings =>
    (seen[form - forms[0]!] ??= lookRound(state, item, form));
  const here = tryHere(state, item, from(state.form[item]!));
  const best: TriedPlace[] = [here];
  const { random } = state;
  const offer = (form: Count, x: Mm, y: Mm): void => {
    const limit = best.length < samples.descents ? Infinity : best[best.length - 1]!.cost;
    const place = snapped(state, item, form, x, y);
    const around = from(form);
    state.work += state.testWork;
    const cost = overlapCost(around, place.x, place.y, limit);
    if (cost < limit) keepBest(best, { ...place, around, cost }, samples.descents);
  };
  for (let n = 0; n < samples.anywhere; n++) {
    const form = forms[randomBelow(random, forms.length)]!;
    offer(form, random() * roomX(state, form), random() * roomY(state, form));
  }
  const reachX = 0.25 * state.formWidth[here.form]!;
  const reachY = 0.25 * state.formHeight[here.form]!;
  for (let n = 0; n < samples.nearby; n++) {
    const form = n % 3 === 0 ? forms[randomBelow(random, forms.length)]! : here.form;
    const dx = (random() * 2 - 1) * reachX;
    offer(form, here.x + dx, here.y + (random() * 2 - 1) * reachY);
  }
  for (let n = 0; n < samples.touching && state.count > 1; n++) {
    const form = forms[randomBelow(random, forms.length)]!;
    let other = randomBelow(random, state.count - 1);
    if (other >= item) other += 1;
    const { edges } = state.region(state.form[other]!, form);
    const corner = perEdge * randomBelow(random, edges.length / perEdge);
    const x = state.x[other]! + edges[corner]!;
    const y = state.y[other]! + edges[corner + 1]!;
    if (x >= 0 && y >= 0 && x <= roomX(state, form) && y <= roomY(state, form)) offer(form, x, y);
  }
  let winner = here;
  for (const place of best) {
    walkDownhill(state, item, place, 0.1, 0.01);
    if (place.cost < winner.cost) winner = place;
  }
  if (winner.cost > 0) walkDownhill(state, item, winner, 0.01, 0.0005);
  if (winner.cost > 0) pushOut(state, item, winner);
  return winner;
}

function tryHere(state: SearchState, item: Count, around: Surroundings): TriedPlace {
  const [x, y] = [state.x[item]!, state.y[item]!];
  return { around, form: around.form, x, y, cost: overlapCost(around, x, y, Infinity) };
}

/** Room across in which the lowest-left corner of a form may lie. */
export const roomX = (state: SearchState, form: Count): Mm =>
  Math.max(0, state.job.width - state.formWidth[form]!);

/** Room along in which it may lie. */
export const roomY = (state: SearchState, form: Count): Mm =>
  Math.max(0, state.length - state.formHeight[form]!);

/** A place within the strip, at a multiple of the print's repeat where the item asks for it. */
export function snapped(
  state: SearchState,
  item: Count,
  form: Count,
  x: Mm,
  y: Mm,
): { form: Count; x: Mm; y: Mm } {
  const { stepX, stepY, startX = 0, startY = 0 } = state.job.items[item]!;
  return {
    form,
    x: snap(x, roomX(state, form), { step: stepX, start: startX }),
    y: snap(y, roomY(state, form), { step: stepY, start: startY }),
  };
}

function snap(value: Mm, room: Mm, { step, start }: { readonly step: Mm; readonly start: Mm }): Mm {
  const held = Math.min(Math.max(value, 0), room);
  if (step === 0) return held;
  const most = Math.floor((room - start) / step + 1e-9);
  return start + Math.max(0, Math.min(Math.round((held - start) / step), most)) * step;
}

/** Keep the few best places, best first. */
function keepBest(best: TriedPlace[], place: TriedPlace, most: Count): void {
  let at = best.length;
  while (at > 0 && best[at - 1]!.cost > place.cost) at -= 1;
  best.splice(at, 0, place);
  if (best.length > most) best.length = most;
}

/** Small moves along eight directions, longer after success, shorter after failure. */
function walkDownhill(
  state: SearchState,
  item: Count,
  place: TriedPlace,
  first: number,
  last: number,
): void {
  const scale = Math.min(state.formWidth[place.form]!, state.formHeight[place.form]!);
  let step = first * scale;
  while (step > last * scale && place.cost > 0) {
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
  const moved = snapped(state, item, place.form, place.x + dx, place.y + dy);
  if (moved.x === place.x && moved.y === place.y) return false;
  state.work += state.testWork;
  const cost = overlapCost(place.around, moved.x, moved.y, place.cost);
  if (cost >= place.cost) return false;
  place.x = moved.x;
  place.y = moved.y;
  place.cost = cost;
  return true;
}
