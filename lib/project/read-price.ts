import type { PriceBasis } from "../units/parse-price.ts";
import { parsePrice } from "../units/parse-price.ts";
import type { Ledger } from "./ledger.ts";
import { takeReading } from "./read-length.ts";

/** Read a price; null where none was given. */
export function readPrice(
  ledger: Ledger,
  field: string,
  { written, basis }: { readonly written: string | number | undefined; readonly basis: PriceBasis },
): number | null {
  if (written === undefined) return null;
  const expected = basis === "each" ? "a price such as 9 each" : "a price such as 14 per m";
  const reading = parsePrice(written, basis);
  return takeReading(ledger, `${field}.price`, { written, reading, expected });
}
