import type { Lay } from "../packing/types.ts";
import type { FabricStock } from "../project/types.ts";
import { countOf } from "./count-of.ts";
import type { Format, Material, Work } from "./types.ts";

const metre = 1000;
/** A shorter end of cloth is scrap, in mm. Our choice. */
const leastWorthSaying = 100;

/** One line a cloth: the length its lay takes. */
export function listCloth(work: Work): Material[] {
  return work.lays.flatMap((lay) => {
    const stock = work.project.stock.find((one) => one.id === lay.stock);
    return stock?.kind === "fabric" ? [lineFor(lay, stock, work)] : [];
  });
}

function lineFor(lay: Lay, stock: FabricStock, work: Work): Material {
  const { length } = work.format;
  return {
    id: `cloth/${lay.stock}`,
    item: `${stock.label}, ${length(stock.width)} wide`,
    quantity: lay.length,
    perCopy: lay.length / lay.copies,
    unit: "mm",
    unitWord: null,
    have: lay.have,
    buy: lay.buy,
    basis: basisOf(lay, stock, work),
    price: stock.price === null ? null : (lay.buy / metre) * stock.price,
    group: "cloth",
  };
}

function basisOf(lay: Lay, stock: FabricStock, { format }: Work): string {
  const usable = lay.width - 2 * lay.selvedge;
  const sentences = [
    `${countOf(lay.places.length, "piece")} laid out on ${format.length(usable)} between the selvedges ` +
      `${lay.places.length === 1 ? "takes" : "take"} ${format.length(lay.length)}; ${Math.round(lay.yield * 100)} % of that becomes pieces.`,
  ];
  if (stock.repeat !== null && stock.repeat.along > 0) {
    sentences.push(
      `The print repeats every ${format.length(stock.repeat.along)}, and matching it takes some of the rest.`,
    );
  }
  if (stock.shrink > 0) {
    sentences.push(`The pieces are cut ${percent(stock.shrink)} larger for the first wash.`);
  }
  if (lay.copies > 1 && lay.separately > lay.length) {
    const saved = format.length(lay.separately - lay.length);
    sentences.push(`Laying ${lay.copies} copies together saves ${saved}.`);
  }
  if (lay.buy > 0 && (lay.have > 0 || lay.buy > lay.length)) {
    sentences.push(`${buyWords(lay, stock, format)}.`);
  }
  const left = lay.have + lay.buy - lay.length;
  if (left >= leastWorthSaying) sentences.push(`${format.length(left)} of cloth is left over.`);
  return sentences.join(" ");
}

/** Why the length to buy is not just what the lay takes. */
function buyWords(lay: Lay, stock: FabricStock, { length, shop }: Format): string {
  const hasStart = (stock.repeat?.along ?? 0) > 0 && lay.short > 0;
  const start = hasStart ? ", with one repeat to start the print where you want it" : "";
  const ask = `Ask for ${shop(lay.buy)}, the next length shops cut`;
  if (lay.have > 0)
    return `With ${length(lay.have)} on hand, ${length(lay.short)} is missing${start}. ${ask}`;
  return hasStart ? `${length(lay.short)} is needed${start}. ${ask}` : ask;
}

function percent(share: number): string {
  return `${Number((share * 100).toFixed(1))} %`;
}
