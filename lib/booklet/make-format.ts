import type { Degrees, Mm, Mm2, Ratio } from "../plane/types.ts";
import type { Project } from "../project/types.ts";

/** How one booklet writes its numbers: every length in the project's unit. */
export interface Format {
  readonly length: (length: Mm) => string;
  /** Sizes joined by the multiplication sign, the unit once at the end. */
  readonly size: (lengths: readonly Mm[]) => string;
  readonly percent: (ratio: Ratio) => string;
  readonly degrees: (angle: Degrees) => string;
  readonly mass: (kilograms: number) => string;
  readonly area: (area: Mm2) => string;
  readonly number: (value: number) => string;
}

/** The formatter of a project. */
export function makeFormat({ units, round }: Pick<Project, "units" | "round">): Format {
  const bare = (length: Mm): string => {
    switch (units) {
      case "mm":
        return trim(length, 0);
      case "cm":
        return trim(length / 10, 1);
      case "in":
        return mixedFraction(length / 25.4, round);
    }
  };
  const inUnit = (text: string): string => `${text} ${units}`;
  return {
    length: (length) => inUnit(bare(length)),
    size: (lengths) => inUnit(lengths.map(bare).join(` × `)),
    percent: (ratio) => `${trim(ratio * 100, 0)} %`,
    degrees: (angle) => `${trim(angle, 1)}°`,
    mass: (kilograms) =>
      units === "in" ? `${trim(kilograms / 0.45359237, 1)} lb` : `${trim(kilograms, 2)} kg`,
    area: (area) =>
      units === "in" ? `${trim(area / 25.4 ** 2, 0)} sq in` : `${trim(area / 1e6, 2)} m²`,
    number: (value) => trim(value, 2),
  };
}

/** A decimal without trailing noughts and never "-0". */
function trim(value: number, places: number): string {
  const text = value.toFixed(places);
  const short = places === 0 ? text : text.replace(/\.?0+$/, "");
  return short === "-0" ? "0" : short;
}

/** Inches to the nearest step of `round`, as "17 3/8". */
function mixedFraction(inches: number, round: Ratio): string {
  const parts = Math.max(1, Math.round(1 / round));
  const total = Math.round(Math.abs(inches) * parts);
  const sign = inches < 0 && total > 0 ? "-" : "";
  const whole = Math.floor(total / parts);
  const rest = total % parts;
  if (rest === 0) return `${sign}${whole}`;
  const shared = greatestDivisor(rest, parts);
  const fraction = `${rest / shared}/${parts / shared}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
}

const greatestDivisor = (a: number, b: number): number => (b === 0 ? a : greatestDivisor(b, a % b));
