import { lengthUnits } from "./length-units.ts";
import { misread } from "./misread.ts";
import { scanNumber } from "./scan-number.ts";
import type { Reading } from "./types.ts";

/** What a price is for: one of a thing, or a metre of it. */
export type PriceBasis = "each" | "metre";

const perWords: ReadonlyMap<string, readonly [PriceBasis, number]> = new Map([
  ["each", ["each", 1]],
  ["per m", ["metre", 1]],
  ["per metre", ["metre", 1]],
  ["per meter", ["metre", 1]],
  ["per yd", ["metre", 1000 / lengthUnits.yd]],
  ["per yard", ["metre", 1000 / lengthUnits.yd]],
  ["per ft", ["metre", 1000 / lengthUnits.ft]],
  ["per foot", ["metre", 1000 / lengthUnits.ft]],
]);

/**
 * Read a price as the amount for one thing or one metre: "14 per m", "12 per yd", "9 each", or 9.
 *
 * A bare number is for whatever `basis` asks. Prices carry no currency: the author uses one throughout.
 */
export function parsePrice(written: string | number, basis: PriceBasis): Reading<number> {
  const fix =
    basis === "each"
      ? "Write a price such as 9 each"
      : "Write a price such as 14 per m or 12 per yd";
  if (typeof written === "number") {
    const isPrice = Number.isFinite(written) && written >= 0;
    return isPrice ? { ok: true, value: written } : misread(`${written} is not a price`, fix);
  }
  const text = written.trim();
  const number = scanNumber(text, 0);
  if (number === null) {
    const hasSign = /^\p{Sc}|^[A-Z]{3}\s*\d/u.test(text);
    const fault = hasSign
      ? "a price has no currency sign"
      : `${JSON.stringify(written)} is not a price`;
    return misread(fault, fix);
  }
  if (!number.ok) return number;
  const word = text.slice(number.end).trim().replace(/\s+/g, " ");
  if (word === "") return { ok: true, value: number.value };
  const known = perWords.get(word);
  if (known === undefined)
    return misread(`${JSON.stringify(word)} is not a way to sell`, fix, number.end);
  if (known[0] !== basis) {
    const asked = basis === "each" ? "by the piece" : "by the length";
    return misread(`this is sold ${asked}, not "${word}"`, fix, number.end);
  }
  return { ok: true, value: number.value * known[1] };
}
