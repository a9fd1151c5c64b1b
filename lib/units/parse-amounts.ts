import type { Mm2, Ratio } from "../plane/types.ts";
import { kilogramsPerPound } from "./format-amounts.ts";
import { misread } from "./misread.ts";
import { scanNumber } from "./scan-number.ts";
import type { Reading } from "./types.ts";

/**
 * Newtons in a pound of force.
 *
 * @source NIST SP 811 (2008), appendix B.8: pound-force = 4.448 221 615 260 5 N exactly
 */
const newtonsPerPound = 4.4482216152605;
const cubicFoot = 0.3048 ** 3; // in cubic metres

const densityUnits: ReadonlyMap<string, number> = new Map([
  ["kg/m3", 1],
  ["kg/m³", 1],
  ["lb/ft3", kilogramsPerPound / cubicFoot],
  ["lb/ft³", kilogramsPerPound / cubicFoot],
]);

const forceUnits: ReadonlyMap<string, number> = new Map([
  ["N", 1],
  ["lb", newtonsPerPound],
  ["lbf", newtonsPerPound],
]);

const clothUnits: ReadonlyMap<string, number> = new Map([
  ["g/m2", 1],
  ["g/m²", 1],
  ["oz/yd2", (kilogramsPerPound * 1000) / 16 / 0.9144 ** 2],
  ["oz/yd²", (kilogramsPerPound * 1000) / 16 / 0.9144 ** 2],
]);

const areaUnits: ReadonlyMap<string, number> = new Map([
  ["m2", 1e6],
  ["m²", 1e6],
  ["ft2", 304.8 ** 2],
  ["ft²", 304.8 ** 2],
]);

const percentUnits: ReadonlyMap<string, number> = new Map([["%", 0.01]]);

/** Read a density as kg per cubic metre: "35 kg/m3", "1.8 lb/ft3". The unit is required. */
export function parseDensity(written: string | number): Reading<number> {
  return parseAmount(written, {
    units: densityUnits,
    fix: "Write a density such as 35 kg/m3 or 1.8 lb/ft3",
  });
}

/** Read a foam hardness (indentation force) as newtons: "150 N", "35 lb". The unit is required. */
export function parseHardness(written: string | number): Reading<number> {
  return parseAmount(written, {
    units: forceUnits,
    fix: "Write a hardness such as 150 N or 35 lb",
  });
}

/** Read the weight of a cloth as grams per square metre: "280 g/m2", "8 oz/yd2". The unit is required. */
export function parseClothWeight(written: string | number): Reading<number> {
  return parseAmount(written, {
    units: clothUnits,
    fix: "Write a weight such as 280 g/m2 or 8 oz/yd2",
  });
}

/** Read an area as square millimetres: "2.5 m2", "25 ft2". The unit is required. */
export function parseArea(written: string | number): Reading<Mm2> {
  return parseAmount(written, { units: areaUnits, fix: "Write an area such as 2.5 m2 or 25 ft2" });
}

/** Read a percentage as a ratio from 0 up to, but not, 1: "3 %". The sign is required. */
export function parsePercent(written: string | number): Reading<Ratio> {
  const fix = "Write a percentage such as 3 %";
  const reading = parseAmount(written, { units: percentUnits, fix });
  if (reading.ok && reading.value >= 1) return misread("the percentage is 100 or more", fix);
  return reading;
}

interface AmountRules {
  readonly units: ReadonlyMap<string, number>;
  readonly fix: string;
}

function parseAmount(written: string | number, { units, fix }: AmountRules): Reading<number> {
  if (typeof written === "number") return misread(`${written} has no unit`, fix);
  const text = written.trim();
  const number = scanNumber(text, 0);
  if (number === null)
    return misread(`${JSON.stringify(written)} does not start with a number`, fix);
  if (!number.ok) return number;
  const word = text.slice(number.end).trim();
  const factor = units.get(word);
  if (word === "") return misread(`${text} has no unit`, fix, number.end);
  if (factor === undefined) return misread(`${word} is not a unit for this`, fix, number.end);
  if (units !== percentUnits && number.value === 0) return misread("the amount is zero", fix);
  return { ok: true, value: number.value * factor };
}
