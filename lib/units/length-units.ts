import type { Mm } from "../plane/types.ts";
import type { LengthUnit } from "./types.ts";

/**
 * Millimetres in each unit.
 *
 * @source International yard and pound agreement, 1 July 1959 (US Federal Register 59-5442): 1 yd =
 * 0.9144 m exactly, so 1 ft = 304.8 mm and 1 in = 25.4 mm
 */
export const lengthUnits: Readonly<Record<LengthUnit, Mm>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  ft: 304.8,
  yd: 914.4,
};

/** Every word and sign that stands for a unit of length. */
export const unitWords: ReadonlyMap<string, LengthUnit> = new Map([
  ["mm", "mm"],
  ["millimetre", "mm"],
  ["millimetres", "mm"],
  ["millimeter", "mm"],
  ["millimeters", "mm"],
  ["cm", "cm"],
  ["centimetre", "cm"],
  ["centimetres", "cm"],
  ["centimeter", "cm"],
  ["centimeters", "cm"],
  ["m", "m"],
  ["metre", "m"],
  ["metres", "m"],
  ["meter", "m"],
  ["meters", "m"],
  ["in", "in"],
  ["inch", "in"],
  ["inches", "in"],
  ['"', "in"],
  ["″", "in"],
  ["”", "in"],
  ["''", "in"],
  ["′′", "in"],
  ["ft", "ft"],
  ["foot", "ft"],
  ["feet", "ft"],
  ["'", "ft"],
  ["′", "ft"],
  ["’", "ft"],
  ["yd", "yd"],
  ["yard", "yd"],
  ["yards", "yd"],
]);

/** Pairs that may be written one after the other, such as 2 ft 3 in. */
export const unitsInside: Readonly<Record<LengthUnit, readonly LengthUnit[]>> = {
  mm: [],
  cm: ["mm"],
  m: ["cm", "mm"],
  in: [],
  ft: ["in"],
  yd: ["ft", "in"],
};

/** Words that cannot name a dimension because a formula already gives them a meaning. */
export function isReservedWord(word: string): boolean {
  return unitWords.has(word) || word === "min" || word === "max";
}
