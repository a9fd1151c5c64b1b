import type { Mm } from "../plane/types.ts";

/** Added once to each size of the blank, to be trimmed after wrapping. */
const trim: Mm = 2 * 25.4;

/**
 * Batting blank that wraps a foam block over top, front, underside and back, the ends folded in.
 *
 * @returns width and length of the blank
 * @source Foam Factory, "Fibre fill: staple", http://thefoamfactory.com/seatcushion/diy_fiberfill_staple.html
 */
export function wrapBlank(foam: {
  readonly width: Mm;
  readonly depth: Mm;
  readonly thickness: Mm;
}): readonly [width: Mm, length: Mm] {
  const { width, depth, thickness } = foam;
  return [width + thickness + trim, 2 * (depth + thickness) + trim];
}
