import { polygonHull } from "d3-polygon";
import type { Mm, Point } from "../plane/types.ts";
import type { SolidBlock } from "../solids/types.ts";
import { dotInk, ringInk } from "./dot-ink.ts";
import { pathOf } from "./paper-path.ts";
import type { Ink, ToPaper } from "./types.ts";

/** Outline of a block seen from one side. */
export function silhouette({ mesh, min, size }: SolidBlock, axis: 0 | 1, toPaper: ToPaper): Ink[] {
  const corners: [number, number][] =
    mesh.points.length > 0
      ? mesh.points.map((point) => [point[axis], point[2]])
      : [
          [min[axis], min[2]],
          [min[axis] + size[axis], min[2]],
          [min[axis] + size[axis], min[2] + size[2]],
          [min[axis], min[2] + size[2]],
        ];
  const hull = polygonHull(corners);
  if (hull === null) return [];
  return [
    {
      kind: "path",
      className: "line edge",
      paths: [
        pathOf(
          hull.map((corner) => toPaper(corner)),
          true,
        ),
      ],
      isObstacle: true,
    },
  ];
}

/** A ring with a dot in it. */
export function centreMark(at: Point): Ink[] {
  return [ringInk(at, 1.7), dotInk(at, 0.6)];
}

/** A straight line, lengthened at both ends by so much on the paper. */
export function straightLine(
  className: string,
  [from, to]: readonly [Point, Point],
  by: Mm = 0,
): Ink {
  const ends: Point[] = [
    [from[0] - by, from[1]],
    [to[0] + by, to[1]],
  ];
  return { kind: "path", className, paths: [pathOf(ends)], isObstacle: className !== "line ghost" };
}
