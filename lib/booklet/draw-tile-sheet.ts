import type { Box } from "../drawing/types.ts";
import type { Mm, Point } from "../plane/types.ts";
import { slugOf } from "./make-notice.ts";
import type { Paper } from "./paper.ts";
import type { PatternPiece, PatternSheet } from "./pattern-sheets.ts";
import { pieceMarks } from "./piece-marks.ts";
import { checkMarks, path, sheetSvg, stretch, text } from "./sheet-marks.ts";
import type { OnSheet } from "./sheet-marks.ts";
import { liveArea, sheetMargin } from "./tile-piece.ts";
import type { Live, Tile, TileGrid } from "./tile-piece.ts";

const cross: Mm = 3;

/** One full-size sheet of a piece that takes several. */
export function drawTileSheet(
  pattern: PatternPiece,
  tile: Tile,
  { paper, title }: { readonly paper: Paper; readonly title: string },
): PatternSheet {
  const { laid, name, grid } = pattern;
  const live = liveArea(paper);
  const onSheet: OnSheet = ([x, y]) => [
    live.left + x - tile.corner[0],
    live.top + tile.corner[1] - y,
  ];
  const id = `tile-${slugOf(name)}-${tile.row}-${tile.column}`;
  const place = `row ${tile.row} of ${grid.rows}, column ${tile.column} of ${grid.columns}`;
  const heading = `${name}, ${place}`;
  const marks = [
    text([sheetMargin, sheetMargin + 5], heading, { size: 4.4 }),
    text(
      [sheetMargin, sheetMargin + 9.5],
      `${title} · cut ${laid.piece.cut} · full size on ${paper.label}, print at 100 %`,
    ),
    frameMarks(live, grid.step, tile, grid),
    `<clipPath id="${id}-clip"><rect x="${live.left}" y="${live.top}" width="${live.width}" height="${live.height}"/></clipPath>`,
    `<g clip-path="url(#${id}-clip)">${pieceMarks(pattern, onSheet, { id: `${id}-half`, window: windowOf(live, tile, grid) })}</g>`,
    checkMarks(paper),
  ];
  return {
    id,
    title: heading,
    svg: sheetSvg(paper, `Full-size pattern: ${heading}`, marks),
    words: [],
  };
}

/** What stays in sight once the sheets are joined: the next one to the right and below covers its strip. */
function windowOf(
  { left, top, width, height }: Live,
  { row, column }: Tile,
  { rows, columns, step }: TileGrid,
): Box {
  return {
    left,
    top,
    right: left + (column < columns ? step[0] : width),
    bottom: top + (row < rows ? step[1] : height),
  };
}

/** Frame, the line where the next sheet's edge lies, and crosses that fall on their twins. */
function frameMarks(
  live: Live,
  step: readonly [Mm, Mm],
  { row, column }: Tile,
  { rows, columns }: { readonly rows: number; readonly columns: number },
): string {
  const { left, top, width, height } = live;
  const right = left + width;
  const low = top + height;
  const isAlone = rows === 1 && columns === 1;
  const crosses = [left, left + step[0]].flatMap((x) =>
    [top, top + step[1]].flatMap((y): readonly Point[] => (isAlone ? [] : [[x, y]])),
  );
  return [
    path(`M${left} ${top}H${right}V${low}H${left}Z`, "frame"),
    column < columns ? stretch([left + step[0], top], [left + step[0], low], "ghost") : "",
    row < rows ? stretch([left, top + step[1]], [right, top + step[1]], "ghost") : "",
    ...crosses.map(([x, y]) =>
      path(`M${x - cross} ${y}h${2 * cross}M${x} ${y - cross}v${2 * cross}`, "cross"),
    ),
  ].join("");
}
