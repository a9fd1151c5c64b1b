import type { Mm } from "../plane/types.ts";

/** Sizes of a boxed cushion as cut, worked out by the trade's rule and not by the panel engine. */
export interface BoxCushion {
  /** Top and bottom. */
  readonly plate: readonly [width: Mm, depth: Mm];
  /** One strip all the way round. */
  readonly boxing: readonly [length: Mm, width: Mm];
}

/**
 * Plates and boxing of a box cushion: foam size with a seam allowance at each edge.
 *
 * The panel engine is checked against this; it does not use it.
 *
 * @source "Make a box cushion cover", http://crafts.creativebug.com/make-box-cushion-cover-1726.html
 */
export function boxCushion(
  foam: { readonly width: Mm; readonly depth: Mm; readonly thickness: Mm },
  seamAllowance: Mm,
): BoxCushion {
  const both = 2 * seamAllowance;
  return {
    plate: [foam.width + both, foam.depth + both],
    boxing: [2 * (foam.width + foam.depth) + both, foam.thickness + both],
  };
}
