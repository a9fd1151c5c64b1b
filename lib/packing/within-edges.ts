import type { Mm } from "../plane/types.ts";
import { perEdge } from "./no-fit.ts";

/** Whether a point lies within the loops of a no-fit region; on an edge may answer either way. */
export function isWithinEdges(edges: Float64Array, x: Mm, y: Mm): boolean {
  let isWithin = false;
  for (let i = 0; i < edges.length; i += perEdge) {
    const ay = edges[i + 1]!;
    const by = edges[i + 3]!;
    // Does the ray to the right cross this edge?
    if (ay > y === by > y) continue;
    if (x < edges[i]! + ((y - ay) * (edges[i + 2]! - edges[i]!)) / (by - ay)) isWithin = !isWithin;
  }
  return isWithin;
}
