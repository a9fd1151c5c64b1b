import type { Mm, Point, Polygon } from "../plane/types.ts";
import { boxesOverlap, segmentMeetsBox } from "./boxes.ts";
import { insidePoints, isInsideRings } from "./inside-point.ts";
import { drawArrow } from "./mark-arrow.ts";
import { obstacleStretches } from "./place-labels.ts";
import { textBox } from "./text-box.ts";
import type { Box, Ink } from "./types.ts";

/** Lengths tried, longest first. */
const LENGTHS: readonly Mm[] = [18, 14, 10, 7];
const HALF: Mm = 3;

/** A broad arrow to the top, in a clear place of the piece away from its middle; beside it if need be. */
export function drawUpArrow(rings: readonly Polygon[], others: readonly Ink[]): Ink[] {
  const texts = others.filter((ink) => ink.kind === "text").map(textBox);
  const stretches = obstacleStretches(others);
  const isClear = (box: Box) =>
    !texts.some((text) => boxesOverlap(text, box, 0.5)) &&
    !stretches.some(([a, b]) => segmentMeetsBox(a, b, box));
  const points = insidePoints(rings, 240);
  const middle = points[0] ?? [0, 0];
  // The words want the middle: the arrow takes a clear place to the side of it.
  const bySide = [...points].sort((a, b) => rank(a, middle) - rank(b, middle));
  for (const length of LENGTHS) {
    for (const [x, y] of bySide) {
      const box = {
        left: x - HALF,
        right: x + HALF,
        top: y - length / 2 - 1,
        bottom: y + length / 2 + 1,
      };
      const corners: Point[] = [
        [box.left, box.top],
        [box.right, box.bottom],
      ];
      if (corners.every((corner) => isInsideRings(corner, rings)) && isClear(box))
        return drawArrow([x, y + length / 2], [x, y - length / 2], "stock");
    }
  }
  const right = Math.max(...rings.flat().map(([x]) => x)) + 8;
  const ys = rings.flat().map(([, y]) => y);
  const centre = (Math.min(...ys) + Math.max(...ys)) / 2;
  return drawArrow([right, centre + 5], [right, centre - 5], "stock");
}

/** Best about a third of the way out from the middle, level with it. */
function rank([x, y]: Point, [mx, my]: Point): number {
  return Math.abs(Math.abs(x - mx) - 28) + Math.abs(y - my) * 0.7 + (x > mx ? 0 : 0.5);
}
