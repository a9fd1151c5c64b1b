import type { Count, Mm, Point } from "../plane/types.ts";
import type { Paper } from "./paper.ts";
import type { PatternPiece, PatternSheet } from "./pattern-sheets.ts";
import { checkMarks, loopPath, path, sheetSvg, text } from "./sheet-marks.ts";
import { patternBounds } from "./place-pattern.ts";
import type { LaidPiece } from "./place-pattern.ts";
import { liveArea, sheetMargin } from "./tile-piece.ts";

/** Depth kept at the top of the sheet for words, with room for notes of two lines. */
const mapWordsDepth: Mm = 62;
/** Height of a further line of them, and about how many characters it holds. @source measured on a print */
const [noteLine, noteCharacters]: readonly [Mm, Count] = [5.3, 85];
const across = 3;
const gap: Mm = 6;

/** The first sheet: how to check the print, and how the sheets of each piece join. */
export function drawMapSheet(
  pieces: readonly PatternPiece[],
  {
    paper,
    title,
    number,
    notes,
  }: {
    readonly paper: Paper;
    readonly title: string;
    readonly number: number;
    /** What the sheet says of its pieces below its own words. */
    readonly notes: readonly string[];
  },
): PatternSheet {
  const live = liveArea(paper);
  const lines = notes.reduce((sum, { length }) => sum + Math.ceil(length / noteCharacters), 0);
  const depth = mapWordsDepth + Math.max(0, lines - 2) * noteLine;
  const cellWidth = (live.width - (across - 1) * gap) / across;
  const cellHeight = (live.height - depth - (across - 1) * gap) / across;
  const maps = pieces.map((pattern, i) => {
    const column = i % across;
    const row = Math.floor(i / across);
    const corner: Point = [
      live.left + column * (cellWidth + gap),
      live.top + depth + row * (cellHeight + gap),
    ];
    return drawMap(pattern, corner, [cellWidth, cellHeight]);
  });
  const heading = "Map of the sheets";
  return {
    id: `map-${number}`,
    title: heading,
    svg: sheetSvg(paper, `${heading} of ${title}`, [
      text([sheetMargin, sheetMargin + 5], heading, { size: 4.4 }),
      text(
        [sheetMargin, sheetMargin + 9.5],
        `${title} · full size on ${paper.label}, print at 100 %`,
      ),
      ...maps,
      checkMarks(paper),
    ]),
    words: [
      `Print on ${paper.label} at 100 %, with "fit to page" off.`,
      "Print this sheet first. Measure the two lines below and the two at the left: 100 mm and 4 in.",
      "If a line is off by more than half a millimetre, change the printer's scale and print again.",
      ...(pieces.length === 0
        ? [
            "Every piece of this project has square corners. Draw it on the cloth by the walk in the booklet.",
          ]
        : [
            "Trim each sheet along its frame at the top and the left. Lay it on the dashed line of the sheet before it.",
            "The crosses of two sheets must fall on one another. Tape them flat.",
            "A piece that fits on one sheet may share it with others: cut them apart.",
            "No sheet is needed for a piece with square corners: the walk in the booklet is quicker and as true.",
          ]),
    ],
  };
}

function drawMap(
  { laid, name, grid }: PatternPiece,
  [left, top]: Point,
  [width, height]: Point,
): string {
  const caption: Mm = 6;
  // The whole piece, even where only half of it has sheets.
  const { min, max } = patternBounds(laid);
  const whole: Point = [max[0] - min[0], max[1] - min[1]];
  const shrink = Math.min(width / whole[0], (height - caption) / whole[1], 1);
  const onMap = ([x, y]: Point): Point => [
    left + (x - min[0]) * shrink,
    top + caption + (max[1] - y) * shrink,
  ];
  const cells = grid.tiles.map(({ row, column, corner }) => {
    // Cells are cut off at the edges of the piece, so that its map is as large as can be.
    const own = grid.bounds;
    const [x, y] = onMap([Math.max(corner[0], own.min[0]), Math.min(corner[1], own.max[1])]);
    const [far, foot] = onMap([
      Math.min(corner[0] + grid.step[0], own.max[0]),
      Math.max(corner[1] - grid.step[1], own.min[1]),
    ]);
    const [right, low] = [far - x, foot - y];
    const mark = text([x + right / 2, y + low / 2 + 1.2], `${row}–${column}`, {
      anchor: "middle",
      size: 3.2,
    });
    return path(`M${x} ${y}h${right}v${low}h${-right}Z`, "frame") + mark;
  });
  const outline = loopPath(
    laid.piece.outline.outer.map((segment) => scaled(segment, shrink)),
    ([x, y]) => [left + x - min[0] * shrink, top + caption + max[1] * shrink - y],
  );
  const sheets = grid.tiles.length;
  return (
    text([left, top + 3.5], `${name} (${sheets} ${sheets === 1 ? "sheet" : "sheets"})`, {
      size: 3.2,
    }) +
    cells.join("") +
    path(outline, "cut thin")
  );
}

function scaled<Each extends LaidPiece["piece"]["outline"]["outer"][number]>(
  segment: Each,
  by: number,
): Each {
  const point = ([x, y]: Point): Point => [x * by, y * by];
  const moved = { ...segment, from: point(segment.from), to: point(segment.to) };
  return segment.kind === "arc" ? { ...moved, centre: point(segment.centre) } : moved;
}
