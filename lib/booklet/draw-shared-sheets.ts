import { boxOfPoints } from "../drawing/boxes.ts";
import type { Mm, Point } from "../plane/types.ts";
import { nestOnSheets } from "./nest-on-sheets.ts";
import type { Nested } from "./nest-on-sheets.ts";
import { slugOf } from "./make-notice.ts";
import type { Paper } from "./paper.ts";
import type { PatternPiece, PatternSheet } from "./pattern-sheets.ts";
import { pieceMarks } from "./piece-marks.ts";
import { placePattern, quarterTurn } from "./place-pattern.ts";
import { checkMarks, path, sheetSvg, text } from "./sheet-marks.ts";
import type { OnSheet } from "./sheet-marks.ts";
import { placePoint } from "../plane/place.ts";
import { liveArea, sheetMargin } from "./tile-piece.ts";

interface OnPaper {
  readonly paper: Paper;
  readonly title: string;
}

/** Sheets of pieces that fit whole on one, as many to a sheet as go. */
export function drawSharedSheets(
  patterns: readonly PatternPiece[],
  on: OnPaper,
): readonly PatternSheet[] {
  const { width, height } = liveArea(on.paper);
  const nestlings = patterns.map(({ bounds: { min, max } }, i) => ({
    id: String(i),
    size: [max[0] - min[0], max[1] - min[1]] as const,
  }));
  return nestOnSheets(nestlings, [width, height]).map((nested) => drawSheet(nested, patterns, on));
}

function drawSheet(
  nested: readonly Nested[],
  patterns: readonly PatternPiece[],
  { paper, title }: OnPaper,
): PatternSheet {
  const live = liveArea(paper);
  const placed = nested.map(({ id, at, isTurned }) => {
    const pattern = patterns[Number(id)]!;
    return { at, pattern: isTurned ? turned(pattern) : pattern };
  });
  const ends = placed.map(({ at, pattern }) => endOf(at, pattern));
  const spare: Point = [
    (live.width - Math.max(...ends.map(([x]) => x))) / 2,
    (live.height - Math.max(...ends.map(([, y]) => y))) / 2,
  ];
  const names = placed.map(({ pattern }) => pattern.name);
  const heading = names.length === 1 ? `${names[0]}, whole on this sheet` : names.join("; ");
  const cuts = placed.map(({ pattern }) => pattern.laid.piece.cut);
  const id = `tile-${names.map(slugOf).join("-and-")}-1-1`;
  const marks = [
    text([sheetMargin, sheetMargin + 5], shorten(heading, paper.width), { size: 4.4 }),
    text(
      [sheetMargin, sheetMargin + 9.5],
      `${title} · cut ${cuts.join(", ")} · full size on ${paper.label}, print at 100 %`,
    ),
    path(`M${live.left} ${live.top}h${live.width}v${live.height}h${-live.width}Z`, "frame"),
    ...placed.map(({ at, pattern }, i) => {
      const { min } = pattern.bounds;
      const onSheet: OnSheet = ([x, y]) => [
        live.left + spare[0] + at[0] + x - min[0],
        live.top + live.height - spare[1] - at[1] - (y - min[1]),
      ];
      const window = boxOfPoints([onSheet(min), onSheet(pattern.bounds.max)]);
      return pieceMarks(pattern, onSheet, { id: `${id}-half-${i + 1}`, window });
    }),
    checkMarks(paper),
  ];
  return {
    id,
    title: heading,
    svg: sheetSvg(paper, `Full-size pattern: ${heading}`, marks),
    words: [],
  };
}

/** A pattern turned by a quarter, with its bounds and its fold. */
function turned(pattern: PatternPiece): PatternPiece {
  const { min, max } = pattern.bounds;
  return {
    ...pattern,
    laid: placePattern(pattern.laid, quarterTurn),
    bounds: { min: [-max[1], min[0]], max: [-min[1], max[0]] },
    fold:
      pattern.fold === null
        ? null
        : [placePoint(pattern.fold[0], quarterTurn), placePoint(pattern.fold[1], quarterTurn)],
  };
}

const endOf = ([x, y]: Point, { bounds: { min, max } }: PatternPiece): Point => [
  x + max[0] - min[0],
  y + max[1] - min[1],
];

/** A heading must not run off its sheet: about 2.2 mm a letter. */
function shorten(heading: string, width: Mm): string {
  const most = Math.floor((width - 2 * sheetMargin) / 2.2);
  return heading.length <= most ? heading : `${heading.slice(0, most - 1)}…`;
}
