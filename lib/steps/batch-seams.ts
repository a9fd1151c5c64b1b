import type { Mm } from "../plane/types.ts";
import type { Cover, Seam } from "../seams/types.ts";
import { isCurved } from "./seam-edges.ts";

/** Seams sewn in one step, at least one. */
export type SeamBatch = readonly [Seam, ...Seam[]];

/** The most joins one step may hold, and the longest that is still short. Our choice. */
const mostJoins = 4;
const longestJoin: Mm = 300;
/** Lengths nearer than this are the same, in mm. */
const equal = 0.5;

/** Short straight joins of strips that follow one another go together; every other seam stands alone. */
export function batchSeams(seams: readonly Seam[], cover: Cover): SeamBatch[] {
  const batches: SeamBatch[] = [];
  for (const seam of seams) {
    const last = batches.at(-1);
    const isJoined =
      last !== undefined &&
      last.length < mostJoins &&
      [seam, ...last].every((one) => isShortJoin(one, cover)) &&
      Math.abs(last[0].length[0] - seam.length[0]) <= equal;
    if (isJoined) batches[batches.length - 1] = [...last, seam];
    else batches.push([seam]);
  }
  return batches;
}

/** A straight seam across the ends of two strips, with nothing to clip, ease or pipe. */
export function isShortJoin(seam: Seam, cover: Cover): boolean {
  const [one, other] = seam.panels;
  const [first, second] = seam.length;
  return (
    one !== other &&
    !seam.isPiped &&
    !seam.isRing &&
    seam.corners.length === 0 &&
    first <= longestJoin &&
    Math.abs(first - second) <= equal &&
    seam.panels.every((panel) => !isCurved(seam, panel, cover) && isStrip(panel, first, cover))
  );
}

/** Does the seam run across the whole end of a panel that is longer than it is wide? */
function isStrip(panel: string, length: Mm, { panels }: Cover): boolean {
  const size = panels.find(({ id }) => id === panel)?.size;
  return (
    size !== undefined &&
    Math.abs(Math.min(...size) - length) <= 1 &&
    Math.max(...size) > Math.min(...size) + 1
  );
}
