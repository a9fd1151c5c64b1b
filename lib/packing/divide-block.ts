import type { Count, Mm } from "../plane/types.ts";
import { content, fitsIn, sameSize } from "./cut-job.ts";

/** The smaller blocks that one too large for any slab is glued up from. */
export type Division = readonly (readonly Mm[])[];

/** A last layer thinner than this is not worth slicing: the layers are made equal instead. */
const thinnestLayer: Mm = 15;

/**
 * Divide a block so that every part can be cut from one of the slabs. A block that fits whole comes
 * back alone. A thicker one is built up of layers, full thickness first; a longer or wider one is
 * joined of equal parts, so that the joint lies in its middle, away from its edges.
 *
 * Of all ways to turn it the one with the fewest parts is taken, then the one with least slicing.
 *
 * @source our choice: equal parts keep glue joints away from edges, which wear first
 */
export function divideBlock(size: readonly Mm[], slabs: readonly (readonly Mm[])[]): Division {
  const tries = slabs.flatMap((slab) =>
    turnsOf(size).map((lies) => ({ lies, slab, runs: countRuns(lies, slab) })),
  );
  const parts = (runs: readonly Count[]): Count => content(runs);
  const sorted = tries.sort(
    (a, b) => parts(a.runs) - parts(b.runs) || slicing(a.lies, a.slab) - slicing(b.lies, b.slab),
  );
  const best = sorted[0];
  if (best === undefined || parts(best.runs) === 1) return [size];
  const runs = best.lies.map((each, axis) =>
    axis === 2
      ? layerRuns(each, best.slab[axis]!)
      : Array.from({ length: best.runs[axis]! }, () => each / best.runs[axis]!),
  );
  return runs[0]!.flatMap((a) => runs[1]!.flatMap((b) => runs[2]!.map((c) => [a, b, c])));
}

/** Every order of the sizes, each once. */
export function turnsOf(size: readonly Mm[]): readonly (readonly Mm[])[] {
  if (size.length <= 1) return [size];
  const all = size.flatMap((each, i) =>
    turnsOf([...size.slice(0, i), ...size.slice(i + 1)]).map((rest) => [each, ...rest]),
  );
  return all.filter(
    (one, i) => !all.slice(0, i).some((two) => two.every((each, axis) => each === one[axis])),
  );
}

const countRuns = (lies: readonly Mm[], slab: readonly Mm[]): readonly Count[] =>
  lies.map((each, axis) => Math.max(1, Math.ceil((each - sameSize) / slab[axis]!)));

/** 0 when the layers are the slab's own thickness, 1 when one has to be sliced. */
function slicing(lies: readonly Mm[], slab: readonly Mm[]): number {
  const over = lies[2]! % slab[2]!;
  return over < sameSize || slab[2]! - over < sameSize ? 0 : 1;
}

function layerRuns(height: Mm, thickness: Mm): readonly Mm[] {
  const count = Math.max(1, Math.ceil((height - sameSize) / thickness));
  const last = height - (count - 1) * thickness;
  if (count === 1 || last < thinnestLayer) {
    return Array.from({ length: count }, () => height / count);
  }
  return [...Array.from({ length: count - 1 }, () => thickness), last];
}

/** Whether a block fits one of the slabs whole, at any turn. */
export const fitsWhole = (size: readonly Mm[], slabs: readonly (readonly Mm[])[]): boolean =>
  turnsOf(size).some((lies) => slabs.some((slab) => fitsIn(lies, slab)));
