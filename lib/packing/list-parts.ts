import { flattenLoop } from "../plane/flatten-loop.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import type { Loop, Mm, Polygon } from "../plane/types.ts";
import type { BlockSpec, PieceSpec, Project, SheetStock } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";
import { divideBlock } from "./divide-block.ts";
import { equalWedge, twinBlank } from "./equal-wedge.ts";
import type { Part } from "./types.ts";

/**
 * Blocks to be cut from one foam, for all copies. Two equal wedges of one solid, or two copies of one
 * wedge, come from one blank, cut aslant from corner to corner; a blank too thick for the slab is glued up of layers first.
 */
export function slabParts(project: Project, solids: readonly Solid[], foam: string): Part[] {
  const slab = project.stock.find(({ id }) => id === foam);
  const kerf = slab?.kind === "slab" ? slab.kerf : 0;
  const slabs =
    slab?.kind === "slab" ? [slab.size, ...(slab.also ?? []).map(({ size }) => size)] : [];
  return solids.flatMap((solid) => {
    const own = solid.blocks.filter((block) => block.foam === foam);
    const specs = project.solids.find(({ id }) => id === solid.id)?.blocks ?? [];
    const twins = own.flatMap(({ id }) => {
      const spec = specs.find((each) => each.id === id);
      const blank = twinOf(solid.id, spec, { project, kerf, slabs });
      return blank === null ? [] : [blank];
    });
    return own
      .filter(({ id }) => !twins.some(({ first, second }) => second === id && first !== id))
      .map((block): Part => {
        const twin = twins.find(({ first }) => first === block.id);
        return {
          id: `${solid.id}/${block.id}`,
          label: block.id.replaceAll("-", " "),
          // Two copies of a wedge that has no equal beside it come from one blank too.
          copies: twin?.second === block.id ? Math.ceil(project.copies / 2) : project.copies,
          size: twin?.size ?? block.size,
          outline: null,
          canTurn: true,
          ...(twin === undefined ? {} : { twin: `${solid.id}/${twin.second}` }),
          ...(twin?.second === block.id && project.copies % 2 === 1 ? { leavesSpare: true } : {}),
        };
      });
  });
}

interface TwinBlank {
  readonly first: string;
  readonly second: string;
  readonly size: Part["size"];
}

function twinOf(
  solid: string,
  spec: BlockSpec | undefined,
  {
    project,
    kerf,
    slabs,
  }: { readonly project: Project; readonly kerf: Mm; readonly slabs: readonly Part["size"][] },
): TwinBlank | null {
  if (spec?.kind !== "wedge") return null;
  const second = equalWedge(solid, spec, project);
  const size = twinBlank(spec, kerf);
  // A layer more for the kerf of one cut would be dearer than a blank for each.
  const layersOf = (blank: Part["size"]): number => divideBlock(blank, slabs).length;
  if (second === null || layersOf(size) > layersOf(spec.size)) return null;
  return { first: spec.id, second, size };
}

/** Parts to be cut from one sheet, for all copies. */
export function sheetParts(project: Project, sheet: SheetStock): Part[] {
  return partsOf(project, sheet.id).map((piece) => ({
    ...toPart(piece, project),
    size: piece.size,
    outline: isRectangle(piece) ? null : cornered(piece, piece.outline.outer),
    ...(piece.outline.holes.length === 0
      ? {}
      : { holes: piece.outline.holes.map((hole) => cornered(piece, hole)) }),
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

/** A ring of a piece with the lowest-left bound of the piece at the origin. */
function cornered({ outline }: PieceSpec, ring: Loop): Polygon {
  const { min } = loopBounds(outline.outer);
  return flattenLoop(ring).map(([x, y]) => [x - min[0], y - min[1]] as const);
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
