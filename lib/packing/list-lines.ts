import type { Count, Mm } from "../plane/types.ts";
import { type NoFit, noFitParts, perEdge } from "./no-fit.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import type { StripPlace } from "./strip-types.ts";

/** Piece j keeps clear of piece i while n · (place of j − place of i) ≥ least. */
export interface DividingLine {
  readonly i: Count;
  readonly j: Count;
  readonly nx: number;
  readonly ny: number;
  readonly least: Mm;
}

/**
 * Lines that keep all pairs of pieces apart. Each convex part of a no-fit region is kept out by one
 * straight line: its edge that the place is farthest beyond. Parts farther away than two pieces can
 * move, `reach` across and along, need none.
 *
 * @source Li and Milenkovic 1995, "Compaction and separation algorithms for non-convex polygons and
 * their applications", EJOR 84
 */
export function listLines(
  table: NoFitTable,
  places: readonly StripPlace[],
  reach: Mm,
  use: (line: DividingLine) => void,
): void {
  places.forEach((moving, j) => {
    for (let i = 0; i < j; i++) {
      const fixed = places[i]!;
      const region = table(fixed.form, moving.form);
      const [x, y] = [moving.x - fixed.x, moving.y - fixed.y];
      if (!isWithin(region, x, y, reach)) continue;
      for (const edges of noFitParts(region)) {
        const edge = farthestEdge(edges, x, y);
        const [nx, ny] = [edges[edge + 4]!, edges[edge + 5]!];
        const least = edges[edge]! * nx + edges[edge + 1]! * ny;
        if (x * nx + y * ny - least > reach * (Math.abs(nx) + Math.abs(ny))) continue;
        use({ i, j, nx, ny, least });
      }
    }
  });
}

const isWithin = (region: NoFit, x: Mm, y: Mm, reach: Mm): boolean =>
  x > region.minX - reach &&
  x < region.maxX + reach &&
  y > region.minY - reach &&
  y < region.maxY + reach;

/** The edge that a point lies farthest beyond, or least far within. */
function farthestEdge(edges: Float64Array, x: Mm, y: Mm): Count {
  let farthest = -Infinity;
  let edge = 0;
  for (let k = 0; k < edges.length; k += perEdge) {
    const out = (x - edges[k]!) * edges[k + 4]! + (y - edges[k + 1]!) * edges[k + 5]!;
    if (out > farthest) [farthest, edge] = [out, k];
  }
  return edge;
}
