import type { Bounds, Count, Mm, Point } from "../plane/types.ts";
import type { Paper } from "./paper.ts";
import { patternBounds, patternLines } from "./place-pattern.ts";
import type { LaidPiece } from "./place-pattern.ts";

/** Nothing is drawn nearer to an edge than this. @source our choice: printers leave up to 6.7 mm blank */
export const sheetMargin: Mm = 12;
/** Strips kept free for the title (top) and for the check lines (left and bottom). */
export const strips = { top: 14, left: 14, bottom: 16 } as const satisfies Record<string, Mm>;
/** How far neighbouring tiles repeat each other. @source our choice: room for tape and a trimming error */
export const tileOverlap: Mm = 10;

/** The part of a sheet that carries the pattern: lower left corner from the sheet's top left, y down. */
export interface Live {
  readonly left: Mm;
  readonly top: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

/** One sheet of a piece. Rows are counted from the top, columns from the left, both from 1. */
export interface Tile {
  readonly row: Count;
  readonly column: Count;
  /** Place on the piece (y up) of the top left corner of the live part. */
  readonly corner: Point;
}

export interface TileGrid {
  readonly rows: Count;
  readonly columns: Count;
  /** Size of the step from one tile to the next. */
  readonly step: readonly [Mm, Mm];
  readonly bounds: Bounds;
  /** Only tiles that some line crosses. */
  readonly tiles: readonly Tile[];
}

export const liveArea = ({ width, height }: Paper): Live => ({
  left: sheetMargin + strips.left,
  top: sheetMargin + strips.top,
  width: width - 2 * sheetMargin - strips.left,
  height: height - 2 * sheetMargin - strips.top - strips.bottom,
});

/** Cut a full-size piece, or the part of it within `bounds`, up into sheets of paper. */
export function tilePiece(
  laid: LaidPiece,
  paper: Paper,
  bounds: Bounds = patternBounds(laid),
): TileGrid {
  const live = liveArea(paper);
  const lines = patternLines(laid);
  const step = [live.width - tileOverlap, live.height - tileOverlap] as const;
  const columns = tileCount(bounds.max[0] - bounds.min[0], step[0]);
  const rows = tileCount(bounds.max[1] - bounds.min[1], step[1]);
  // The piece lies in the middle of its sheets, clear of their frames.
  const spare = [
    columns * step[0] + tileOverlap - (bounds.max[0] - bounds.min[0]),
    rows * step[1] + tileOverlap - (bounds.max[1] - bounds.min[1]),
  ] as const;
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const row = Math.floor(i / columns);
    const column = i % columns;
    const corner: Point = [
      bounds.min[0] - spare[0] / 2 + column * step[0],
      bounds.max[1] + spare[1] / 2 - row * step[1],
    ];
    return { row: row + 1, column: column + 1, corner };
  });
  return {
    rows,
    columns,
    step,
    bounds,
    tiles: tiles.filter((tile) => isCrossed(tile, live, { lines, bounds })),
  };
}

const tileCount = (size: Mm, step: Mm): Count =>
  Math.max(1, Math.ceil((size - tileOverlap) / step - 1e-9));

/** Whether some line runs through the part of a sheet that lies within the bounds. */
function isCrossed(
  { corner: [left, top] }: Tile,
  live: Live,
  {
    lines,
    bounds: { min, max },
  }: { readonly lines: readonly (readonly Point[])[]; readonly bounds: Bounds },
): boolean {
  const window: Bounds = {
    min: [Math.max(left, min[0]), Math.max(top - live.height, min[1])],
    max: [Math.min(left + live.width, max[0]), Math.min(top, max[1])],
  };
  return lines.some((chain) =>
    chain.some((to, i) => i > 0 && doesCross(chain[i - 1]!, to, window)),
  );
}

/**
 * Whether some of a stretch lies in an upright rectangle.
 * @source Liang and Barsky 1984, "A new concept and method for line clipping"
 */
export function doesCross(from: Point, to: Point, { min, max }: Bounds): boolean {
  let [enter, leave] = [0, 1];
  for (const axis of [0, 1] as const) {
    const travel = to[axis] - from[axis];
    const gaps = [min[axis] - from[axis], max[axis] - from[axis]] as const;
    if (travel === 0) {
      if (gaps[0] > 0 || gaps[1] < 0) return false;
      continue;
    }
    const [first, second] = [gaps[0] / travel, gaps[1] / travel];
    enter = Math.max(enter, Math.min(first, second));
    leave = Math.min(leave, Math.max(first, second));
  }
  return enter <= leave;
}
