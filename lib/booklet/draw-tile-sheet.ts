import { add, fromAngle, midpoint, scale, subtract } from "../plane/points.ts";
import { directionAlong, pointAlong } from "../plane/segments.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { Paper } from "./paper.ts";
import type { PatternPiece, PatternSheet } from "./pattern-sheets.ts";
import { checkMarks, loopPath, path, sheetSvg, stretch, text } from "./sheet-marks.ts";
import type { OnSheet } from "./sheet-marks.ts";
import { liveArea, sheetMargin } from "./tile-piece.ts";
import type { Live, Tile } from "./tile-piece.ts";
import { slugOf } from "./make-notice.ts";

const notchLength: Mm = 6;
const cross: Mm = 3;

/** One full-size sheet of a piece. */
export function drawTileSheet(
  pattern: PatternPiece,
  tile: Tile,
  { paper, title }: { readonly paper: Paper; readonly title: string },
): PatternSheet {
  const { piece, name, grid } = pattern;
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
      `${title} · cut ${piece.cut} · full size on ${paper.label}, print at 100 %`,
    ),
    frameMarks(live, grid.step, tile, grid),
    `<clipPath id="${id}-clip"><rect x="${live.left}" y="${live.top}" width="${live.width}" height="${live.height}"/></clipPath>`,
    `<g clip-path="url(#${id}-clip)">${pieceMarks(pattern, onSheet)}</g>`,
    checkMarks(paper),
  ];
  return {
    id,
    title: heading,
    svg: sheetSvg(paper, `Full-size pattern: ${heading}`, marks),
    words: [],
  };
}

/** Lines, marks and letters of the whole piece; the sheet shows its part of them. */
function pieceMarks({ piece, name, folds }: PatternPiece, onSheet: OnSheet): string {
  const cut = [piece.outline.outer, ...piece.outline.holes]
    .map((loop) => loopPath(loop, onSheet))
    .join("");
  const seam = [piece.finished.outer, ...piece.finished.holes]
    .map((loop) => loopPath(loop, onSheet))
    .join("");
  const middle = onSheet(middleOf(piece.outline.outer.map(({ from }) => from)));
  return [
    path(cut, "cut"),
    path(seam, "seam"),
    ...folds.map((fold) => stretch(onSheet(fold[0]!), onSheet(fold.at(-1)!), "fold")),
    ...piece.notches.map(({ at, towards }) =>
      stretch(onSheet(at), onSheet(add(at, fromAngle(towards, notchLength))), "cut"),
    ),
    ...piece.clips.map(({ from, to }) => stretch(onSheet(from), onSheet(to), "cut clip")),
    ...piece.edges.map(({ seam: letter, segments }) => {
      const segment = segments[Math.floor(segments.length / 2)];
      if (letter === null || segment === undefined) return "";
      const inward = directionAlong(segment, 0.5);
      const beside = add(pointAlong(segment, 0.5), scale([-inward[1], inward[0]], 5));
      return text(onSheet(beside), letter, { anchor: "middle", size: 5 });
    }),
    text(add(middle, [4, 0]), name, { size: 5 }),
    upArrow(middle),
  ].join("");
}

const middleOf = (points: readonly Point[]): Point =>
  scale(
    points.reduce((sum, point) => add(sum, point), [0, 0] as Point),
    1 / points.length,
  );

/** The print runs towards the head of the arrow. */
function upArrow(middle: Point): string {
  const head = subtract(middle, [0, 14]);
  const foot = add(middle, [0, 14]);
  return (
    stretch(foot, head, "arrow") +
    `<path class="head" d="M${head[0]} ${head[1]}l-2.5 6h5z"/>` +
    text(add(midpoint(foot, middle), [4, 2]), "up")
  );
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
