import type { Count, Mm } from "../plane/types.ts";
import { wayOut } from "./depth-field.ts";
import type { SearchState } from "./search-state.ts";
import { forEachOverlap } from "./surroundings.ts";
import { type TriedPlace, tryMove } from "./walk-downhill.ts";

/** The way out of one overlap: towards (nx, ny), `depth` away. */
interface WayOut {
  readonly nx: number;
  readonly ny: number;
  readonly depth: Mm;
  readonly cost: number;
}

const mostPushes = 6;

/**
 * Leave the last overlaps exactly: into the corner between the nearest edges of two of the three
 * dearest, or straight over the nearest edge of one. Walking alone only comes close.
 */
export function pushOut(state: SearchState, item: Count, place: TriedPlace): void {
  for (let n = 0; n < mostPushes && place.cost > 0; n++) {
    const [first, second, third] = listWaysOut(place);
    state.work += state.testWork;
    const into = (one?: WayOut, two?: WayOut): boolean =>
      one !== undefined && two !== undefined && pushIntoCorner(state, item, place, one, two);
    const over = (one?: WayOut): boolean =>
      one !== undefined && tryMove(state, item, place, one.nx * one.depth, one.ny * one.depth);
    const isMoved =
      into(first, second) ||
      into(first, third) ||
      into(second, third) ||
      over(first) ||
      over(second);
    if (!isMoved) return;
  }
}

/** Where both edges are left at once: n₁·d = depth₁ and n₂·d = depth₂. */
function pushIntoCorner(
  state: SearchState,
  item: Count,
  place: TriedPlace,
  one: WayOut,
  two: WayOut,
): boolean {
  const across = one.nx * two.ny - one.ny * two.nx;
  if (Math.abs(across) < 1e-3) return false;
  const dx = (one.depth * two.ny - two.depth * one.ny) / across;
  const dy = (two.depth * one.nx - one.depth * two.nx) / across;
  return tryMove(state, item, place, dx, dy);
}

/** Ways out of all overlaps of a place, dearest first. */
function listWaysOut(place: TriedPlace): readonly WayOut[] {
  const ways: WayOut[] = [];
  forEachOverlap(place.around, place.x, place.y, (depth, weight) =>
    ways.push({ nx: wayOut.dx / depth, ny: wayOut.dy / depth, depth, cost: depth * weight }),
  );
  return ways.sort((a, b) => b.cost - a.cost);
}
