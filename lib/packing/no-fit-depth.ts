import type { Mm } from "../plane/types.ts";
import { type NoFit, perEdge } from "./no-fit.ts";

/** Pieces that overlap by no more than this count as touching: a hundred-thousandth of a millimetre. */
export const touching: Mm = 1e-5;

/**
 * How deep a shift lies inside a no-fit region: the shortest way out, and so the least move that
 * parts the two pieces. 0 outside and on the edge.
 */
export function noFitDepth(region: NoFit, x: Mm, y: Mm): Mm {
  if (x <= region.minX || x >= region.maxX || y <= region.minY || y >= region.maxY) return 0;
  return region.isConvex ? convexDepth(region.edges, x, y) : windingDepth(region.edges, x, y);
}

function convexDepth(edges: Float64Array, x: Mm, y: Mm): Mm {
  let depth = Infinity;
  for (let i = 0; i < edges.length; i += perEdge) {
    const out = (x - edges[i]!) * edges[i + 4]! + (y - edges[i + 1]!) * edges[i + 5]!;
    if (out >= 0) return 0;
    if (-out < depth) depth = -out;
  }
  return depth;
}

function windingDepth(edges: Float64Array, x: Mm, y: Mm): Mm {
  let isInside = false;
  for (let i = 0; i < edges.length; i += perEdge) {
    const ay = edges[i + 1]!;
    const by = edges[i + 3]!;
    if (ay > y === by > y) continue;
    if (x < edges[i]! + ((y - ay) * (edges[i + 2]! - edges[i]!)) / (by - ay)) isInside = !isInside;
  }
  if (!isInside) return 0;
  let nearest = Infinity;
  for (let i = 0; i < edges.length; i += perEdge) {
    const square = squareToEdge(edges, i, x, y);
    if (square < nearest) nearest = square;
  }
  return Math.sqrt(nearest);
}

/** Square of the distance from a point to one edge. */
function squareToEdge(edges: Float64Array, i: number, x: Mm, y: Mm): number {
  const dx = x - edges[i]!;
  const dy = y - edges[i + 1]!;
  const nx = edges[i + 4]!;
  const ny = edges[i + 5]!;
  const along = dy * nx - dx * ny; // the edge runs along (−ny, nx)
  if (along <= 0) return dx * dx + dy * dy;
  const fromEndX = x - edges[i + 2]!;
  const fromEndY = y - edges[i + 3]!;
  if (fromEndY * nx - fromEndX * ny >= 0) return fromEndX * fromEndX + fromEndY * fromEndY;
  const off = dx * nx + dy * ny;
  return off * off;
}
