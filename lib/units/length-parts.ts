import type { Mm } from "../plane/types.ts";
import { lengthUnits } from "./length-units.ts";
import type { LengthParts, LengthStyle, Unit } from "./types.ts";

/**
 * How far a printed figure may stand from the true one before more has to be shown.
 *
 * @source our choice: half of the smallest mark on an ordinary tape, 1 mm or 1/16 in. A reader cannot
 * lay off less than that, and it is inside the slab tolerance of ±1/16 in of the Joint Industry Foam
 * Standards, section 10
 */
export const cuttingTolerance: Readonly<Record<Unit, Mm>> = { mm: 0.5, cm: 0.5, in: 25.4 / 32 };

/** Steps tried when the author's own hides too much; the last is the finest mark of a workshop rule. */
const finerSteps = [16, 32, 64];
const isSame: Mm = 0.005; // less than a printed decimal
const isNone: Mm = 0.02; // nothing that can be measured, and may print as nothing

/**
 * Take a length apart for printing in the project's unit.
 *
 * Inches are fractions to the nearest `round`, reduced; millimetres are whole; centimetres have one
 * decimal. Where that would hide more than the cutting tolerance, or print a real length as nothing,
 * the figure is made finer: for inches the next mark of a tape, for the others more decimals. `exact`
 * then keeps the value in full unless the finer figure already is the value.
 */
export function lengthParts(mm: Mm, { units, round }: LengthStyle): LengthParts {
  const size = Math.abs(mm);
  const parts = units === "in" ? inchParts(size, round) : metricParts(size, units);
  return { ...parts, isNegative: mm < 0 && !isNothing(parts) };
}

function isNothing({ whole, numerator }: LengthParts): boolean {
  return Number(whole) === 0 && numerator === 0;
}

function inchParts(size: Mm, round: number): LengthParts {
  const author = Math.round(1 / round);
  const isClose = (step: number, limit: Mm) => hidden(size, step) <= limit;
  const isShown = (step: number) => toSteps(size, step) > 0 || size < isNone;
  // Does the author's step tell enough?
  if (isClose(author, cuttingTolerance.in + 1e-9) && isShown(author)) return fraction(size, author);
  const steps = finerSteps.filter((step) => step > author);
  const trueStep = steps.find((step) => isClose(step, isSame) && isShown(step));
  if (trueStep !== undefined) return fraction(size, trueStep);
  const exact = `${trimmed(size / lengthUnits.in, 3)} in`;
  const near = steps.find((step) => isClose(step, cuttingTolerance.in + 1e-9) && isShown(step));
  if (near !== undefined) return { ...fraction(size, near), exact };
  return { ...fraction(0, 1), whole: trimmed(size / lengthUnits.in, 3) };
}

function toSteps(size: Mm, step: number): number {
  // A tie goes up; a hair is added so that 1/16 in, stored as 1.5875 mm, always does.
  return Math.floor((size / lengthUnits.in) * step + 0.5 + 1e-9);
}

function hidden(size: Mm, step: number): Mm {
  return Math.abs(size - (toSteps(size, step) / step) * lengthUnits.in);
}

function fraction(size: Mm, step: number): LengthParts {
  const count = toSteps(size, step);
  const whole = Math.floor(count / step);
  const rest = count - whole * step;
  const shared = rest === 0 ? step : greatestShared(rest, step);
  return {
    isNegative: false,
    whole: whole === 0 && rest > 0 ? "" : String(whole),
    numerator: rest / shared,
    denominator: step / shared,
    unit: "in",
    exact: null,
  };
}

function greatestShared(a: number, b: number): number {
  return b === 0 ? a : greatestShared(b, a % b);
}

function metricParts(size: Mm, unit: "mm" | "cm"): LengthParts {
  const value = size / lengthUnits[unit];
  const decimals = unit === "cm" ? 1 : 0;
  const rounded = roundTo(value, decimals);
  const hides = Math.abs(rounded * lengthUnits[unit] - size) > cuttingTolerance[unit] + 1e-9;
  const vanishes = rounded === 0 && size >= isNone;
  const whole = hides || vanishes ? trimmed(value, decimals + 2) : trimmed(rounded, decimals);
  return { isNegative: false, whole, numerator: 0, denominator: 1, unit, exact: null };
}

function roundTo(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return Math.floor(value * scale + 0.5 + 1e-9) / scale;
}

/** A number with at most so many decimals and no idle noughts. */
function trimmed(value: number, decimals: number): string {
  return String(Number(roundTo(value, decimals).toFixed(decimals)));
}
