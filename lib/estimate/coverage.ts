import type { Mm2, Ratio } from "../plane/types.ts";

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

/** Litres in a US gallon and square metres in a square foot. @source NIST SP 811 (2008), appendix B.8 */
const litresPerGallon = 3.785411784;
const squareMetresPerSquareFoot = 0.3048 ** 2;

/** Square metres a litre covers, from the square feet a US gallon covers, as American labels have it. */
export function squareMetresPerLitre(squareFeetPerGallon: number): number {
  return (squareFeetPerGallon * squareMetresPerSquareFoot) / litresPerGallon;
}

/**
 * Square metres a litre of adhesive covers, from what its data sheet gives: kilograms a litre, share of
 * solids by mass, and grams of dry adhesive asked for on a square metre.
 *
 * @source 3M, Fastbond Insulation Adhesive, data sheet, January 2008,
 *   https://businessdocbox.com/Construction/90667992-3-fastbond-tm-insulation-adhesive-technical-data-january-2008.html
 */
export function coverageByCoat(sheet: {
  readonly density: number;
  readonly solids: Ratio;
  readonly dryCoat: number;
}): number {
  return (sheet.density * 1000 * sheet.solids) / sheet.dryCoat;
}
