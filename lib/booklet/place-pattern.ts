import { flattenLoop } from "../plane/flatten-loop.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import { placeLoop, placePoint, placeShape } from "../plane/place.ts";
import { add, fromAngle, rotate, subtract, angleOf } from "../plane/points.ts";
import type { Bounds, Placement, Point } from "../plane/types.ts";
import type { Piece } from "../seams/types.ts";

type Lines = readonly (readonly Point[])[];

/** A piece with its fold lines, as it lies under the sheets. */
export interface LaidPiece {
  readonly piece: Piece;
  readonly folds: Lines;
  /** Direction the print runs in. */
  readonly up: Point;
}

/** Turn a piece, and flip it where it is to be seen from its other side. */
export function placePattern({ piece, folds, up }: LaidPiece, placement: Placement): LaidPiece {
  const point = (each: Point): Point => placePoint(each, placement);
  const direction = (each: Point): Point => subtract(point(each), point([0, 0]));
  return {
    piece: {
      ...piece,
      outline: placeShape(piece.outline, placement),
      finished: placeShape(piece.finished, placement),
      edges: piece.edges.map((edge) => ({
        ...edge,
        segments: placeLoop(edge.segments, placement),
      })),
      notches: piece.notches.map((notch) => ({
        ...notch,
        at: point(notch.at),
        towards: angleOf(direction(fromAngle(notch.towards))),
      })),
      clips: piece.clips.map(({ from, to }) => ({ from: point(from), to: point(to) })),
      marks: piece.marks.map((mark) => ({ ...mark, at: point(mark.at) })),
    },
    folds: folds.map((fold) => fold.map(point)),
    up: direction(up),
  };
}

export const quarterTurn: Placement = { turn: Math.PI / 2, isFlipped: false, shift: [0, 0] };
export const flip: Placement = { turn: 0, isFlipped: true, shift: [0, 0] };

/** Half the cross that marks where something is sewn on. */
const markReach = 5;

/** Everything that is drawn of a piece, as chains of corners. */
export function patternLines({ piece, folds }: LaidPiece): Lines {
  const loops = [
    piece.outline.outer,
    ...piece.outline.holes,
    piece.finished.outer,
    ...piece.finished.holes,
  ];
  const closed = loops
    .filter((loop) => loop.length > 0)
    .map((loop) => {
      const corners = flattenLoop(loop);
      return [...corners, corners[0]!];
    });
  // A mark in the middle of nowhere needs its sheet too.
  const marks = piece.marks.map(({ at: [x, y] }): readonly Point[] => [
    [x - markReach, y],
    [x + markReach, y],
  ]);
  return [...closed, ...folds, ...marks];
}

export const patternBounds = (laid: LaidPiece): Bounds => pointBounds(patternLines(laid).flat());

/** How far a half may stray from its mirror image. @source our choice: a pencil line */
const sameLine = 0.3;

/** One half of a piece, and the line where it lies on the fold. */
export interface Half {
  readonly bounds: Bounds;
  readonly fold: readonly [Point, Point];
}

/**
 * The half of a piece to lay on a fold, where its two halves mirror one another in cut line, seam line,
 * folds, notches, clips and marks: right of the middle, or above it. Null where it has no such halves.
 */
export function halfOf(laid: LaidPiece): Half | null {
  const { min, max } = patternBounds(laid);
  const middle: Point = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  if (mirrorsAcross(laid, 0, middle)) {
    const [low, high]: [Point, Point] = [
      [middle[0], min[1]],
      [middle[0], max[1]],
    ];
    return { bounds: { min: low, max }, fold: [low, high] };
  }
  if (mirrorsAcross(laid, 1, middle)) {
    const [left, right]: [Point, Point] = [
      [min[0], middle[1]],
      [max[0], middle[1]],
    ];
    return { bounds: { min: left, max }, fold: [left, right] };
  }
  return null;
}

/** What keeps a piece from having a half for the fold: its lines, or only what is marked on them. Null where it has one. */
export function whyNoHalf(laid: LaidPiece): "outline" | "marks" | null {
  if (halfOf(laid) !== null) return null;
  const bare: LaidPiece = { ...laid, piece: { ...laid.piece, notches: [], clips: [], marks: [] } };
  return halfOf(bare) === null ? "outline" : "marks";
}

function mirrorsAcross(laid: LaidPiece, axis: 0 | 1, middle: Point): boolean {
  const mirror = (point: Point): Point => {
    const off = subtract(point, middle);
    const turned: Point = axis === 0 ? [-off[0], off[1]] : [off[0], -off[1]];
    return add(middle, turned);
  };
  const { notches, clips, marks } = laid.piece;
  const lines = patternLines(laid);
  const points = [
    ...notches.map(({ at }) => at),
    ...clips.map(({ from }) => from),
    ...marks.map(({ at }) => at),
  ];
  return (
    lines.flat().every((point) => liesOnSome(mirror(point), lines)) &&
    points.every((point) => points.some((other) => isNear(mirror(point), other)))
  );
}

const isNear = (a: Point, b: Point): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) <= sameLine;

const liesOnSome = (point: Point, lines: Lines): boolean =>
  lines.some((chain) => chain.some((to, i) => i > 0 && isOn(point, chain[i - 1]!, to)));

function isOn(point: Point, from: Point, to: Point): boolean {
  const along = subtract(to, from);
  const length = Math.hypot(...along);
  if (length === 0) return isNear(point, from);
  const [x, y] = rotate(subtract(point, from), -angleOf(along));
  return Math.abs(y) <= sameLine && x >= -sameLine && x <= length + sameLine;
}
