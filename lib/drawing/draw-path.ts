import type { Point } from "../plane/types.ts";
import { pathOf } from "./paper-path.ts";
import type { PathInk } from "./types.ts";

/** A run of points on the paper as ink. Pale and filled ink is no obstacle to words. */
export function drawPath(
  className: string,
  points: readonly Point[],
  how: { readonly isClosed?: boolean; readonly isObstacle?: boolean } = {},
): PathInk {
  const { isClosed = false, isObstacle = true } = how;
  return { kind: "path", className, paths: [pathOf(points, isClosed)], isObstacle };
}

/** An upright rectangle on the paper, from its upper left corner. */
export function rectanglePoints([x, y]: Point, [width, height]: Point): Point[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}
