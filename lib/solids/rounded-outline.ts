import { line } from "../plane/segments.ts";
import type { Mm, Point, Segment } from "../plane/types.ts";
import { outlineSize, type OutlineSide } from "../project/rounded-corners.ts";
import type { RoundedBlock } from "../project/types.ts";

/** The outline of a rounded block, counter-clockwise, each segment with the side that it becomes. */
export function roundedOutline({ size, radius, along, corners }: RoundedBlock) {
  const [width, depth] = outlineSize(size, along);
  const at = [
    { corner: "front-left", point: [0, 0], into: [0, 1], out: [1, 0], side: "front" },
    { corner: "front-right", point: [width, 0], into: [-1, 0], out: [0, 1], side: "right" },
    { corner: "back-right", point: [width, depth], into: [0, -1], out: [-1, 0], side: "back" },
    { corner: "back-left", point: [0, depth], into: [1, 0], out: [0, -1], side: "left" },
  ] as const;
  const shifted = (point: readonly [Mm, Mm], by: readonly [Mm, Mm], length: Mm): Point => [
    point[0] + by[0] * length,
    point[1] + by[1] * length,
  ];
  const isRound = at.map(({ corner }) => corners.includes(corner));
  const loop: Segment[] = [];
  const sides: (OutlineSide | "around")[] = [];
  at.forEach(({ point, into, out, side }, i) => {
    const next = at[(i + 1) % 4]!;
    const start = isRound[i] ? shifted(point, out, radius) : point;
    const end = isRound[(i + 1) % 4] ? shifted(next.point, next.into, radius) : next.point;
    if (isRound[i]) {
      const centre = shifted(shifted(point, out, radius), into, radius);
      loop.push({
        kind: "arc",
        from: shifted(point, into, radius),
        to: start,
        centre,
        isClockwise: false,
      });
      sides.push("around");
    }
    // A side eaten up by its two rounded corners is no side.
    if (Math.hypot(end[0] - start[0], end[1] - start[1]) < 1e-9) return;
    loop.push(line(start, end));
    sides.push(side);
  });
  return { loop, sides };
}
