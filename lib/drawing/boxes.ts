import type { Mm, Point } from "../plane/types.ts";
import { flattenPath } from "./paper-path.ts";
import { textBox } from "./text-box.ts";
import type { Box, Ink } from "./types.ts";

/** Whether two rectangles share more than `clearance` of negative room. */
export function boxesOverlap(a: Box, b: Box, clearance: Mm = 0): boolean {
  return (
    a.left < b.right + clearance &&
    b.left < a.right + clearance &&
    a.top < b.bottom + clearance &&
    b.top < a.bottom + clearance
  );
}

export function boxOfPoints(points: readonly Point[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  if (points.length === 0) return { left: 0, right: 0, top: 0, bottom: 0 };
  return {
    left: xs.reduce((a, b) => Math.min(a, b)),
    right: xs.reduce((a, b) => Math.max(a, b)),
    top: ys.reduce((a, b) => Math.min(a, b)),
    bottom: ys.reduce((a, b) => Math.max(a, b)),
  };
}

export function joinBoxes(boxes: readonly Box[]): Box {
  return boxOfPoints(
    boxes.flatMap(({ left, right, top, bottom }): Point[] => [
      [left, top],
      [right, bottom],
    ]),
  );
}

export function growBox({ left, right, top, bottom }: Box, by: Mm): Box {
  return { left: left - by, right: right + by, top: top - by, bottom: bottom + by };
}

/** The rectangle round some ink, without the width of its lines. */
export function boxOfInks(inks: readonly Ink[]): Box {
  return joinBoxes(
    inks.flatMap((ink) =>
      ink.kind === "text"
        ? [textBox(ink)]
        : ink.paths.map((path) => boxOfPoints(flattenPath(path))),
    ),
  );
}

/** Whether a straight stretch from a to b passes through a box. */
export function segmentMeetsBox([ax, ay]: Point, [bx, by]: Point, box: Box): boolean {
  // Liang and Barsky's clip: what is left of the stretch inside all four sides?
  let enter = 0;
  let leave = 1;
  const sides: [number, number][] = [
    [ax - bx, ax - box.left],
    [bx - ax, box.right - ax],
    [ay - by, ay - box.top],
    [by - ay, box.bottom - ay],
  ];
  for (const [speed, room] of sides) {
    if (speed === 0) {
      if (room <= 0) return false;
    } else if (speed < 0) enter = Math.max(enter, room / speed);
    else leave = Math.min(leave, room / speed);
  }
  return enter < leave;
}

/** Move ink about on the paper. */
export function shiftInks(inks: readonly Ink[], [dx, dy]: Point): Ink[] {
  const move = ([x, y]: Point): Point => [x + dx, y + dy];
  return inks.map((ink) =>
    ink.kind === "text"
      ? { ...ink, at: move(ink.at) }
      : {
          ...ink,
          paths: ink.paths.map((path) => ({
            ...path,
            from: move(path.from),
            segments: path.segments.map((segment) =>
              segment.kind === "line"
                ? { kind: "line", to: move(segment.to) }
                : { ...segment, to: move(segment.to), centre: move(segment.centre) },
            ),
          })),
        },
  );
}
