import type { CutPlan, Lay } from "../packing/types.ts";
import type { Project } from "../project/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import type { Format } from "../units/make-format.ts";

export type { Format };

/** Everything worked out before money and words: what `estimate`, `checks` and `steps` read. */
export interface Work {
  readonly project: Project;
  readonly solids: readonly Solid[];
  readonly covers: readonly Cover[];
  /** Loose pieces of cloth, as cut. */
  readonly pieces: readonly Piece[];
  readonly lays: readonly Lay[];
  readonly slabs: readonly CutPlan[];
  readonly sheets: readonly CutPlan[];
  readonly boards: readonly CutPlan[];
  readonly format: Format;
}

/** One line of the materials table. Every quantity says what it rests on. */
export interface Material {
  readonly id: string;
  readonly item: string;
  /** The total for all copies, in `unit`; lengths in mm and areas in mm² where unit is "mm" or "mm2". */
  readonly quantity: number;
  /** Share of `quantity` that one copy takes. */
  readonly perCopy: number;
  readonly unit: "mm" | "mm2" | "kg" | "piece";
  /** Unit of the author's own lines, such as "pack"; null where `unit` says it all. */
  readonly unitWord: string | null;
  readonly have: number;
  readonly buy: number;
  /** One sentence or two: how the figure was worked out, lengths in the project's unit. */
  readonly basis: string;
  /** Cost of what is still to buy, in the author's currency; null when no price was given. */
  readonly price: number | null;
  readonly group: "foam" | "cloth" | "closing" | "thread" | "sheet" | "board" | "other";
}
