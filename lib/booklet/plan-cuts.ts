import type { Format } from "../units/make-format.ts";
import { boardParts, sheetParts, slabParts } from "../packing/list-parts.ts";
import { planBoards } from "../packing/plan-boards.ts";
import { planSheets } from "../packing/plan-sheets.ts";
import { planSlabs } from "../packing/plan-slabs.ts";
import type { CutPlan } from "../packing/types.ts";
import type { BoardStock, Project, SheetStock, SlabStock } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";

export interface CutPlans {
  readonly slabs: readonly CutPlan[];
  readonly sheets: readonly CutPlan[];
  readonly boards: readonly CutPlan[];
}

/** Plan the cuts of every slab, sheet and board that something is made of. */
export function planCuts(
  project: Project,
  solids: readonly Solid[],
  { length: say }: Format,
): CutPlans {
  const { stock } = project;
  return {
    slabs: stock
      .filter((one): one is SlabStock => one.kind === "slab")
      .flatMap((slab) => {
        const parts = slabParts(project, solids, slab.id);
        return parts.length === 0 ? [] : planSlabs(parts, [slab], { say });
      }),
    sheets: stock
      .filter((one): one is SheetStock => one.kind === "sheet")
      .flatMap((sheet) => {
        const parts = sheetParts(project, sheet);
        return parts.length === 0 ? [] : planSheets(parts, [sheet], { say });
      }),
    boards: stock
      .filter((one): one is BoardStock => one.kind === "board")
      .flatMap((board) => {
        const parts = boardParts(project, board.id);
        return parts.length === 0 ? [] : planBoards(parts, [board], { say });
      }),
  };
}
