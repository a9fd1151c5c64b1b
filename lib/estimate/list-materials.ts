import { listBatting } from "./list-batting.ts";
import { listBought } from "./list-bought.ts";
import { listCloth } from "./list-cloth.ts";
import { listClosings } from "./list-closings.ts";
import { listCutStock } from "./list-cut-stock.ts";
import { listFinish } from "./list-finish.ts";
import { listGlue } from "./list-glue.ts";
import { listPiping } from "./list-piping.ts";
import { listThread } from "./list-thread.ts";
import type { Material, Work } from "./types.ts";

/** The materials table, in the order it is printed. */
const lines: readonly (readonly [name: string, list: (work: Work) => readonly Material[]])[] = [
  ["slabs, sheets and boards", listCutStock],
  ["batting", listBatting],
  ["cloth", listCloth],
  ["closings", listClosings],
  ["piping", listPiping],
  ["thread", listThread],
  ["glue", listGlue],
  ["finish", listFinish],
  ["the author's own lines", listBought],
];

/** Everything a project takes, with what is on hand, what to buy and why, for all copies together. */
export function listMaterials(work: Work): Material[] {
  return lines.flatMap(([, list]) => list(work));
}
