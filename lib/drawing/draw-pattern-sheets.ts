import type { Point, Polygon } from "../plane/types.ts";
import { boxOfInks, growBox } from "./boxes.ts";
import { clothPieces } from "./cloth-pieces.ts";
import { clipRegion } from "./clip-region.ts";
import { drawCheckLines } from "./draw-check-lines.ts";
import { pieceName, pieceNotes } from "./draw-panel.ts";
import { drawTileFrame, joinLabels } from "./draw-tile-frame.ts";
import { drawTileMap } from "./draw-tile-map.ts";
import { drawUpArrow } from "./draw-up-arrow.ts";
import { insidePoints } from "./inside-point.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { edgePlaces } from "./piece-letters.ts";
import { pieceLines } from "./piece-lines.ts";
import { placeLabels } from "./place-labels.ts";
import type { PlacedPattern } from "./arrange-patterns.ts";
import { type Tile, type TileGrid, tileGrid } from "./tile-grid.ts";
import type { Box, DrawingInput, Ink, Label, SheetPaper, ToPaper } from "./types.ts";
import { writeSheet } from "./write-sheet.ts";

/**
 * Full-size patterns on sheets of paper, the map of the sheets first. Each string is a whole `<svg>`
 * as large as its page; one user unit is one millimetre. Empty where there is nothing to cut.
 */
export function drawPatternSheets(input: DrawingInput, paper: SheetPaper): string[] {
  const grid = tileGrid(input, paper);
  if (grid.tiles.length === 0) return [];
  return [
    drawTileMap(input.project, grid, paper),
    ...grid.tiles.map((tile) => drawTile(input, grid, { tile, paper })),
  ];
}

function drawTile(
  input: DrawingInput,
  grid: TileGrid,
  { tile, paper }: { readonly tile: Tile; readonly paper: SheetPaper },
): string {
  const { window, tiles } = grid;
  const isThere = (row: number, column: number) =>
    tiles.some((other) => other.row === row && other.column === column);
  const shift: Point = [window.left - tile.field.left, window.top - tile.field.top];
  const toSheet =
    (pattern: PlacedPattern): ToPaper =>
    (point) => {
      const [x, y] = pattern.toField(point);
      return [x + shift[0], y + shift[1]];
    };
  const shown = grid.patterns.flatMap((pattern) => {
    const region = clipRegion([ringOf(pattern, toSheet(pattern))], window);
    return region.length > 0 ? [{ pattern, region }] : [];
  });
  const lines = shown.flatMap(({ pattern }) => linesOf(input, pattern, toSheet(pattern)));
  const neighbours = {
    right: isThere(tile.row, tile.column + 1),
    below: isThere(tile.row + 1, tile.column),
  };
  const frame = drawTileFrame(window, neighbours);
  let around: Ink[] = [...frame, ...lines];
  around = [...around, ...placeLabels(joinLabels(tile, window, neighbours), around).inks];
  for (const { pattern, region } of shown) {
    const letters = placeLabels(
      sheetLetters(pattern, toSheet(pattern), { region, window }),
      around,
      growBox(window, -1),
    );
    around = [...around, ...letters.inks];
    if (pattern.piece.isUpright || pattern.piece.panel) {
      const arrow = drawUpArrow(region, around);
      if (isWithin(boxOfInks(arrow), window)) around = [...around, ...arrow];
    }
    const name = placeLabels([sheetName(pattern, region)], around, growBox(window, -1));
    // A corner too small for the name goes without: the next sheet carries it.
    if (name.collisions.length === 0) around = [...around, ...name.inks];
  }
  const marks = around.slice(frame.length + lines.length);
  const foot: Ink[] = [
    {
      kind: "text",
      style: "letter",
      text: tile.reference,
      at: [window.left, window.bottom + 15],
      anchor: "start",
      isUpright: false,
    },
  ];
  const names = shown.map(({ pattern }) => pieceName(pattern.piece)).join(", ");
  return writeSheet({
    id: `sheet-${paper.name}-${tile.reference}`,
    title: `${input.project.title}: pattern sheet ${tile.reference}`,
    alt: `Sheet ${tile.reference} of the full-size patterns. It carries part of: ${names}. Check lines of 100 mm and 4 in run both ways.`,
    paper,
    window,
    inside: lines,
    over: [...frame, ...marks, ...drawCheckLines(window), ...foot],
  });
}

function ringOf({ piece }: PlacedPattern, toSheet: ToPaper): Polygon {
  return flattenPath(pathOfLoop(piece.outline.outer, toSheet), 0.1);
}

function linesOf(input: DrawingInput, { piece }: PlacedPattern, toSheet: ToPaper): Ink[] {
  const panel = clothPieces(input).find((item) => item.piece.id === piece.id)?.panel ?? null;
  return pieceLines(piece, panel, toSheet);
}

/** Letters of the seams whose edges cross this sheet. */
function sheetLetters(
  { piece }: PlacedPattern,
  toSheet: ToPaper,
  { region, window }: { readonly region: readonly Polygon[]; readonly window: Box },
): Label[] {
  const inner = growBox(window, -4);
  return piece.edges.flatMap(({ seam, segments }): Label[] => {
    if (seam === null) return [];
    const run = flattenPath(pathOfLoop(segments, toSheet, false), 0.1);
    const places = edgePlaces(run, region, 24).filter(
      ({ at, leader }) => isInBox(at, inner) && (leader === null || isInBox(leader, inner)),
    );
    return places.length > 0 ? [{ lines: [seam], style: "letter", candidates: places }] : [];
  });
}

function sheetName({ piece, also, turnedOver }: PlacedPattern, region: readonly Polygon[]): Label {
  const candidates = insidePoints(region, 160).map(
    (at) => ({ at, anchor: "middle", leader: null }) as const,
  );
  const lines = [pieceName(piece), ...pieceNotes(piece)];
  if (also.length > 0) lines.push(`also for ${also.join(", ")}`);
  if (turnedOver.length > 0) lines.push(`turn the pattern over for ${turnedOver.join(", ")}`);
  return { lines, style: "name", candidates };
}

function isInBox([x, y]: Point, { left, right, top, bottom }: Box): boolean {
  return x > left && x < right && y > top && y < bottom;
}

function isWithin(box: Box, window: Box): boolean {
  return isInBox([box.left, box.top], window) && isInBox([box.right, box.bottom], window);
}
