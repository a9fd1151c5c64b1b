import { loopBounds } from "../plane/loop-bounds.ts";
import { placePoint } from "../plane/place.ts";
import { angleOf, distance, fromAngle } from "../plane/points.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { Mark, Notch, Piece, PieceEdge } from "../seams/types.ts";

/** Notches this near one another are one snip. @source our choice: the width of a chalk line */
const sameSnip: Mm = 1;

/**
 * One pattern for two pieces of one shape: snips that only one of them has carry its name, and so do the
 * places of what is sewn on and the letters of its seams.
 *
 * @param isTurned the second is the mirror image of the first
 */
export function mergeTwin(piece: Piece, twin: Piece, isTurned: boolean): Piece {
  const { min, max } = loopBounds(piece.finished.outer);
  const turn = { turn: 0, isFlipped: true, shift: [min[0] + max[0], 0] as const };
  const point = (at: Point): Point => (isTurned ? placePoint(at, turn) : at);
  const other = twin.notches.map((notch): Notch => ({
    ...notch,
    at: point(notch.at),
    towards: isTurned
      ? angleOf(placePoint(fromAngle(notch.towards), { ...turn, shift: [0, 0] }))
      : notch.towards,
  }));
  const isShared = ({ at }: Notch, others: readonly Notch[]) =>
    others.some((one) => distance(one.at, at) < sameSnip);
  const owned = (notch: Notch, others: readonly Notch[], id: string): Notch =>
    isShared(notch, others) || notch.on !== undefined ? notch : { ...notch, on: id };
  return {
    ...piece,
    notches: [
      ...piece.notches.map((notch) => owned(notch, other, piece.id)),
      ...other
        .filter((notch) => !isShared(notch, piece.notches))
        .map((notch) => ({ ...notch, on: twin.id })),
    ],
    marks: [
      ...piece.marks.map((mark) => named(mark, piece.id)),
      ...twin.marks.map((mark) => named({ ...mark, at: point(mark.at) }, twin.id)),
    ],
    edges: piece.edges.map((edge) => letterFor(edge, twin, point)),
  };
}

const named = (mark: Mark, id: string): Mark =>
  mark.label.includes(" only") ? mark : { ...mark, label: `${mark.label}, ${id} only` };

/** "A", or "A, P3: B" where the twin's seam there has another letter. */
function letterFor(edge: PieceEdge, twin: Piece, point: (at: Point) => Point): PieceEdge {
  const middle = middleOf(edge);
  const there = twin.edges.reduce(
    (best, one) =>
      distance(point(middleOf(one)), middle) < distance(point(middleOf(best)), middle) ? one : best,
    twin.edges[0] ?? edge,
  );
  const own = edge.seam?.split(",")[0];
  if (own === undefined || there.seam === null || there.seam === own) return edge;
  return { ...edge, seam: `${edge.seam}, ${twin.id}: ${there.seam}` };
}

function middleOf({ segments }: PieceEdge): Point {
  const [first, last] = [segments[0]!, segments.at(-1)!];
  return [(first.from[0] + last.to[0]) / 2, (first.from[1] + last.to[1]) / 2];
}
