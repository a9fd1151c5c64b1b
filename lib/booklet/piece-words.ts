import { boxOfPoints, growBox, joinBoxes } from "../drawing/boxes.ts";
import { flattenPath, pathOfLoop } from "../drawing/paper-path.ts";
import type { Box } from "../drawing/types.ts";
import { add, angleOf, midpoint, scale, subtract } from "../plane/points.ts";
import type { Mm, Point } from "../plane/types.ts";
import { letterSpots, markSpots, notchSpots } from "./letter-spots.ts";
import type { PatternPiece } from "./pattern-sheets.ts";
import { strokesOf } from "./piece-strokes.ts";
import {
  boxOfWords,
  gridOver,
  isFreeOnSheet,
  isOnPiece,
  meetOf,
  type SheetRoom,
  type SheetWords,
} from "./place-on-sheet.ts";
import type { OnSheet } from "./sheet-marks.ts";

/** The words of a piece on one sheet, each whole on it, and the arrow of the print. */
export interface PieceWords {
  readonly words: readonly SheetWords[];
  /** Foot and head; null where the sheet has no room for it. */
  readonly arrow: readonly [foot: Point, head: Point] | null;
}

const nameSize: Mm = 5;
const arrowHalf: Mm = 14;
/** Half the width of the arrow's head. */
export const arrowWing: Mm = 2.5;

/**
 * What is written on one sheet of a piece: its name, so that every sheet says where it belongs, and the
 * letters and names of whatever lies there. Words keep within the window, clear of all lines; a letter
 * that finds no place here stands on the next sheet along its edge.
 */
export function placePieceWords(pattern: PatternPiece, onSheet: OnSheet, window: Box): PieceWords {
  const { laid, bounds, fold } = pattern;
  const { piece } = laid;
  const own = boxOfPoints([onSheet(bounds.min), onSheet(bounds.max)]);
  const room: SheetRoom = {
    // The other half of a piece on the fold is cloth, not paper.
    window: fold === null ? window : meetOf(window, own),
    lines: strokesOf(laid).map((chain) => chain.map(onSheet)),
    outline: flattenPath(pathOfLoop(piece.outline.outer, onSheet), 0.1),
  };
  const sets = [
    ...(fold === null ? [] : [foldSpots(fold.map(onSheet) as [Point, Point])]),
    ...piece.marks.map((mark) => markSpots(mark, onSheet, room.window)),
    ...piece.notches.map((notch) => notchSpots(notch, onSheet, room.window)),
    ...piece.edges.map((edge) => letterSpots(edge, onSheet, centreOf(room.window))),
  ];
  const words: SheetWords[] = [];
  const taken: Box[] = [];
  for (const spots of sets) {
    const found = spots.find((spot) => isFreeOnSheet(boxOfWords(spot), room, taken));
    if (found === undefined) continue;
    words.push(found);
    taken.push(boxOfWords(found));
  }
  const name = placeNameBlock(pattern, onSheet, { room, taken });
  return { words: [...words, ...(name?.words ?? [])], arrow: name?.arrow ?? null };
}

/** The name on the piece, with the arrow of the print where there is room; else the same beside the piece. */
function placeNameBlock(
  { laid, name, bounds, fold }: PatternPiece,
  onSheet: OnSheet,
  { room, taken }: { readonly room: SheetRoom; readonly taken: readonly Box[] },
): PieceWords | null {
  const corners = laid.piece.outline.outer.map(({ from }) => from);
  const middle = fold === null ? middleOf(corners) : midpoint(bounds.min, bounds.max);
  const centres = gridOver(room.window, nearIn(room.window, onSheet(middle)));
  const up = subtract(onSheet(laid.up), onSheet([0, 0]));
  const short = name.split(/[:,]/)[0]!;
  const tries = [
    { words: name, hasArrow: true, isOn: true },
    { words: short, hasArrow: true, isOn: true },
    { words: name, hasArrow: false, isOn: true },
    { words: short, hasArrow: false, isOn: true },
    { words: name, hasArrow: true, isOn: false },
    { words: short, hasArrow: false, isOn: false },
  ];
  for (const { words, hasArrow, isOn } of tries) {
    for (const centre of centres) {
      const block = nameBlock(words, { centre, up, hasArrow });
      const box = boxOfBlock(block);
      if (isFreeOnSheet(box, room, taken) && (!isOn || isOnPiece(box, room))) return block;
    }
  }
  return null;
}

/** Beside an arrow that stands, over one that lies. */
function nameBlock(
  name: string,
  {
    centre,
    up,
    hasArrow,
  }: { readonly centre: Point; readonly up: Point; readonly hasArrow: boolean },
): PieceWords {
  const word = (words: string, by: Point, size: Mm): SheetWords => ({
    at: add(centre, by),
    words,
    size,
    anchor: "start",
    isUpright: false,
  });
  if (!hasArrow) return { words: [word(name, [0, 0], nameSize)], arrow: null };
  const isLying = Math.abs(Math.sin(angleOf(up))) < 0.5;
  return {
    words: isLying
      ? [word(name, [-arrowHalf, -4], nameSize), word("up", [-arrowHalf, 6], 3.6)]
      : [word(name, [4, 0], nameSize), word("up", [4, 6], 3.6)],
    arrow: [add(centre, scale(up, -arrowHalf)), add(centre, scale(up, arrowHalf))],
  };
}

const boxOfBlock = ({ words, arrow }: PieceWords): Box =>
  joinBoxes([
    ...words.map(boxOfWords),
    ...(arrow === null ? [] : [growBox(boxOfPoints(arrow), arrowWing)]),
  ]);

/** Along the line to fold on, the middle of it first. */
function foldSpots([from, to]: readonly [Point, Point]): readonly SheetWords[] {
  const isUpright = Math.abs(from[0] - to[0]) < 1e-6;
  const off: Point = isUpright ? [3.5, 0] : [0, -3.5];
  return shares.map((share) => ({
    at: add(add(from, scale(subtract(to, from), share)), off),
    words: "Lay on the fold, or turn over along this line",
    size: 4,
    anchor: "middle",
    isUpright,
  }));
}

/** Places along a line, from its middle outwards. */
const shares: readonly number[] = Array.from({ length: 41 }, (_, i) =>
  Number((0.5 + (i % 2 === 0 ? i : -i - 1) * 0.0125).toFixed(4)),
);

/** A point of the piece where this sheet has it, else the middle of the sheet. */
const nearIn = (window: Box, [x, y]: Point): Point =>
  x > window.left && x < window.right && y > window.top && y < window.bottom
    ? [x, y]
    : centreOf(window);

const centreOf = ({ left, right, top, bottom }: Box): Point => [
  (left + right) / 2,
  (top + bottom) / 2,
];

const middleOf = (points: readonly Point[]): Point =>
  scale(
    points.reduce((sum, point) => add(sum, point), [0, 0] as Point),
    1 / points.length,
  );
