import type { Mm } from "../plane/types.ts";
import { type NoFit, perEdge } from "./no-fit.ts";
import { touching } from "./no-fit-depth.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import type { Strip } from "./strip-types.ts";

/**
 * How far along from the start of one strip another must start, so that from there on no piece of the
 * second meets one of the first: the second is slid down until the two would touch. Ragged ends go
 * into one another, so that it may be less than the length of the first.
 */
export function clearAdvance(first: Strip, second: Strip, table: NoFitTable): Mm {
  let advance = -Infinity;
  for (const one of first.places) {
    for (const two of second.places) {
      const top = topAt(table(one.form, two.form), two.x - one.x);
      advance = Math.max(advance, top + one.y - two.y);
    }
  }
  return advance;
}

/** The highest shift at which two pieces still meet, with one so far across from the other. */
function topAt({ edges, minX, maxX }: NoFit, x: Mm): Mm {
  let top = -Infinity;
  if (x <= minX + touching || x >= maxX - touching) return top;
  for (let i = 0; i < edges.length; i += perEdge) {
    const [ax, ay, bx, by] = [edges[i]!, edges[i + 1]!, edges[i + 2]!, edges[i + 3]!];
    const [left, right] = [Math.min(ax, bx), Math.max(ax, bx)];
    if (x < left - touching || x > right + touching) continue;
    // An edge that runs along the line reaches as far as its upper end.
    const isUpright = right - left <= touching;
    const at = ay + ((Math.min(Math.max(x, left), right) - ax) * (by - ay)) / (bx - ax);
    top = Math.max(top, isUpright ? Math.max(ay, by) : at);
  }
  return top;
}
