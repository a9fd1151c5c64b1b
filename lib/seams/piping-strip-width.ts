import type { Mm } from "../plane/types.ts";

/**
 * Width of the strip that wraps a piping cord: once round the cord and two seam allowances.
 *
 * @source Upholstery Resource, welt cord, https://www.upholsteryresource.com/node/103?page=9
 * (5/32 in cord, 1 1/2 in strip: π × 5/32 + 2 × 1/2 = 1.49)
 */
export function pipingStripWidth(cord: Mm, seamAllowance: Mm): Mm {
  return Math.PI * cord + 2 * seamAllowance;
}
