import type { Mm } from "../plane/types.ts";
import { lengthParts } from "./length-parts.ts";
import type { LengthParts, LengthStyle } from "./types.ts";

/** Print a length with its unit: "24 1/2 in", "62.5 cm", "625 mm". A `Project` serves as the style. */
export function formatLength(mm: Mm, style: LengthStyle): string {
  return `${formatFigure(mm, style)} ${style.units}`;
}

/** The same without the unit, for tables whose head names it. */
export function formatFigure(mm: Mm, style: LengthStyle): string {
  return figureOf(lengthParts(mm, style));
}

/** The same with the full value behind it where the printed figure is not the true one. */
export function formatLengthInFull(mm: Mm, style: LengthStyle): string {
  const { exact } = lengthParts(mm, style);
  return exact === null ? formatLength(mm, style) : `${formatLength(mm, style)} (${exact} exactly)`;
}

/** Several lengths with the unit once: "24 × 18 × 18 in". */
export function formatSizes(sizes: readonly Mm[], style: LengthStyle): string {
  return `${sizes.map((size) => formatFigure(size, style)).join(" × ")} ${style.units}`;
}

function figureOf({ isNegative, whole, numerator, denominator }: LengthParts): string {
  const part = numerator === 0 ? "" : `${numerator}/${denominator}`;
  return `${isNegative ? "-" : ""}${[whole, part].filter((text) => text !== "").join(" ")}`;
}
