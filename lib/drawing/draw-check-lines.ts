import type { Mm, Point } from "../plane/types.ts";
import { pathOf } from "./paper-path.ts";
import type { Box, Ink } from "./types.ts";

/** @source International yard and pound agreement, 1959: an inch is 25.4 mm exactly */
const checks: readonly {
  readonly length: Mm;
  readonly text: string;
  readonly className: string;
}[] = [
  { length: 100, text: "100 mm", className: "check-mm" },
  { length: 101.6, text: "4 in", className: "check-in" },
];

/**
 * Lines of known length in both directions, below and to the right of the window, by which anybody
 * can see with a ruler whether the sheet printed true.
 */
export function drawCheckLines(window: Box): Ink[] {
  return checks.flatMap(({ length, text, className }, index): Ink[] => {
    const y = window.bottom + 12 + index * 7;
    const x = window.right + 5 + index * 6;
    const level: [Point, Point] = [
      [window.left + 24, y],
      [window.left + 24 + length, y],
    ];
    const upright: [Point, Point] = [
      [x, window.top + 2],
      [x, window.top + 2 + length],
    ];
    return [
      checkLine(level, [0, 1.5], className),
      checkLine(upright, [1.5, 0], className),
      {
        kind: "text",
        style: "label",
        text: `this line is ${text}`,
        at: [level[1][0] + 4, y],
        anchor: "start",
        isUpright: false,
      },
      {
        kind: "text",
        style: "label",
        text,
        at: [x, upright[1][1] + 10],
        anchor: "middle",
        isUpright: true,
      },
    ];
  });
}

function checkLine([from, to]: [Point, Point], [dx, dy]: Point, className: string): Ink {
  const tick = ([x, y]: Point) =>
    pathOf([
      [x - dx, y - dy],
      [x + dx, y + dy],
    ]);
  return {
    kind: "path",
    className: `line check ${className}`,
    paths: [pathOf([from, to]), tick(from), tick(to)],
    isObstacle: true,
  };
}
