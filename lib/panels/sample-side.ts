import type { Point, Radians } from "../plane/types.ts";
import { pointAlong, segmentLength } from "../plane/segments.ts";
import { add3, cross3, distance3, dot3, length3, scale3, subtract3 } from "../solids/points3.ts";
import type { FaceSide, Point3, SolidEdge } from "../solids/types.ts";

export interface Sample {
  readonly flat: Point;
  readonly space: Point3;
}

/** Points along one side, in the flat and on the solid, in the side's own direction. */
export function sampleSide(side: FaceSide, edge: SolidEdge): readonly Sample[] {
  const path = side.isForward ? edge.path : [...edge.path].reverse();
  const { segments } = side;
  // A free curve has one short segment for each step of the path.
  if (segments.length === path.length - 1 && segments.every(({ kind }) => kind === "line")) {
    return path.map((space, i) => ({
      flat: i === 0 ? segments[0]!.from : segments[i - 1]!.to,
      space,
    }));
  }
  const shares = sharesAlong(path);
  return path.map((space, i) => ({ flat: pointAtShare(side, shares[i]!), space }));
}

/** How far along each point of a straight or round path lies, from 0 to 1. */
function sharesAlong(path: readonly Point3[]): number[] {
  const centre = centreOfArc(path);
  const step = (i: number): number => {
    if (i === 0) return 0;
    const [a, b] = [path[i - 1]!, path[i]!];
    if (centre === null) return distance3(a, b);
    const [p, q] = [subtract3(a, centre), subtract3(b, centre)];
    const angle: Radians = Math.atan2(length3(cross3(p, q)), dot3(p, q));
    return angle;
  };
  let run = 0;
  const runs = path.map((_, i) => (run += step(i)));
  return runs.map((one) => one / run);
}

/** Centre of the circle through a path, from three of its points; null where it is straight. */
export function centreOfArc(path: readonly Point3[]): Point3 | null {
  if (path.length < 3) return null;
  const [a, b, c] = [
    path[0]!,
    path[Math.floor(path.length / 3)]!,
    path[Math.floor((2 * path.length) / 3)]!,
  ];
  const [ab, ac] = [subtract3(b, a), subtract3(c, a)];
  const normal = cross3(ab, ac);
  const square = dot3(normal, normal);
  if (square < 1e-9) return null;
  // Circumcentre of a triangle in space (Weisstein, "Circumcircle", MathWorld).
  const towards = add3(
    scale3(cross3(normal, ab), dot3(ac, ac)),
    scale3(cross3(ac, normal), dot3(ab, ab)),
  );
  return add3(a, scale3(towards, 1 / (2 * square)));
}

function pointAtShare(side: FaceSide, share: number): Point {
  const total = side.segments.reduce((sum, segment) => sum + segmentLength(segment), 0);
  let left = share * total;
  for (const segment of side.segments) {
    const length = segmentLength(segment);
    if (left <= length + 1e-9) return pointAlong(segment, Math.min(1, left / length));
    left -= length;
  }
  return side.segments.at(-1)!.to;
}
