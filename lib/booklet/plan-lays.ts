import { layStock } from "../packing/lay-stock.ts";
import type { Lay } from "../packing/types.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import type { Loop, Mm } from "../plane/types.ts";
import type { FabricStock, Project } from "../project/types.ts";
import { addAllowance } from "../seams/add-allowance.ts";
import type { Solid } from "../solids/types.ts";
import type { ComparedWay, Cover, LayPiece, Piece } from "../seams/types.ts";
import { dropBeaten } from "./drop-beaten.ts";

/** Lay every cloth, and each way of cutting a cover by itself for the comparison. */
export function planLays(
  project: Project,
  covers: readonly Cover[],
  pieces: readonly Piece[],
  solids: readonly Solid[],
): { lays: readonly Lay[]; covers: readonly Cover[] } {
  const cloths = project.stock.filter((stock): stock is FabricStock => stock.kind === "fabric");
  const all = [...covers.flatMap((cover) => cover.pieces), ...pieces];
  const lays = cloths.flatMap((cloth) => {
    const own = all.filter(({ stock }) => stock === cloth.id);
    if (own.length === 0) return [];
    const options = { copies: project.copies, unit: project.units };
    const laid = own.map((piece) => withTwin(toLayPiece(piece), piece, own));
    const lay = layStock(laid, cloth, options);
    if (laid.every(({ printOrigin }) => printOrigin === undefined)) return [lay];
    const free = layStock(
      laid.map(({ printOrigin: _, ...piece }) => piece),
      cloth,
      options,
    );
    return [{ ...lay, printExtra: Math.max(0, lay.length - free.length) }];
  });
  return {
    lays,
    covers: covers.map((cover) => ({
      ...cover,
      ways: dropBeaten(
        cover.ways.map((way) => {
          const cloth = cloths.find(({ id }) => id === cover.fabric)!;
          const solid = solids.find(({ id }) => id === cover.solid)!;
          return { ...way, clothLength: lengthOfWay(way, cover, cloth, solid) };
        }),
      ),
    })),
  };
}

/** Cloth that the panels of one way take by themselves, from new cloth; null where some do not fit. */
function lengthOfWay(way: ComparedWay, cover: Cover, cloth: FabricStock, solid: Solid): Mm | null {
  const seen = new Set(solid.faces.filter(({ isVisible }) => isVisible).map(({ id }) => id));
  const pieces = way.panels.map((panel): LayPiece => {
    const loops = panel.loops.map((loop) => {
      const segments = loop.flatMap((side) => side.segments);
      return { segments, allowances: segments.map(() => cover.seamAllowance) };
    });
    const { outer } = addAllowance(loops, cloth.shrink);
    const isUpright = cloth.direction !== "any" && panel.faces.some(({ face }) => seen.has(face));
    return {
      id: panel.id,
      label: panel.label,
      copies: 1,
      outline: toCorner(flattenForLay(outer)),
      joinAllowance: cover.seamAllowance,
      isUpright,
    };
  });
  const lay = layStock(pieces, { ...cloth, have: 0, also: [], flaws: [] });
  return lay.unplaced.length > 0 ? null : lay.length;
}

/** A piece as the lay sees it: its cut line, lowest-left corner at the origin. */
export function toLayPiece(piece: Piece): LayPiece {
  const corners = flattenForLay(piece.outline.outer);
  const { min } = pointBounds(corners);
  const { printOrigin } = piece;
  return {
    id: piece.id,
    label: piece.label,
    copies: piece.cut,
    outline: toCorner(corners),
    isUpright: piece.isUpright,
    joinAllowance: joinAllowanceOf(piece),
    ...(printOrigin === undefined
      ? {}
      : { printOrigin: [printOrigin[0] - min[0], printOrigin[1] - min[1]] as const }),
  };
}

/** A join is a seam: it does not have what an edge has for a zip or a tape. */
function joinAllowanceOf({ edges }: Piece): Mm {
  const sewn = edges.filter(({ kind }) => kind === "seam" || kind === "hem");
  return Math.max(0, ...(sewn.length > 0 ? sewn : edges).map(({ allowance }) => allowance));
}

/** With the piece it mirrors, by the id that the lay knows it by. */
function withTwin(laid: LayPiece, { mirrorOf }: Piece, all: readonly Piece[]): LayPiece {
  if (mirrorOf === null) return laid;
  const twin = all.find(({ id, panel }) => id === mirrorOf || panel === mirrorOf);
  return { ...laid, mirrorOf: twin?.id ?? null };
}

/**
 * Chords across a hollow stray this far: they leave room, so that nothing overlaps, and a hollow of few
 * corners is laid hundreds of times faster.
 * @source our choice: the width of a pencil line
 */
const hollowChords: Mm = 0.5;

/** Corners of a cut line for the lay. */
const flattenForLay = (loop: Loop): LayPiece["outline"] =>
  loop.flatMap((segment) =>
    flattenLoop(
      [segment],
      segment.kind === "arc" && segment.isClockwise ? hollowChords : undefined,
    ),
  );

function toCorner(corners: LayPiece["outline"]): LayPiece["outline"] {
  const { min } = pointBounds(corners);
  return corners.map(([x, y]) => [x - min[0], y - min[1]] as const);
}
