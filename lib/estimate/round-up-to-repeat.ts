import type { Count, Mm } from "../plane/types.ts";

/**
 * A cut length rounded up to whole pattern repeats, so that every cut starts at the same motif.
 * A length that is already a multiple stays as it is; a repeat of 0 changes nothing.
 *
 * @source Meredith, "Figuring Pattern Repeats",
 * http://www.diyideas.com/howto/sewing-fabric/fabricrepeats_3.html
 */
export function roundUpToRepeat(length: Mm, repeat: Mm): Mm {
  if (repeat <= 0) return length;
  return Math.ceil(length / repeat - 1e-9) * repeat;
}

/**
 * Length to order for several equal cuts of a patterned cloth: each rounded up, and one repeat more
 * for the place where the roll happens to start.
 *
 * @source Meredith, as above: "one extra repeat to the whole order for the starting position"
 */
export function orderWithRepeat(length: Mm, repeat: Mm, cuts: Count): Mm {
  return cuts * roundUpToRepeat(length, repeat) + Math.max(0, repeat);
}
