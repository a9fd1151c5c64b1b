import type { Mm } from "../plane/types.ts";
import type { Ledger } from "./ledger.ts";
import { readLength, readOptional } from "./read-length.ts";
import { readPrice } from "./read-price.ts";
import type { RawStock } from "./schema.ts";
import type { StockSize } from "./types.ts";

type RawCutStock = Extract<RawStock, { readonly kind: "slab" | "sheet" | "board" }>;

/** Other sizes of a slab, sheet or board, and the least offcut worth keeping, where they are given. */
export function readAlso(
  ledger: Ledger,
  field: string,
  raw: RawCutStock,
): { readonly also?: readonly StockSize[]; readonly leastOffcut?: Mm } {
  const also = raw.also?.map((each, index): StockSize => {
    const at = `${field}.also.${index}`;
    const isSold = each.sold ?? (each.have === undefined || each.price !== undefined);
    return {
      label: each.label ?? null,
      size: readSize(ledger, at, each),
      have: each.have ?? (isSold ? 0 : 1),
      price: readPrice(ledger, at, { written: each.price, basis: "each" }),
      isSold,
      isFirst: each.first ?? !isSold,
    };
  });
  const least = readOptional(ledger, `${field}.leastOffcut`, raw.leastOffcut, {
    missing: undefined,
    allow: "notNegative",
  });
  return {
    ...(also === undefined ? {} : { also }),
    ...(least === undefined ? {} : { leastOffcut: least }),
  };
}

type RawSize = NonNullable<RawCutStock["also"]>[number];

function readSize(ledger: Ledger, at: string, each: RawSize): readonly Mm[] {
  if ("length" in each) return [readLength(ledger, `${at}.length`, each.length)];
  return each.size.map((size, axis) => readLength(ledger, `${at}.size.${axis}`, size));
}
