import type { Degrees, Mm, Mm2, Ratio } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import { formatArea, formatMass, formatPercent } from "../units/format-amounts.ts";
import { formatLength, formatSizes } from "../units/format-length.ts";

/** How one booklet writes its numbers: every length in the project's unit. */
export interface Format {
  readonly length: (length: Mm) => string;
  /** The smallest length the booklet asks anybody to lay off. */
  readonly step: Mm;
  /** Sizes joined by the multiplication sign, the unit once at the end. */
  readonly size: (lengths: readonly Mm[]) => string;
  readonly area: (area: Mm2) => string;
  readonly mass: (kilograms: number) => string;
  readonly percent: (ratio: Ratio) => string;
  readonly degrees: (angle: Degrees) => string;
  /** A plain number, at most two decimals. */
  readonly number: (value: number) => string;
}

/** The formatter of a project. */
export const makeFormat = (style: Pick<Project, "units" | "round">): Format => ({
  length: (length) => formatLength(length, style),
  step: style.units === "in" ? style.round * 25.4 : 1,
  size: (lengths) => formatSizes(lengths, style),
  area: (area) => formatArea(area, style.units),
  mass: (kilograms) => formatMass(kilograms, style.units),
  percent: (ratio) => formatPercent(ratio),
  degrees: (angle) => `${Number(angle.toFixed(1))}°`,
  number: (value) => String(Number(value.toFixed(2))),
});
