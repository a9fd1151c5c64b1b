import { intersect } from "../plane/clip-polygons.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import type { Count, Mm, Point, Polygon } from "../plane/types.ts";
import type { FabricStock } from "../project/types.ts";
import type { LayPiece } from "../seams/types.ts";
import { fitPieces } from "./cloth-job.ts";
import type { PieceSplit } from "./types.ts";

/** A piece laid in parts. */
export interface SplitPiece {
  readonly split: PieceSplit;
  readonly parts: readonly LayPiece[];
}

/** More parts than this are no panel any more. @source our choice */
const mostParts: Count = 4;
/** Where the piece brings none of its own. @source common practice, no source */
const usualAllowance: Mm = 15;

/**
 * Divide a piece that is wider than the cloth into as few equal parts as fit, by seams straight along
 * the print: a seam allowance is added on both sides of each. Null where up to four parts do not do,
 * or a seam would cut the piece into more pieces than that.
 */
export function splitPiece(piece: LayPiece, cloth: FabricStock): SplitPiece | null {
  const { max } = pointBounds(piece.outline);
  const allowance = piece.joinAllowance || usualAllowance;
  for (let count = 2; count <= mostParts; count++) {
    const share = max[0] / count;
    const parts = Array.from({ length: count }, (_part, i): LayPiece | null => {
      const from = i === 0 ? 0 : i * share - allowance;
      const to = i === count - 1 ? max[0] : (i + 1) * share + allowance;
      const outline = cutOut(piece.outline, from, to, max[1]);
      const label = `${piece.label}, part ${i + 1} of ${count}`;
      // A motif centred on the whole would have to be cut through: the parts lie anywhere.
      const { printOrigin: _, ...rest } = piece;
      return outline === null ? null : { ...rest, id: partId(piece.id, i), label, outline };
    }).filter((part) => part !== null);
    if (parts.length < count) return null;
    if (fitPieces(parts, cloth).tooWide.length > 0) continue;
    const at = Array.from({ length: count - 1 }, (_, i) => (i + 1) * share);
    return {
      split: { piece: piece.id, parts: parts.map(({ id }) => id), at, allowance },
      parts,
    };
  }
  return null;
}

/** What a part of a piece is called in a lay: "P1/2". */
export const partId = (piece: string, index: Count): string => `${piece}/${index + 1}`;

/** The stretch of an outline between two upright lines, moved to the origin; null unless it is one. */
function cutOut(outline: Polygon, from: Mm, to: Mm, height: Mm): Polygon | null {
  const band: Polygon = [
    [from, -1],
    [to, -1],
    [to, height + 1],
    [from, height + 1],
  ];
  const [only, ...more] = intersect([outline], [band]);
  if (only === undefined || more.length > 0) return null;
  const { min } = pointBounds(only);
  return only.map(([x, y]): Point => [x - min[0], y - min[1]]);
}
