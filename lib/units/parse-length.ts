import type { Mm } from "../plane/types.ts";
import { lengthUnits } from "./length-units.ts";
import { misread } from "./misread.ts";
import { isMisreading, parseFormula } from "./parse-formula.ts";
import type { NamedSizes, Reading, Unit } from "./types.ts";
import { workOut } from "./work-out.ts";

/** Which signs a length may have: a size is `positive`, a kerf `notNegative`, a place `any`. */
export type AllowedSign = "positive" | "notNegative" | "any";

export interface LengthRules {
  /** Unit of bare numbers. */
  readonly units: Unit;
  readonly names?: NamedSizes;
  readonly allow?: AllowedSign;
}

/** @source our choice: 100 m is longer than a bolt of cloth, so anything beyond is a slip of the pen */
const longestLength: Mm = 100_000;
const noNames: NamedSizes = new Map();

/**
 * Read a length or a formula as millimetres: "24 1/2 in", "45 cm", "2 * depth + 3", or a number.
 *
 * The result is rounded to a billionth of a millimetre, so that 12 in + 6 in equals 18 in.
 */
export function parseLength(
  written: string | number,
  { units, names = noNames, allow = "positive" }: LengthRules,
): Reading<Mm> {
  if (typeof written === "number") return checkLength(written * lengthUnits[units], allow);
  const expression = parseFormula(written, new Set(names.keys()));
  if (isMisreading(expression)) return expression;
  const unit = lengthUnits[units];
  const worked = workOut(expression, { names, unit });
  if ("ok" in worked) return worked;
  if (worked.kind === "ratio") {
    return misread("the formula gives a plain ratio, not a length", "Multiply it by a length");
  }
  return checkLength(worked.kind === "bare" ? worked.value * unit : worked.value, allow);
}

function checkLength(mm: Mm, allow: AllowedSign): Reading<Mm> {
  if (!Number.isFinite(mm))
    return misread("the length is not a finite number", "Write a length such as 45 cm");
  if (Math.abs(mm) > longestLength) {
    return misread("the length is more than 100 m", "Check the unit and the figures");
  }
  const value = Math.round(mm * 1e9) / 1e9 + 0; // + 0 turns -0 into 0
  if (allow === "any" || value > 0) return { ok: true, value };
  if (value < 0) return misread("the length is negative", "Write a length above zero");
  if (allow === "notNegative") return { ok: true, value };
  return misread("the length is zero", "Write a length above zero");
}
