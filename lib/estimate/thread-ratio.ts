import type { Mm, Ratio } from "../plane/types.ts";
import { stitchesPerInch } from "./stitches-per-inch.ts";

/**
 * Stitch classes by their ISO 4915 numbers: lockstitch, zigzag lockstitch, single chain, blind stitch, double
 * chain, cover stitch with two needles, overedge of two and three threads, and with a safety stitch, and covering
 * stitches of four and five threads.
 */
export type StitchClass =
  "301" | "304" | "101" | "103" | "401" | "406" | "503" | "504" | "512" | "516" | "602" | "605";

/** Thread per seam length on ordinary thickness. */
const flatRatio: Readonly<Record<StitchClass, Ratio>> = {
  // Coats, Standard Stitch Type Classification guide, https://ru.scribd.com/document/49933681/stitchtypeclassification
  "301": 2.5,
  "304": 5.5,
  "101": 5,
  "103": 4.5,
  // Coats average table, from memory; 5.5 confirmed by other pages
  "401": 5.5,
  // The same table, from memory
  "406": 18,
  "503": 12,
  "504": 14,
  "512": 18,
  "516": 20,
  "602": 25,
  "605": 28,
};

/** Share of a lockstitch's thread that the bobbin holds. @source Coats, as above: needle to bobbin 1 to 1 */
export const bobbinShare: Ratio = 1 / 2;

/** Constant of `constant + 2·T·S`: T seam thickness and S stitches, both by the inch. */
const constant: Readonly<Record<"301" | "101" | "401", number>> = {
  // https://www.textilecalculations.com/calculate-amount-of-sewing-thread-consumption/
  "301": 2,
  "101": 3,
  // Union Special chart in the A&E bulletin "Estimating thread consumption",
  // http://web.archive.org/web/20080216233719/http:/www.amefird.com/estimating_consumption.htm
  "401": 4,
};

/**
 * Thread per length of seam by the seam's thickness and the stitch length: `constant + 2·T·S`.
 *
 * @source the two pages named beside the constants
 */
export function threadRatioByThickness(
  stitchClass: keyof typeof constant,
  seam: { readonly thickness: Mm; readonly stitch: Mm },
): Ratio {
  const thicknessInInches = seam.thickness / 25.4;
  return constant[stitchClass] + 2 * thicknessInInches * stitchesPerInch(seam.stitch);
}

/**
 * Thread per length of an edge neatened by a three-thread overedge stitch, class 504: `3 + 4·W·S + 4·T·S`,
 * W its width, T its thickness and S stitches, all by the inch.
 *
 * @source https://www.textilecalculations.com/calculate-amount-of-sewing-thread-consumption/ (another page has a
 *   constant of 5; the flat 14 of Coats' table buys more)
 */
export function overedgeThreadRatio(edge: {
  readonly width: Mm;
  readonly thickness: Mm;
  readonly stitch: Mm;
}): Ratio {
  return 3 + 4 * ((edge.width + edge.thickness) / 25.4) * stitchesPerInch(edge.stitch);
}

/** Thread per length of seam on ordinary thickness, whatever the stitch length. */
export function flatThreadRatio(stitchClass: StitchClass): Ratio {
  return flatRatio[stitchClass];
}

/**
 * Thread per length of seam, the larger of the flat ratio and the one by thickness: thin cloth is
 * not cut short, thick seams get what they need. A null thickness gives the flat ratio.
 *
 * @source our choice: the two published rules disagree, so the one that buys more
 */
export function threadRatio(
  stitchClass: keyof typeof constant,
  seam: { readonly thickness: Mm | null; readonly stitch: Mm },
): Ratio {
  const { thickness, stitch } = seam;
  if (thickness === null) return flatRatio[stitchClass];
  return Math.max(
    flatRatio[stitchClass],
    threadRatioByThickness(stitchClass, { thickness, stitch }),
  );
}
