import type { Mm, Point, Shape } from "../plane/types.ts";
import type { Piece } from "../seams/types.ts";
import { formatFigure, formatLength } from "../units/index.ts";
import type { LengthStyle } from "../units/types.ts";
import { boxOfPoints } from "./boxes.ts";
import { type Dimension, drawDimension, fitsBetween } from "./draw-dimension.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { measureText } from "./measure-text.ts";
import type { Box, Ink, ToPaper } from "./types.ts";

/** What sizes are read from: a seam line and a cut line, which may be one and the same. */
export type SizedShape = Pick<Piece, "finished" | "outline" | "cutSize">;

/** Distance between lanes of dimension lines, and from the piece to the first. */
const LANE: Mm = 7;

/**
 * Sizes below and to the left, each in a lane of its own: steps of the seam line, finished size,
 * cut size. Steps too short for their figure are left to the walk round the outline.
 */
export function pieceSizes(piece: SizedShape, toPaper: ToPaper, style: LengthStyle): Ink[] {
  const cut = boxOfPoints(shapePoints(piece.outline, toPaper));
  const seam = boxOfPoints(shapePoints(piece.finished, toPaper));
  const corners = piece.finished.outer.map(({ from }) => from);
  const isBare = Math.abs(cut.right - cut.left - (seam.right - seam.left)) < 0.01;
  const inks: Ink[] = [];
  for (const axis of [0, 1] as const) {
    let lane = 0;
    // A figure outside its arrows must clear the extension line of the lane beyond.
    const beyond = (axis === 0 ? cut.right - seam.right : seam.top - cut.top) + 1.5;
    const place = (from: Mm, to: Mm, text: string): Dimension => {
      const reach = LANE * lane;
      return axis === 0
        ? { from: [from, cut.bottom], to: [to, cut.bottom], offset: [0, reach], text, beyond }
        : {
            from: [cut.left, from],
            to: [cut.left, to],
            offset: [-reach, 0],
            text,
            isTurned: true,
            beyond,
          };
    };
    const steps = stepsAlong(corners, axis);
    if (steps.length > 2) {
      lane += 1;
      const before = inks.length;
      steps.slice(1).forEach((value, index) => {
        const start = steps[index] ?? value;
        const [a, b] = [toPaperAlong(start, axis, toPaper), toPaperAlong(value, axis, toPaper)];
        const text = formatFigure(value - start, style);
        const ends = axis === 0 ? [a, b] : [a, b];
        if (fitsBetween(Math.abs(b - a), text))
          inks.push(...drawDimension(place(ends[0] ?? a, ends[1] ?? b, text)));
      });
      if (inks.length === before) lane -= 1;
    }
    const [finished, whole] = realSizes(piece, axis);
    const finishedText = `${formatLength(finished, style)}${isBare ? "" : " finished"}`;
    const cutText = `${formatLength(whole, style)} cut`;
    if (axis === 1 && isLow(seam, finishedText)) {
      inks.push(...lowSizes(seam, cut, { finishedText, cutText, lane, isBare }));
      continue;
    }
    lane += 1;
    inks.push(...overall(place, axis, seam, finishedText));
    if (!isBare) {
      lane += 1;
      inks.push(...overall(place, axis, cut, cutText));
    }
  }
  return inks;
}

/** Height at which a level figure stands between its arrows: its own 3.6 mm, air and two arrows. */
const levelFigure: Mm = 12.3;

/** Room between the piece and a level figure, where the up arrow of a strip stands. */
const besideArrow: Mm = 4;

/** Is it too low for a figure that reads upwards along its side? */
const isLow = ({ top, bottom }: Box, text: string): boolean => !fitsBetween(bottom - top, text);

/** Heights of a strip: figures that read level, the finished one to the left, the cut one to the right. */
function lowSizes(
  seam: Box,
  cut: Box,
  how: {
    readonly finishedText: string;
    readonly cutText: string;
    readonly lane: number;
    readonly isBare: boolean;
  },
): Ink[] {
  const { finishedText, cutText, lane, isBare } = how;
  // A figure in the middle of its line needs half its width; beyond its arrows it stands outside.
  const reach = ({ top, bottom }: Box, text: string): Mm =>
    LANE + (bottom - top >= levelFigure ? besideArrow + measureText(text, "label") / 2 : 0);
  const left = drawDimension({
    from: [cut.left, seam.bottom],
    to: [cut.left, seam.top],
    offset: [-LANE * lane - reach(seam, finishedText), 0],
    text: finishedText,
  });
  if (isBare) return left;
  return [
    ...left,
    ...drawDimension({
      from: [cut.right, cut.bottom],
      to: [cut.right, cut.top],
      offset: [reach(cut, cutText), 0],
      text: cutText,
    }),
  ];
}

function overall(
  place: (from: Mm, to: Mm, text: string) => Dimension,
  axis: 0 | 1,
  box: { left: Mm; right: Mm; top: Mm; bottom: Mm },
  text: string,
): Ink[] {
  const [from, to] = axis === 0 ? [box.left, box.right] : [box.bottom, box.top];
  return drawDimension(place(from, to, text));
}

/** Distinct places of corners along one axis, in order. */
function stepsAlong(corners: readonly Point[], axis: 0 | 1): Mm[] {
  const values = corners.map((corner) => corner[axis]).sort((a, b) => a - b);
  return values.filter((value, index) => index === 0 || value - (values[index - 1] ?? 0) > 0.5);
}

function toPaperAlong(value: Mm, axis: 0 | 1, toPaper: ToPaper): Mm {
  return axis === 0 ? toPaper([value, 0])[0] : toPaper([0, value])[1];
}

/** Finished and cut extent, exact where arcs reach beyond corners. */
function realSizes(piece: SizedShape, axis: 0 | 1): [finished: Mm, cut: Mm] {
  const still: ToPaper = ([x, y]) => [x, -y];
  const box = boxOfPoints(shapePoints(piece.finished, still));
  const finished = axis === 0 ? box.right - box.left : box.bottom - box.top;
  return [finished, piece.cutSize[axis]];
}

/** Points of a shape's outer loop, with the true extremes of its arcs. */
function shapePoints(shape: Shape, toPaper: ToPaper): Point[] {
  return flattenPath(pathOfLoop(shape.outer, toPaper), 0.001);
}
