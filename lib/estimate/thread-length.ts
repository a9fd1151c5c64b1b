import type { Mm, Ratio } from "../plane/types.ts";

/**
 * Share added for ends, starts and unpicking.
 *
 * @source A&E technical bulletin, 15 to 20 %,
 * http://www.apparel-merchandising.com/2011/08/estimating-thread-consumption-thread.html
 */
export const threadWaste: Ratio = 0.15;

/** Length of thread a length of seam takes, waste included. */
export function threadLength(
  seam: Mm,
  ratio: Ratio,
  { waste = threadWaste }: { readonly waste?: Ratio } = {},
): Mm {
  return seam * ratio * (1 + waste);
}
