import type { Mm, Point, Polygon } from "../plane/types.ts";
import { boxOfInks, boxOfPoints, boxesOverlap, segmentMeetsBox } from "./boxes.ts";
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
  return besidePiece(rings, isClear, boxOfInks(others).right);
}

/** To the right of the piece: in the first clear place on the way out, at last beyond everything. */
function besidePiece(rings: readonly Polygon[], isClear: (box: Box) => boolean, edge: Mm): Ink[] {
  const piece = boxOfPoints(rings.flat());
  const centre = (piece.top + piece.bottom) / 2;
  const reach = 5;
  const last = edge + HALF + 2;
  const steps = Math.max(1, Math.ceil((last - piece.right - HALF) / 2));
  const places = Array.from({ length: steps }, (_, i) => piece.right + HALF + 1 + i * 2);
  const clear = places.find((x) =>
    isClear({
      left: x - HALF,
      right: x + HALF,
      top: centre - reach - 1,
      bottom: centre + reach + 1,
    }),
  );
  const x = clear ?? last;
  return drawArrow([x, centre + reach], [x, centre - reach], "stock");
}

/** Best about a third of the way out from the middle, level with it. */
function rank([x, y]: Point, [mx, my]: Point): number {
  return Math.abs(Math.abs(x - mx) - 28) + Math.abs(y - my) * 0.7 + (x > mx ? 0 : 0.5);
}
