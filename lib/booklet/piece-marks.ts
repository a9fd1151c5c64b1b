import { flattenPath, pathOfLoop } from "../drawing/paper-path.ts";
import { add, angleOf, fromAngle, leftOf, midpoint, scale } from "../plane/points.ts";
import { directionAlong, pointAlong } from "../plane/segments.ts";
import type { Bounds, Mm, Point } from "../plane/types.ts";
import type { Mark } from "../seams/types.ts";
import type { PatternPiece } from "./pattern-sheets.ts";
import { loopPath, path, stretch, text } from "./sheet-marks.ts";
import { placeName } from "./place-name.ts";
import type { OnSheet } from "./sheet-marks.ts";

const notchLength: Mm = 6;
/** How far inside the seam line the piece is named that alone has a notch. */
const namedIn: Mm = 4;
/** White kept round a half, so that only the fold cuts its lines off. */
const beyond: Mm = 8;
const arrow = { half: 14, head: 6, wing: 2.5 } as const;

/** Lines, marks and letters of a piece, full size; of a half, what lies on its side of the fold. */
export function pieceMarks(pattern: PatternPiece, onSheet: OnSheet, id: string): string {
  const { fold, bounds } = pattern;
  const drawn = outlineMarks(pattern, onSheet);
  const words = wordMarks(pattern, onSheet);
  if (fold === null) return drawn + words;
  const [from, to] = fold.map(onSheet) as [Point, Point];
  const isUpright = Math.abs(from[0] - to[0]) < 1e-6;
  const [x, y] = midpoint(from, to);
  const at: Point = isUpright ? [x + 2, y - 45] : [x - 45, y - 2.5];
  return (
    `<clipPath id="${id}">${clipBox(bounds, isUpright, onSheet)}</clipPath>` +
    `<g clip-path="url(#${id})">${drawn}</g>` +
    stretch(from, to, "on-fold") +
    text(at, "Lay on the fold, or turn over along this line", { isUpright, size: 4 }) +
    words
  );
}

function outlineMarks({ laid: { piece, folds } }: PatternPiece, onSheet: OnSheet): string {
  const loops = ({ outer, holes }: typeof piece.outline): string =>
    [outer, ...holes].map((loop) => loopPath(loop, onSheet)).join("");
  return [
    path(loops(piece.outline), "cut"),
    path(loops(piece.finished), "seam"),
    ...folds.map((fold) => stretch(onSheet(fold[0]!), onSheet(fold.at(-1)!), "fold")),
    ...piece.notches.map(({ at, towards, on }) => {
      const words = add(at, fromAngle(towards, -namedIn));
      return (
        stretch(onSheet(at), onSheet(add(at, fromAngle(towards, notchLength))), "cut") +
        (on === undefined ? "" : text(onSheet(words), on, { anchor: "middle", size: 3 }))
      );
    }),
    ...piece.clips.map(({ from, to }) => stretch(onSheet(from), onSheet(to), "cut clip")),
    ...piece.marks.map((mark) => crossMark(mark, onSheet)),
    ...piece.edges.map(({ seam: letter, segments }) => {
      const segment = segments[Math.floor(segments.length / 2)];
      if (letter === null || segment === undefined) return "";
      const beside = add(pointAlong(segment, 0.5), scale(leftOf(directionAlong(segment, 0.5)), 5));
      return text(onSheet(beside), letter, { anchor: "middle", size: 5 });
    }),
  ].join("");
}

/** A cross to prick through where something is sewn on, with its name; smaller at the ends. */
function crossMark({ at, label, kind }: Mark, onSheet: OnSheet): string {
  const reach = kind === "end" ? 3 : 5;
  const [x, y] = onSheet(at);
  return (
    stretch([x - reach, y], [x + reach, y], "cut") +
    stretch([x, y - reach], [x, y + reach], "cut") +
    text([x + reach + 1, y - 1.5], label, { size: 3.5 })
  );
}

/** Name and arrow of the print, in the middle of what is drawn. */
function wordMarks(
  { laid: { piece, up }, name, fold, bounds }: PatternPiece,
  onSheet: OnSheet,
): string {
  const { min, max } = bounds;
  const corners = piece.outline.outer.map(({ from }) => from);
  const real = fold === null ? middleOf(corners) : midpoint(min, max);
  const along = (by: Mm): Point => onSheet(add(real, scale(up, by)));
  const [head, foot] = [along(arrow.half), along(-arrow.half)];
  const side = leftOf(up);
  const wing = (by: Mm): Point =>
    onSheet(add(add(real, scale(up, arrow.half - arrow.head)), scale(side, by)));
  const [left, right] = [wing(arrow.wing), wing(-arrow.wing)];
  const isLying = Math.abs(Math.sin(angleOf(up))) < 0.5;
  const middle = onSheet(real);
  const beside: Point = isLying ? add(middle, [-arrow.half, -3]) : add(middle, [4, 0]);
  const size = 5;
  const outline = flattenPath(pathOfLoop(piece.outline.outer, onSheet), 0.1);
  // Words that lie along the arrow have their place; those beside it may slide up and down.
  const at = isLying ? beside : placeName(name, beside, { outline, size });
  return (
    text(at, name, { size }) +
    stretch(foot, head, "arrow") +
    `<path class="head" d="M${head[0]} ${head[1]}L${left[0]} ${left[1]}L${right[0]} ${right[1]}Z"/>` +
    text(isLying ? add(middle, [-arrow.half, 5]) : add(at, [0, 6]), "up")
  );
}

const middleOf = (points: readonly Point[]): Point =>
  scale(
    points.reduce((sum, point) => add(sum, point), [0, 0] as Point),
    1 / points.length,
  );

/** The half and some white round it, cut off at the fold alone. */
function clipBox({ min, max }: Bounds, isUpright: boolean, onSheet: OnSheet): string {
  const [left, low] = onSheet([
    min[0] - (isUpright ? 0 : beyond),
    min[1] - (isUpright ? beyond : 0),
  ]);
  const [right, top] = onSheet([max[0] + beyond, max[1] + beyond]);
  return `<rect x="${left}" y="${top}" width="${right - left}" height="${low - top}"/>`;
}
