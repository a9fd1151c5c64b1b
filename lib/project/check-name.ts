import { nearestWord } from "../units/nearest-word.ts";
import { inWords } from "./describe.ts";
import type { Ledger } from "./ledger.ts";
import { isDropped, report } from "./ledger.ts";
import { sidesOf } from "./sides-of.ts";
import type { BlockSpec, Stock } from "./types.ts";

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

/** Check that `<block>/<side>` names a block of the solid and a side that its kind has. */
export function checkFace(
  ledger: Ledger,
  field: string,
  { name, blocks }: { readonly name: string; readonly blocks: readonly BlockSpec[] },
): void {
  const [id = "", side, ...more] = name.split("/");
  const ids = blocks.map((block) => block.id);
  if (side === undefined || more.length > 0) {
    const fix = `Write block/side, such as ${ids[0] ?? "pad"}/top`;
    report(ledger, field, `expected a face such as ${ids[0] ?? "pad"}/top, got "${name}"`, fix);
    return;
  }
  const block = blocks.find((each) => each.id === id);
  const [, solid = ""] = field.split(".");
  if (block === undefined && isDropped(ledger, `solids.${solid}.blocks.${id}`)) return;
  if (block === undefined) {
    const fix = suggest(id, ids, "Name a block of this solid");
    report(ledger, field, `names the block ${id}, which this solid does not have`, fix);
    return;
  }
  const sides = sidesOf(block);
  if (sides.includes(side)) return;
  const nearest = nearestWord(side, sides);
  const meant = nearest === null ? "" : `Write ${id}/${nearest} if that was meant; `;
  const fix = `${meant}${meant ? "its" : "Its"} sides are ${inWords(sides)}`;
  report(ledger, field, `names ${name}, but a ${block.kind} has no side ${side}`, fix);
}

function suggest(name: string, known: readonly string[], otherwise: string): string {
  const nearest = nearestWord(name, known);
  if (nearest !== null) return `Write ${nearest} if that was meant`;
  return known.length > 0 ? `Use ${known.join(" or ")}` : otherwise;
}
