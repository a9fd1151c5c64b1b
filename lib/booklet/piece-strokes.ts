import { add, fromAngle } from "../plane/points.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { Mark, Piece } from "../seams/types.ts";
import { patternLines } from "./place-pattern.ts";
import type { LaidPiece } from "./place-pattern.ts";

export const notchLength: Mm = 6;

/** Half the cross of a mark; the ends of what is sewn on have smaller ones. */
export const markReach = (kind: Mark["kind"]): Mm => (kind === "end" ? 3 : 5);

/** Whether a seam line runs inside the cut line: strips of piping have none. */
export const hasAllowance = ({ edges }: Pick<Piece, "edges">): boolean =>
  edges.some(({ allowance }) => allowance > 0);

/** Every stroke that is drawn of a piece: its lines, notches, clips and crosses. */
export const strokesOf = (laid: LaidPiece): readonly (readonly Point[])[] => [
  ...patternLines(laid),
  ...laid.piece.notches.map(({ at, towards }) => [at, add(at, fromAngle(towards, notchLength))]),
  ...laid.piece.clips.map(({ from, to }) => [from, to]),
  ...laid.piece.marks.flatMap(({ at: [x, y], kind }) => {
    const reach = markReach(kind);
    return [
      [[x - reach, y] as Point, [x + reach, y] as Point],
      [[x, y - reach] as Point, [x, y + reach] as Point],
    ];
  }),
];
