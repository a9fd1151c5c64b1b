import type { Panel } from "../panels/types.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { Piece, PieceEdge } from "../seams/types.ts";
import { markLine } from "./mark-line.ts";
import { markSegments, markShape } from "./mark-outline.ts";
import { pathOf } from "./paper-path.ts";
import type { Candidate, Ink, Label, Mark, ToPaper } from "./types.ts";

/** Length of a notch where the allowance of its seam is unknown. @source common practice, no source */
const NOTCH: Mm = 6;

/** Every line of a piece: cut line, seam line edge by edge, folds, notches, clip marks. */
export function pieceLines(piece: Piece, panel: Panel | null, toPaper: ToPaper): Ink[] {
  const marks: Mark[] = [
    markShape(piece.outline, "cut"),
    ...seamLines(piece),
    ...foldLines(piece, panel),
    ...notchLines(piece),
    ...piece.clips.map(({ from, to }) => markLine([from, to], "stock")),
  ];
  return [
    ...marks.flatMap((mark) => mark(toPaper)),
    ...piece.marks.map(({ at, kind }) => crossInk(toPaper(at), kind === "end" ? 1 : 1.6)),
  ];
}

/** A small cross where something is sewn on, smaller at its ends. */
function crossInk([x, y]: Point, reach: Mm): Ink {
  const paths = [
    pathOf([
      [x - reach, y - reach],
      [x + reach, y + reach],
    ]),
    pathOf([
      [x - reach, y + reach],
      [x + reach, y - reach],
    ]),
  ];
  return { kind: "path", className: "line stock", paths, isObstacle: true };
}

/** What each cross is for, beside it; ends that lie on the panel of their middle need no words. */
export function markLabels(piece: Piece, toPaper: ToPaper): Label[] {
  const middles = piece.marks.filter(({ kind }) => kind === "middle").map(({ label }) => label);
  const worded = piece.marks.filter(
    ({ label, kind }) =>
      kind === "middle" || !middles.some((middle) => label.endsWith(` ${middle}`)),
  );
  return worded.map(({ at, label }) => {
    const [x, y] = toPaper(at);
    const beside = [4, 8, 14].flatMap((reach): Candidate[] => [
      { at: [x + reach, y], anchor: "start", leader: reach > 4 ? [x, y] : null },
      { at: [x - reach, y], anchor: "end", leader: reach > 4 ? [x, y] : null },
      { at: [x, y - reach - 1], anchor: "middle", leader: reach > 4 ? [x, y] : null },
      { at: [x, y + reach + 1], anchor: "middle", leader: reach > 4 ? [x, y] : null },
    ]);
    // Where little is clear round it, aslant and further off.
    const aslant = [8, 14, 20, 28].flatMap((reach): Candidate[] =>
      [-1, 1].flatMap((up) => [
        { at: [x + reach, y + up * reach], anchor: "start", leader: [x, y] },
        { at: [x - reach, y + up * reach], anchor: "end", leader: [x, y] },
      ]),
    );
    return { lines: [`${label} here`], style: "label", candidates: [...beside, ...aslant] };
  });
}

/** The seam line; stretches left open are dotted wider, hems are folds. */
export function seamLines(piece: Piece): Mark[] {
  if (piece.edges.length === 0) return isBare(piece) ? [] : [markShape(piece.finished, "seam")];
  return piece.edges.flatMap((edge) =>
    edge.allowance > 0.01 ? [markSegments(edge.segments, edgeClass(edge))] : [],
  );
}

function edgeClass({ kind }: PieceEdge): string {
  switch (kind) {
    case "seam":
      return "seam";
    case "opening":
    case "closing":
      return "seam opening";
    case "hem":
      return "fold";
  }
}

/** A piece cut without allowance has one line, not two. */
function isBare({ finished, outline }: Piece): boolean {
  const [a, b] = [finished.outer[0]?.from, outline.outer[0]?.from];
  return !a || !b || Math.hypot(a[0] - b[0], a[1] - b[1]) < 0.01;
}

/** Folds of the panel, moved to where the piece lies should it have been shifted. */
export function foldLines(piece: Piece, panel: Panel | null): Mark[] {
  if (!panel) return [];
  const [dx, dy] = pieceShift(piece, panel);
  const move = ([x, y]: Point): Point => [x + dx, y + dy];
  return panel.folds.map(({ from, to }) => markLine([move(from), move(to)], "fold"));
}

/** From the panel's own coordinates to the piece's: their lowest-left corners agree. */
export function pieceShift(piece: Piece, panel: Panel): Point {
  const [a, b] = [lowest(piece.finished.outer), lowest(panel.shape.outer)];
  return [a[0] - b[0], a[1] - b[1]];
}

function lowest(loop: Piece["finished"]["outer"]): Point {
  const xs = loop.map(({ from }) => from[0]);
  const ys = loop.map(({ from }) => from[1]);
  return [Math.min(...xs), Math.min(...ys)];
}

function notchLines(piece: Piece): Mark[] {
  return piece.notches.map(({ at, towards, seam }) => {
    const allowance = piece.edges.find((edge) => edge.seam === seam)?.allowance ?? 0;
    const reach = allowance > 0.5 ? allowance : NOTCH;
    const end: Point = [at[0] + Math.cos(towards) * reach, at[1] + Math.sin(towards) * reach];
    return markLine([at, end], "stock");
  });
}
