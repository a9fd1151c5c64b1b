import type { Mm } from "../plane/types.ts";
import type { ZipStock } from "../project/types.ts";
import type { Closing, Cover } from "../seams/types.ts";
import { countOf } from "./count-of.ts";
import { nextStockLength } from "./next-stock-length.ts";
import type { Material, Work } from "./types.ts";

/** Distance between two pairs of ties. */
const tieSpacing: Mm = 150;
/** Length of one tie, long enough for a bow. */
const tieLength: Mm = 250;

/**
 * What closes each cover.
 *
 * @source our choice: one pair of ties about every 150 mm, 250 mm each; common practice, no source
 */
export function listClosings(work: Work): Material[] {
  return work.covers.flatMap((cover) =>
    cover.closing === null ? [] : lineFor(cover, cover.closing, work),
  );
}

function lineFor(cover: Cover, closing: Closing, work: Work): Material[] {
  switch (closing.kind) {
    case "zip":
      return [zipLine(cover, closing, work)];
    case "hook-and-loop":
      return [hookLine(cover, closing, work)];
    case "ties":
      return [tieLine(cover, closing, work)];
    case "hand-sewn":
      return [];
  }
}

function zipLine(cover: Cover, closing: Closing, { project, format }: Work): Material {
  const stock = project.stock.find(
    (one): one is ZipStock => one.kind === "zip" && one.id === closing.stock,
  );
  const { copies } = project;
  const length = closing.buy > 0 ? closing.buy : closing.have;
  const base = {
    id: `zip/${cover.solid}`,
    have: 0,
    basis: closing.basis,
    group: "closing" as const,
  };
  // Is no zip sold that is long enough, so that it must be chain?
  if (stock !== undefined && closing.buy > 0 && closing.buy > Math.max(0, ...stock.lengths)) {
    const wanted = copies * Math.max(length, closing.run);
    const buy = wanted;
    const price =
      stock.price === null || stock.lengths.length > 0 ? null : (buy / 1000) * stock.price;
    const item = `${stock.label}, chain cut to length, with ${countOf(copies, "slider")}`;
    return {
      ...base,
      item,
      quantity: wanted,
      perCopy: wanted / copies,
      unit: "mm",
      unitWord: null,
      have: 0,
      buy,
      price,
    };
  }
  const longEnough = (stock?.have ?? []).filter((one) => one >= closing.run).length;
  const have = closing.short > 0 ? 0 : Math.min(longEnough, copies);
  const buy = copies - have;
  const sold = nextStockLength(closing.buy, stock?.lengths ?? []) ?? length;
  return {
    ...base,
    item: `${stock?.label ?? "zip"}, ${format.length(sold)}`,
    quantity: copies,
    perCopy: 1,
    unit: "piece",
    unitWord: null,
    have,
    buy,
    price: stock === undefined || stock.price === null ? null : buy * stock.price,
  };
}

function hookLine(cover: Cover, closing: Closing, { project, format }: Work): Material {
  const quantity = project.copies * closing.run;
  return {
    id: `hook-and-loop/${cover.solid}`,
    item: "hook-and-loop tape to sew on, both halves",
    quantity,
    perCopy: closing.run,
    unit: "mm",
    unitWord: null,
    have: 0,
    buy: quantity,
    basis: `The open edge of the ${cover.solid} cover runs ${format.length(closing.run)}, and the tape runs along all of it.`,
    price: null,
    group: "closing",
  };
}

function tieLine(cover: Cover, closing: Closing, { project, format }: Work): Material {
  const pairs = Math.max(2, Math.ceil(closing.run / tieSpacing));
  const perCopy = pairs * 2 * tieLength;
  const quantity = project.copies * perCopy;
  return {
    id: `ties/${cover.solid}`,
    item: "tape for ties",
    quantity,
    perCopy,
    unit: "mm",
    unitWord: null,
    have: 0,
    buy: quantity,
    basis:
      `${pairs} pairs along ${format.length(closing.run)}, one about every ${format.length(tieSpacing)}, ` +
      `each tie ${format.length(tieLength)} long.`,
    price: null,
    group: "closing",
  };
}
