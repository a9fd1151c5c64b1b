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

function zipLine(cover: Cover, closing: Closing, work: Work): Material {
  const { project, format } = work;
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
  const planned = stock === undefined ? null : chainOf(cover, stock, work);
  if (planned !== null) {
    const { quantity, buy } = planned;
    const cut = quantity > buy ? " Cut what is on hand first: see the cut plan." : "";
    return {
      ...base,
      item: `${stock!.label}, chain cut to length, with ${countOf(copies, "slider")}`,
      quantity,
      perCopy: quantity / copies,
      unit: "mm",
      unitWord: null,
      have: quantity - buy,
      buy,
      basis: `${closing.basis}${cut}`,
      price: stock!.price === null ? null : (buy / 1000) * stock!.price,
    };
  }
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

/** What the cut plan of a chain gives a cover, and how much of that is cut from new chain. */
function chainOf(
  cover: Cover,
  stock: ZipStock,
  { boards }: Work,
): { readonly quantity: Mm; readonly buy: Mm } | null {
  const plan = boards.find((one) => one.stock === stock.id);
  if (plan === undefined) return null;
  const onHand = (plan.sizes ?? []).reduce((sum, { used, buy }) => sum + used - buy, 0);
  const runs = plan.used.flatMap(({ stockIndex, places }) =>
    places
      .filter(({ part }) => part === `zip/${cover.solid}`)
      .map(({ size }) => ({ length: size[0]!, isNew: stockIndex >= onHand })),
  );
  const total = (list: typeof runs): Mm => list.reduce((sum, { length }) => sum + length, 0);
  return { quantity: total(runs), buy: total(runs.filter(({ isNew }) => isNew)) };
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
