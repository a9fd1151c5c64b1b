import type { Count, Mm } from "../plane/types.ts";
import { type TriedPlace, tryMove } from "./find-place.ts";
import { perEdge } from "./no-fit.ts";
import type { SearchState } from "./search-state.ts";
import { forEachOverlap } from "./surroundings.ts";

/** The way out of one overlap: over an edge with outward normal (nx, ny), `depth` away. */
interface WayOut {
  readonly nx: number;
  readonly ny: number;
  readonly depth: Mm;
}

const mostPushes = 6;

/**
 * Leave the last overlaps exactly: straight over the nearest edge of the deepest one, or into the
 * corner between the nearest edges of the two deepest. Sampling alone only comes close.
 */
export function pushOut(state: SearchState, item: Count, place: TriedPlace): void {
  for (let n = 0; n < mostPushes && place.cost > 0; n++) {
    const ways = listWaysOut(place);
    const [first, second] = ways;
    if (first === undefined) return;
    const isMoved =
      (second !== undefined && pushIntoCorner(state, item, place, first, second)) ||
      tryMove(state, item, place, first.nx * first.depth, first.ny * first.depth) ||
      (second !== undefined &&
        tryMove(state, item, place, second.nx * second.depth, second.ny * second.depth));
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

/** Ways out of all overlaps of a place, deepest first. */
function listWaysOut(place: TriedPlace): readonly WayOut[] {
  const ways: WayOut[] = [];
  forEachOverlap(place.around, place.x, place.y, (region, x, y) =>
    ways.push(nearestEdge(region.edges, x, y)),
  );
  return ways.sort((a, b) => b.depth - a.depth);
}

/** Over the nearest edge, or towards the nearest corner where that is nearer. */
function nearestEdge(edges: Float64Array, x: Mm, y: Mm): WayOut {
  let [bestX, bestY, best] = [0, 0, Infinity];
  for (let i = 0; i < edges.length; i += perEdge) {
    const nx = edges[i + 4]!;
    const ny = edges[i + 5]!;
    const dx = edges[i]! - x;
    const dy = edges[i + 1]! - y;
    const toCorner = Math.hypot(dx, dy);
    if (toCorner > 0 && toCorner < best) {
      [bestX, bestY, best] = [dx / toCorner, dy / toCorner, toCorner];
    }
    const depth = dx * nx + dy * ny;
    if (depth < 0 || depth >= best) continue;
    const along = dx * ny - dy * nx;
    const endX = edges[i + 2]! - x;
    const endY = edges[i + 3]! - y;
    if (along <= 0 && endX * ny - endY * nx >= 0) [bestX, bestY, best] = [nx, ny, depth];
    else if (along >= 0 && endX * ny - endY * nx <= 0) [bestX, bestY, best] = [nx, ny, depth];
  }
  return { nx: bestX, ny: bestY, depth: best };
}
