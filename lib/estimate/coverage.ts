import type { Mm2 } from "../plane/types.ts";

/**
 * Containers needed for an area, when the maker of the stuff states what one covers. Coverage is
 * never guessed: a coverage of 0 or less gives null.
 *
 * @source Mulco, "Calculating adhesives", http://www.mulco.ca/En/Tips/Tips_03b_calculating_adhesives.htm
 */
export function containersFor(area: Mm2, coverage: Mm2): number | null {
  if (coverage <= 0) return null;
  return Math.ceil(area / coverage - 1e-9);
}

/**
 * Area one container covers, from its volume in litres and the area a litre covers.
 *
 * @source Mulco, as above: 3.78 L × 19 ft²/L = 71.8 ft²
 */
export function containerCoverage(litres: number, areaPerLitre: Mm2): Mm2 {
  return litres * areaPerLitre;
}
