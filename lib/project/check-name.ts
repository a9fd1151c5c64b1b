import type { Ledger } from "./ledger.ts";
import { isDropped, report } from "./ledger.ts";
import { suggest } from "./suggest.ts";
import type { Stock } from "./types.ts";

/** Check that a stock exists and is of a kind that serves here. */
export function checkStock(
  ledger: Ledger,
  field: string,
  {
    name,
    stock,
    kinds,
  }: {
    readonly name: string;
    readonly stock: readonly Stock[];
    readonly kinds: readonly Stock["kind"][];
  },
): Stock | null {
  const found = stock.find(({ id }) => id === name);
  const fitting = stock.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id);
  const wanted = kinds.join(" or ");
  if (found !== undefined && kinds.includes(found.kind)) return found;
  if (isDropped(ledger, `stock.${name}`)) return null;
  const fault =
    found === undefined
      ? `names ${name}, which is not in stock`
      : `names ${name}, which is a ${found.kind}, not a ${wanted}`;
  report(ledger, field, fault, suggest(name, fitting, `List a ${wanted} under stock`));
  return null;
}

/** Check that a piece exists. */
export function checkPiece(
  ledger: Ledger,
  field: string,
  { name, pieces }: { readonly name: string; readonly pieces: readonly string[] },
): void {
  if (pieces.includes(name) || isDropped(ledger, `pieces.${name}`)) return;
  const fix = suggest(name, pieces, "List it under pieces");
  report(ledger, field, `names ${name}, which is not in pieces`, fix);
}
