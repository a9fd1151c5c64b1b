import type { Format } from "../units/make-format.ts";
import { joinSizes } from "../packing/join-sizes.ts";
import type { CutOptions } from "../packing/make-plans.ts";
import { boardParts, sheetParts, slabParts } from "../packing/list-parts.ts";
import { planBoards } from "../packing/plan-boards.ts";
import { planSheets } from "../packing/plan-sheets.ts";
import { planSlabs } from "../packing/plan-slabs.ts";
import { stockSizes } from "../packing/stock-sizes.ts";
import type { CutPlan, Part } from "../packing/types.ts";
import type { Mm } from "../plane/types.ts";
import type { BoardStock, Project, SheetStock, SlabStock } from "../project/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import { planRolls } from "./plan-rolls.ts";

export interface CutPlans {
  readonly slabs: readonly CutPlan[];
  readonly sheets: readonly CutPlan[];
  /** Boards, then whatever else is cut to length. */
  readonly boards: readonly CutPlan[];
}

/** Plan the cuts of every slab, sheet, board and length that something is made of. */
export function planCuts(
  project: Project,
  solids: readonly Solid[],
  format: Format,
  covers: readonly Cover[] = [],
): CutPlans {
  const slabs = project.stock.filter((stock): stock is SlabStock => stock.kind === "slab");
  const sheets = project.stock.filter((stock): stock is SheetStock => stock.kind === "sheet");
  const boards = project.stock.filter((stock): stock is BoardStock => stock.kind === "board");
  return {
    slabs: slabs.flatMap((slab) =>
      planFor(
        project,
        (one) => slabParts(one, solids, slab.id),
        (parts) =>
          joined(slab, slab.size, format, (sizes, options) =>
            planSlabs(
              parts,
              sizes.map((size) => ({ ...slab, ...size, size: threeOf(size.size) })),
              options,
            ),
          ),
      ),
    ),
    sheets: sheets.flatMap((sheet) =>
      planFor(
        project,
        (one) => sheetParts(one, sheet),
        (parts) =>
          joined(sheet, sheet.size, format, (sizes, options) =>
            planSheets(
              parts,
              sizes.map((size) => ({ ...sheet, ...size, size: twoOf(size.size) })),
              options,
            ),
          ),
      ),
    ),
    boards: [
      ...boards.flatMap((board) =>
        planFor(
          project,
          (one) => boardParts(one, board.id),
          (parts) =>
            joined(board, [board.length], format, (sizes, options) =>
              planBoards(
                parts,
                sizes.map((size) => ({ ...board, ...size, length: size.size[0]! })),
                options,
              ),
            ),
        ),
      ),
      ...planRolls(project, covers, format),
    ],
  };
}

/** The plan of all copies together, and what as many plans of one set would take. */
function planFor(
  project: Project,
  partsOf: (project: Project) => readonly Part[],
  plan: (parts: readonly Part[]) => CutPlan | null,
): readonly CutPlan[] {
  const parts = partsOf(project);
  const together = parts.length === 0 ? null : plan(parts);
  if (together === null) return [];
  const { copies } = project;
  if (copies === 1) return [together];
  const one = plan(partsOf({ ...project, copies: 1 }));
  return [{ ...together, separately: (one?.needed ?? 0) * copies }];
}

function joined(
  stock: SlabStock | SheetStock | BoardStock,
  size: readonly Mm[],
  { length: say, sizes: saySizes, step }: Format,
  plan: (sizes: readonly NamedSize[], options: CutOptions) => readonly CutPlan[],
): CutPlan | null {
  const sizes = stockSizes({ ...stock, size }, saySizes);
  const { leastOffcut } = stock;
  const options = { say, step, ...(leastOffcut === undefined ? {} : { leastOffcut }) };
  const named = sizes.map((each): NamedSize => ({ ...each, label: each.words }));
  return joinSizes(plan(named, options), sizes, stock.id);
}

type NamedSize = Omit<ReturnType<typeof stockSizes>[number], "label"> & { readonly label: string };

const threeOf = ([a = 1, b = 1, c = 1]: readonly Mm[]): readonly [Mm, Mm, Mm] => [a, b, c];
const twoOf = ([a = 1, b = 1]: readonly Mm[]): readonly [Mm, Mm] => [a, b];
