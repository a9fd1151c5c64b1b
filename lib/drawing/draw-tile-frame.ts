import type { Point } from "../plane/types.ts";
import { ringInk } from "./dot-ink.ts";
import { pathOf } from "./paper-path.ts";
import { OVERLAP, type Tile, tileReference } from "./tile-grid.ts";
import type { Box, Ink, Label } from "./types.ts";

/** Which neighbours a tile has. */
export interface Neighbours {
  readonly right: boolean;
  readonly below: boolean;
}

/**
 * The frame of a sheet: its left and upper lines are where it is cut off, the broken lines are where
 * the next sheet's edge goes, the ringed crosses must meet.
 */
export function drawTileFrame(window: Box, neighbours: Neighbours): Ink[] {
  const { left, top, right, bottom } = window;
  const [seamX, seamY] = [right - OVERLAP, bottom - OVERLAP];
  const frame = pathOf(
    [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    true,
  );
  const joins = [
    ...(neighbours.right
      ? [
          pathOf([
            [seamX, top],
            [seamX, bottom],
          ]),
        ]
      : []),
    ...(neighbours.below
      ? [
          pathOf([
            [left, seamY],
            [right, seamY],
          ]),
        ]
      : []),
  ];
  const corners: Point[] = [
    [left, top],
    [seamX, top],
    [left, seamY],
    [seamX, seamY],
  ];
  return [
    { kind: "path", className: "line frame", paths: [frame], isObstacle: true },
    { kind: "path", className: "line join", paths: joins, isObstacle: true },
    ...corners.flatMap(cornerMark),
  ];
}

/** In each overlap, clear of the pattern's lines, the name of the sheet that goes there. */
export function joinLabels(tile: Tile, window: Box, neighbours: Neighbours): Label[] {
  const { left, top, right, bottom } = window;
  const shares = [0.5, 0.35, 0.65, 0.2, 0.8, 0.42, 0.58, 0.28, 0.72];
  const label = (reference: string, place: (share: number) => Point): Label => ({
    lines: [reference],
    style: "name",
    candidates: shares.map((share) => ({ at: place(share), anchor: "middle", leader: null })),
  });
  const beside = (share: number): Point => [right - OVERLAP / 2, top + (bottom - top) * share];
  const below = (share: number): Point => [left + (right - left) * share, bottom - OVERLAP / 2];
  return [
    ...(neighbours.right ? [label(tileReference(tile.row, tile.column + 1), beside)] : []),
    ...(neighbours.below ? [label(tileReference(tile.row + 1, tile.column), below)] : []),
  ];
}

/** A cross in a ring, kept inside the margin. */
function cornerMark([x, y]: Point): Ink[] {
  const cross = [
    pathOf([
      [x - 4, y],
      [x + 4, y],
    ]),
    pathOf([
      [x, y - 4],
      [x, y + 4],
    ]),
  ];
  return [
    { kind: "path", className: "line frame", paths: cross, isObstacle: true },
    { ...ringInk([x, y], 2, "line frame"), isObstacle: true },
  ];
}
