import type { Degrees, Mm, Mm2, Ratio } from "../plane/types.ts";
import { formatArea, formatMass, formatPercent } from "./format-amounts.ts";
import { formatLength, formatSizes } from "./format-length.ts";
import { formatShopLength, roundUpForShop } from "./shop-length.ts";
import { smallestStep } from "./smallest-step.ts";
import type { Unit } from "./types.ts";

/** How one booklet writes its numbers: every figure in the project's own unit. */
export interface Format {
  readonly length: (length: Mm) => string;
  /** What a shop is asked for, rounded up to what it cuts: "1.6 m" or "1 3/8 yd". */
  readonly shop: (length: Mm) => string;
  /** Several lengths with the unit once: "24 × 18 × 18 in". */
  readonly sizes: (lengths: readonly Mm[]) => string;
  readonly area: (area: Mm2) => string;
  readonly mass: (kilograms: number) => string;
  readonly percent: (ratio: Ratio) => string;
  readonly degrees: (angle: Degrees) => string;
  /** A plain number, at most two decimals. */
  readonly number: (value: number) => string;
  /** The smallest length the booklet asks anybody to lay off. */
  readonly step: Mm;
}

/** The formatter of a project. */
export function makeFormat(style: { readonly units: Unit; readonly round: Ratio }): Format {
  return {
    length: (length) => formatLength(length, style),
    shop: (length) => formatShopLength(roundUpForShop(length, style.units), style.units),
    sizes: (lengths) => formatSizes(lengths, style),
    area: (area) => formatArea(area, style.units),
    mass: (kilograms) => formatMass(kilograms, style.units),
    percent: (ratio) => formatPercent(ratio),
    degrees: (angle) => `${Number(angle.toFixed(1))}°`,
    number: (value) => String(Number(value.toFixed(2))),
    step: smallestStep(style),
  };
}
