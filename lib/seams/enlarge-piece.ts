import { scale } from "../plane/points.ts";
import { scaleLoop } from "../plane/scale-loop.ts";
import type { Ratio, Shape } from "../plane/types.ts";
import type { Piece } from "./types.ts";

/**
 * A piece as it lies on cloth that is still to shrink: seam line, notches, clips and marks enlarged like
 * the cut line, which is already. Lengths in words stay the finished ones.
 *
 * @param shrink share of its length that the cloth loses in the wash
 */
export function enlargePiece(piece: Piece, shrink: Ratio): Piece {
  if (shrink === 0) return piece;
  const by = 1 / (1 - shrink);
  return {
    ...piece,
    finished: enlargeShape(piece.finished, by),
    edges: piece.edges.map((edge) => ({ ...edge, segments: scaleLoop(edge.segments, by) })),
    notches: piece.notches.map((notch) => ({ ...notch, at: scale(notch.at, by) })),
    clips: piece.clips.map(({ from, to }) => ({ from: scale(from, by), to: scale(to, by) })),
    marks: piece.marks.map((mark) => ({ ...mark, at: scale(mark.at, by) })),
  };
}

const enlargeShape = ({ outer, holes }: Shape, by: Ratio): Shape => ({
  outer: scaleLoop(outer, by),
  holes: holes.map((hole) => scaleLoop(hole, by)),
});
