import type { Count, Mm } from "../plane/types.ts";
import { isWithinEdges } from "./within-edges.ts";

/**
 * A grid over the bounds of a no-fit region. Each cell lists the edges one of which is nearest to any
 * point in it; a cell wholly outside lists none. Depth is then exact, from two or three edges.
 *
 * @source Bærentzen and Aanæs 2005, "Signed distance computation using the angle weighted
 * pseudonormal" (which side a point is on, by its nearest feature)
 */
export interface DepthField {
  /** Cells each way. */
  readonly cells: Count;
  /** Where the edges of each cell start in `near`; one more at the end. */
  readonly starts: Int32Array;
  /** Places of edges in `figures`. */
  readonly near: Int32Array;
  /**
   * First the lowest-left corner x, y and the cells per millimetre across and along. Then for each
   * edge: start x, y; unit direction x, y; length; outward directions at start and end; and
   * 1, or NaN where more than two edges meet at an end. There the nearest edge does not tell inside
   * from outside.
   */
  readonly figures: Float64Array;
  readonly edges: Float64Array;
}

/**
 * The way out of a region found last: from the point to the nearest edge. Kept here and not returned,
 * as it is asked for millions of times.
 */
export const wayOut = { dx: 0, dy: 0 };

/** Depth of a point within the bounds of the field: its way to the nearest edge, 0 outside. */
export function fieldDepth(field: DepthField, x: Mm, y: Mm): Mm {
  const { starts, near, figures, cells } = field;
  let column = ((x - figures[0]!) * figures[2]!) | 0;
  let row = ((y - figures[1]!) * figures[3]!) | 0;
  if (column >= cells) column = cells - 1;
  if (row >= cells) row = cells - 1;
  const cell = row * cells + column;
  let square = Infinity;
  let side = 0;
  let [outX, outY] = [0, 0];
  for (let k = starts[cell]!, end = starts[cell + 1]!; k < end; k++) {
    const i = near[k]!;
    let dx = x - figures[i]!;
    let dy = y - figures[i + 1]!;
    const ux = figures[i + 2]!;
    const uy = figures[i + 3]!;
    const along = dx * ux + dy * uy;
    const length = figures[i + 4]!;
    if (along > 0 && along < length) {
      const off = dx * uy - dy * ux;
      if (off * off < square) {
        square = off * off;
        side = off * figures[i + 9]!;
        outX = -off * uy;
        outY = off * ux;
      }
    } else if (along <= 0) {
      const found = dx * dx + dy * dy;
      if (found < square) {
        square = found;
        side = dx * figures[i + 5]! + dy * figures[i + 6]!;
        outX = -dx;
        outY = -dy;
      }
    } else {
      dx -= length * ux;
      dy -= length * uy;
      const found = dx * dx + dy * dy;
      if (found < square) {
        square = found;
        side = dx * figures[i + 7]! + dy * figures[i + 8]!;
        outX = -dx;
        outY = -dy;
      }
    }
  }
  wayOut.dx = outX;
  wayOut.dy = outY;
  if (side !== side) side = isWithinEdges(field.edges, x, y) ? -1 : 1;
  return side < 0 ? Math.sqrt(square) : 0;
}
