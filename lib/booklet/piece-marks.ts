import type { Box } from "../drawing/types.ts";
import { leftOf, add, fromAngle, scale, subtract, unit } from "../plane/points.ts";
import type { Bounds, Mm, Point } from "../plane/types.ts";
import type { Mark } from "../seams/types.ts";
import type { PatternPiece } from "./pattern-sheets.ts";
import { hasAllowance, markReach, notchLength } from "./piece-strokes.ts";
import { arrowWing, placePieceWords } from "./piece-words.ts";
import type { OnSheet } from "./sheet-marks.ts";
import { loopPath, path, stretch, text } from "./sheet-marks.ts";

/** White kept round a half, so that only the fold cuts its lines off. */
const beyond: Mm = 8;
const arrowHead: Mm = 6;

export interface MarksOn {
  readonly id: string;
  /** The part of the sheet that no other sheet covers. */
  readonly window: Box;
}

/** Lines, marks and words of a piece on one sheet; of a half, what lies on its side of the fold. */
export function pieceMarks(
  pattern: PatternPiece,
  onSheet: OnSheet,
  { id, window }: MarksOn,
): string {
  const { fold, bounds } = pattern;
  const drawn = outlineMarks(pattern, onSheet);
  const { words, arrow } = placePieceWords(pattern, onSheet, window);
  const written =
    `<g class="words">${words.map(({ at, words: said, ...how }) => text(at, said, how)).join("")}</g>` +
    (arrow === null ? "" : arrowMark(arrow));
  if (fold === null) return drawn + written;
  const [from, to] = fold.map(onSheet) as [Point, Point];
  const isUpright = Math.abs(from[0] - to[0]) < 1e-6;
  return (
    `<clipPath id="${id}">${clipBox(bounds, isUpright, onSheet)}</clipPath>` +
    `<g clip-path="url(#${id})">${drawn}</g>` +
    stretch(from, to, "on-fold") +
    written
  );
}

function outlineMarks({ laid: { piece, folds } }: PatternPiece, onSheet: OnSheet): string {
  const loops = ({ outer, holes }: typeof piece.outline): string =>
    [outer, ...holes].map((loop) => loopPath(loop, onSheet)).join("");
  return [
    path(loops(piece.outline), "cut"),
    hasAllowance(piece) ? path(loops(piece.finished), "seam") : "",
    ...folds.map((fold) => stretch(onSheet(fold[0]!), onSheet(fold.at(-1)!), "fold")),
    ...piece.notches.map(({ at, towards }) =>
      stretch(onSheet(at), onSheet(add(at, fromAngle(towards, notchLength))), "cut"),
    ),
    ...piece.clips.map(({ from, to }) => stretch(onSheet(from), onSheet(to), "cut clip")),
    ...piece.marks.map((mark) => crossMark(mark, onSheet)),
  ].join("");
}

/** A cross to prick through where something is sewn on; smaller at the ends. */
function crossMark({ at, kind }: Mark, onSheet: OnSheet): string {
  const reach = markReach(kind);
  const [x, y] = onSheet(at);
  return (
    stretch([x - reach, y], [x + reach, y], "cut") + stretch([x, y - reach], [x, y + reach], "cut")
  );
}

function arrowMark([foot, head]: readonly [Point, Point]): string {
  const up = unit(subtract(head, foot));
  const wing = (by: Mm): string =>
    add(add(head, scale(up, -arrowHead)), scale(leftOf(up), by))
      .map((value) => Number(value.toFixed(3)))
      .join(" ");
  const tip = head.map((value) => Number(value.toFixed(3))).join(" ");
  return (
    stretch(foot, head, "arrow") +
    `<path class="head" d="M${tip}L${wing(arrowWing)}L${wing(-arrowWing)}Z"/>`
  );
}

/** The half and some white round it, cut off at the fold alone. */
function clipBox({ min, max }: Bounds, isUpright: boolean, onSheet: OnSheet): string {
  const [left, low] = onSheet([
    min[0] - (isUpright ? 0 : beyond),
    min[1] - (isUpright ? beyond : 0),
  ]);
  const [right, top] = onSheet([max[0] + beyond, max[1] + beyond]);
  return `<rect x="${left}" y="${top}" width="${right - left}" height="${low - top}"/>`;
}
