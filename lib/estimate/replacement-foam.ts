import type { Mm } from "../plane/types.ts";

const inch: Mm = 25.4;

/**
 * Foam that fills a cover which has been used: an inch more in every measure, the thickness then to a whole
 * inch, as slabs are sold. Half an inch over or less is rounded down, more up.
 *
 * @source Foam Factory, "How to measure", https://www.thefoamfactory.com/seatcushion/diy_measure.html
 */
export function replacementFoam([width, depth, thickness]: readonly [Mm, Mm, Mm]): readonly [
  Mm,
  Mm,
  Mm,
] {
  const inches = (thickness + inch) / inch;
  return [width + inch, depth + inch, Math.ceil(inches - 0.5 - 1e-9) * inch];
}
