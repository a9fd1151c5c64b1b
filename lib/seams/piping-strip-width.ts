import type { Mm, Ratio } from "../plane/types.ts";

/**
 * Width of the strip that wraps a piping cord: once round the cord and two seam allowances.
 *
 * @source Upholstery Resource, welt cord, https://www.upholsteryresource.com/node/103?page=9
 * (5/32 in cord, 1 1/2 in strip: π × 5/32 + 2 × 1/2 = 1.49)
 * @param shrink share that the cloth still loses in the wash: the strip is cut so much larger
 */
export function pipingStripWidth(cord: Mm, seamAllowance: Mm, shrink: Ratio = 0): Mm {
  return (Math.PI * cord + 2 * seamAllowance) / (1 - shrink);
}
