import type { Mm, Point } from "../plane/types.ts";
import type { AllowedSign } from "../units/parse-length.ts";
import { parseLength } from "../units/parse-length.ts";
import type { Reading } from "../units/types.ts";
import { describe } from "./describe.ts";
import { report, standIn } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import { lengthExample } from "./schema-parts.ts";
import type { Place } from "./types.ts";

type Written = string | number;

/** Read a length in mm. A fault is written down and answered with a stand-in. */
export function readLength(
  ledger: Ledger,
  field: string,
  written: Written,
  allow: AllowedSign = "positive",
): Mm {
  const reading = parseLength(written, { units: ledger.units, names: ledger.names, allow });
  return takeReading(ledger, field, { written, reading, expected: lengthExample }) ?? standIn;
}

/** Read a length that may be left out. */
export function readOptional<F>(
  ledger: Ledger,
  field: string,
  written: Written | undefined,
  { missing, allow = "positive" }: { readonly missing: F; readonly allow?: AllowedSign },
): Mm | F {
  return written === undefined ? missing : readLength(ledger, field, written, allow);
}

/** Read three sizes, all above zero. */
export function readSizes(ledger: Ledger, field: string, written: readonly Written[]): Place {
  const [x = standIn, y = standIn, z = standIn] = written.map((each, index) =>
    readLength(ledger, `${field}.${index}`, each),
  );
  return [x, y, z];
}

/** Read where something stands: zero and negative are allowed; left out is the origin. */
export function readPlace(
  ledger: Ledger,
  field: string,
  written: readonly Written[] | undefined,
): Place {
  const [x = 0, y = 0, z = 0] = (written ?? []).map((each, index) =>
    readLength(ledger, `${field}.${index}`, each, "any"),
  );
  return [x, y, z];
}

/** Read a corner of an outline. */
export function readPoint(ledger: Ledger, field: string, written: readonly Written[]): Point {
  const [x, y] = readPlace(ledger, field, written);
  return [x, y];
}

/** Take a reading's value, or write its fault down as: what was expected, what stood there, why. */
export function takeReading<T>(
  ledger: Ledger,
  field: string,
  {
    written,
    reading,
    expected,
  }: { readonly written: unknown; readonly reading: Reading<T>; readonly expected: string },
): T | null {
  if (reading.ok) return reading.value;
  if (reading.isFollowOn) return null;
  const where = reading.at > 0 ? ` (see character ${reading.at + 1})` : "";
  const fault = `expected ${expected}, got ${describe(written)}${where}`;
  report(ledger, field, fault, `${reading.fix}, because ${reading.fault}`);
  return null;
}
