import type { Format } from "../estimate/types.ts";
import { planBoards } from "../packing/plan-boards.ts";
import { planSheets } from "../packing/plan-sheets.ts";
import { planSlabs } from "../packing/plan-slabs.ts";
import type { CutPlan, Part } from "../packing/types.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import type { BoardStock, PieceSpec, Project, SheetStock, SlabStock } from "../project/types.ts";
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
  const blocks = solids.flatMap((solid) =>
    solid.blocks.map((block) => ({ solid: solid.id, block })),
  );
  return {
    slabs: project.stock
      .filter((stock): stock is SlabStock => stock.kind === "slab")
      .flatMap((slab) => {
        const own = blocks.filter(({ block }) => block.foam === slab.id);
        const parts = own.map(({ solid, block }): Part => ({
          id: `${solid}/${block.id}`,
          label: block.id.replaceAll("-", " "),
          copies: project.copies,
          size: block.size,
          outline: null,
          canTurn: true,
        }));
        return parts.length === 0 ? [] : planSlabs(parts, [slab], { say });
      }),
    sheets: project.stock
      .filter((stock): stock is SheetStock => stock.kind === "sheet")
      .flatMap((sheet) => {
        const parts = partsOf(project, sheet.id).map((piece): Part => ({
          ...toPart(piece, project),
          size: piece.size,
          outline: isRectangle(piece) ? null : flattenLoop(piece.outline.outer),
          canTurn: sheet.grain === "none",
        }));
        return parts.length === 0 ? [] : planSheets(parts, [sheet], { say });
      }),
    boards: project.stock
      .filter((stock): stock is BoardStock => stock.kind === "board")
      .flatMap((board) => {
        const parts = partsOf(project, board.id).map((piece): Part => ({
          ...toPart(piece, project),
          size: [piece.size[0]],
          outline: null,
          canTurn: false,
        }));
        return parts.length === 0 ? [] : planBoards(parts, [board], { say });
      }),
  };
}

const partsOf = ({ pieces }: Project, stock: string): readonly PieceSpec[] =>
  pieces.filter((piece) => piece.stock === stock);

const toPart = (piece: PieceSpec, { copies }: Project) => ({
  id: piece.id,
  label: piece.label,
  copies: piece.cut * copies,
});

/** Four straight sides along the axes, as large as the box round them. */
const isRectangle = ({ outline: { outer } }: PieceSpec): boolean =>
  outer.length === 4 &&
  outer.every(({ kind, from, to }) => kind === "line" && (from[0] === to[0] || from[1] === to[1]));
