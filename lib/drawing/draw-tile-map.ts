import type { Point } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import { outlinePoints } from "./arrange-patterns.ts";
import { drawCheckLines } from "./draw-check-lines.ts";
import { pathOf } from "./paper-path.ts";
import { placeLabels } from "./place-labels.ts";
import { textLines } from "./text-lines.ts";
import { OVERLAP, type TileGrid } from "./tile-grid.ts";
import type { Ink, Label, SheetPaper } from "./types.ts";
import { writeSheet } from "./write-sheet.ts";

/** What the reader does with the sheets. */
const instructions: readonly string[] = [
  "1. Print at 100 %, without fitting to the page.",
  "2. Measure the check lines on every sheet. Go on only if they are right.",
  "3. Cut each sheet off along its left and upper line.",
  "4. Lay it on the broken line of its neighbour, so that the ringed crosses meet.",
  "5. Tape the sheets together, then cut the patterns out along the heavy line.",
];

/** The first sheet: how the others go together, and what to do with them. */
export function drawTileMap(project: Project, grid: TileGrid, paper: SheetPaper): string {
  const { window, rows, columns, tiles } = grid;
  const [stepX, stepY] = [
    window.right - window.left - OVERLAP,
    window.bottom - window.top - OVERLAP,
  ];
  const [fieldWidth, fieldHeight] = [columns * stepX + OVERLAP, rows * stepY + OVERLAP];
  const top = window.top + 18 + instructions.length * 6;
  const scale = Math.min(
    (window.right - window.left - 4) / fieldWidth,
    (window.bottom - top - 6) / fieldHeight,
    0.25,
  );
  const toMap = ([x, y]: Point): Point => [window.left + 2 + x * scale, top + y * scale];
  const cells: Ink[] = tiles.map(({ field: { left, top: upper } }) => ({
    kind: "path",
    className: "line frame",
    paths: [
      pathOf(
        (
          [
            [left, upper],
            [left + stepX, upper],
            [left + stepX, upper + stepY],
            [left, upper + stepY],
          ] as Point[]
        ).map(toMap),
        true,
      ),
    ],
    isObstacle: false,
  }));
  const outlines: Ink[] = grid.patterns.map(({ piece, toField }) => ({
    kind: "path",
    className: "line cut",
    paths: [pathOf(outlinePoints(piece, toField).map(toMap), true)],
    isObstacle: true,
  }));
  const spots = [0.5, 0.3, 0.7].flatMap((down) =>
    [0.5, 0.3, 0.7].map((along) => [along, down] as const),
  );
  const labels = tiles.map(({ reference, field }): Label => ({
    lines: [reference],
    style: "name",
    candidates: spots.map(([along, down]) => ({
      at: toMap([field.left + stepX * along, field.top + stepY * down]),
      anchor: "middle",
      leader: null,
    })),
  }));
  const names = placeLabels(labels, outlines).inks;
  const head = textLines([`${project.title}: full-size patterns`], [window.left, window.top + 4], {
    style: "letter",
    anchor: "start",
  });
  const words = instructions.map((text, index): Ink => ({
    kind: "text",
    style: "label",
    text,
    at: [window.left, window.top + 13 + index * 6],
    anchor: "start",
    isUpright: false,
  }));
  const list = tiles.map(({ reference }) => reference).join(", ");
  return writeSheet({
    id: `sheet-${paper.name}-map`,
    title: `${project.title}: how the pattern sheets go together`,
    alt: `Map of ${tiles.length} pattern sheets in ${rows} rows and ${columns} columns: ${list}. ${instructions.join(" ")}`,
    paper,
    window,
    inside: [],
    over: [...head, ...words, ...cells, ...outlines, ...names, ...drawCheckLines(window)],
  });
}
