import { flattenLoop } from "../plane/flatten-loop.ts";
import type { PieceSpec, Project, SheetStock } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";
import type { Part } from "./types.ts";

/** Blocks to be cut from one foam, for all copies. */
export function slabParts(project: Project, solids: readonly Solid[], foam: string): Part[] {
  return solids.flatMap((solid) =>
    solid.blocks
      .filter((block) => block.foam === foam)
      .map((block) => ({
        id: `${solid.id}/${block.id}`,
        label: block.id.replaceAll("-", " "),
        copies: project.copies,
        size: block.size,
        outline: null,
        canTurn: true,
      })),
  );
}

/** Parts to be cut from one sheet, for all copies. */
export function sheetParts(project: Project, sheet: SheetStock): Part[] {
  return partsOf(project, sheet.id).map((piece) => ({
    ...toPart(piece, project),
    size: piece.size,
    outline: isRectangle(piece) ? null : flattenLoop(piece.outline.outer),
    canTurn: sheet.grain === "none",
  }));
}

/** Parts to be cut from one board, for all copies. */
export function boardParts(project: Project, board: string): Part[] {
  return partsOf(project, board).map((piece) => ({
    ...toPart(piece, project),
    size: [piece.size[0]],
    outline: null,
    canTurn: false,
  }));
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
