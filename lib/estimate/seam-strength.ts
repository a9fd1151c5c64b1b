import type { Mm } from "../plane/types.ts";
import { stitchesPerInch } from "./stitches-per-inch.ts";

/** Two threads, needle and bobbin, less what the loops cost. @source A&E, as below */
const lockstitch = 1.5;

/**
 * Newtons that an inch of lockstitched seam in woven cloth holds, by the strength of one thread in newtons.
 *
 * @source A&E: stitches to the inch × thread strength × 1.5 for stitch 301, quoted at
 * https://fineleatherworking.com/blog/how-many-stitches-per-inch-leather
 */
export function seamStrength(stitch: Mm, threadStrength: number): number {
  return stitchesPerInch(stitch) * threadStrength * lockstitch;
}
