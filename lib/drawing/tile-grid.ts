import type { Count, Mm } from "../plane/types.ts";
import { segmentMeetsBox } from "./boxes.ts";
import {
  arrangePatterns,
  choosePatterns,
  outlinePoints,
  type PlacedPattern,
} from "./arrange-patterns.ts";
import type { Box, DrawingInput, SheetPaper } from "./types.ts";

/** White round the window: 10 mm that no printer needs to reach, and room for the corner marks. */
export const MARGIN: Mm = 15;
/** Strip by which neighbouring sheets overlap. */
export const OVERLAP: Mm = 12;
/** Bands for check lines and words, to the right and below. */
const RIGHT_BAND: Mm = 14;
const BOTTOM_BAND: Mm = 22;

/** One sheet that carries lines. */
export interface Tile {
  readonly row: Count;
  readonly column: Count;
  /** Row letter and column number: `A2`. */
  readonly reference: string;
  /** What of the field it shows. */
  readonly field: Box;
}

export interface TileGrid {
  readonly patterns: readonly PlacedPattern[];
  readonly tiles: readonly Tile[];
  readonly rows: Count;
  readonly columns: Count;
  /** Where the field shows on every sheet, in sheet millimetres. */
  readonly window: Box;
}

/** Most columns tried; a floor is seldom wider than ten sheets. */
const MOST_COLUMNS = 10;

/** Lay the patterns out on whichever number of columns needs fewest sheets. */
export function tileGrid(input: DrawingInput, paper: SheetPaper): TileGrid {
  const window: Box = {
    left: MARGIN,
    top: MARGIN,
    right: paper.width - MARGIN - RIGHT_BAND,
    bottom: paper.height - MARGIN - BOTTOM_BAND,
  };
  const chosen = choosePatterns(input);
  let best: TileGrid | null = null;
  for (let columns = 1; columns <= MOST_COLUMNS; columns += 1) {
    const grid = gridOf(chosen, window, columns);
    if (!best || grid.tiles.length < best.tiles.length) best = grid;
  }
  return best ?? { patterns: [], tiles: [], rows: 0, columns: 0, window };
}

function gridOf(
  chosen: Parameters<typeof arrangePatterns>[0],
  window: Box,
  wanted: Count,
): TileGrid {
  const [stepX, stepY] = [
    window.right - window.left - OVERLAP,
    window.bottom - window.top - OVERLAP,
  ];
  const patterns = arrangePatterns(chosen, wanted * stepX - 12);
  const runs = patterns.map(({ piece, toField }) => outlinePoints(piece, toField));
  const xs = runs.flat().map(([x]) => x);
  const ys = runs.flat().map(([, y]) => y);
  const columns = Math.max(1, Math.ceil(Math.max(0, ...xs) / stepX));
  const rows = Math.max(1, Math.ceil(Math.max(0, ...ys) / stepY));
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const [left, top] = [column * stepX, row * stepY];
      const field = { left, top, right: left + stepX + OVERLAP, bottom: top + stepY + OVERLAP };
      // Lines in the overlap alone stand on the neighbour as well.
      const own = { left, top, right: left + stepX, bottom: top + stepY };
      const carries = runs.some((points) =>
        points.some((point, index) =>
          segmentMeetsBox(point, points[(index + 1) % points.length] ?? point, own),
        ),
      );
      if (carries) tiles.push({ row, column, reference: tileReference(row, column), field });
    }
  }
  return { patterns, tiles, rows, columns, window };
}

/** Rows go by letters, then by double letters; columns by numbers. */
export function tileReference(row: Count, column: Count): string {
  const letters = row < 26 ? "" : String.fromCharCode(64 + Math.floor(row / 26));
  return `${letters}${String.fromCharCode(65 + (row % 26))}${column + 1}`;
}
