import type { Mm } from "../plane/types.ts";

const inch: Mm = 25.4;

/**
 * Stitches in an inch for a stitch of the given length.
 *
 * @source "Stitch length", https://stevesews.com/stitch-length/ (25.4 ÷ length in mm)
 */
export function stitchesPerInch(stitch: Mm): number {
  return inch / stitch;
}
