import table from "../../shared/tables/fibres.json" with { type: "json" };
import type { FabricStock } from "../project/types.ts";

/** How a cloth is washed, dried and ironed, in words: one sentence each. */
export type FibreCare = (typeof table.rows)[number];

/** Care by the fibre the author named, null where none was: then its label alone knows. */
export function fibreCare({ fibre }: FabricStock): FibreCare | null {
  return table.rows.find(({ name }) => name === fibre) ?? null;
}
