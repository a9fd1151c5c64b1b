import type { Loop, Mm, Point, Polygon, Radians } from "../plane/types.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import { mergeCollinear } from "../plane/merge-collinear.ts";
import { add, cross, dot, leftOf, scale, subtract, unit } from "../plane/points.ts";
import { pointAlong, line } from "../plane/segments.ts";
import { thinCorners } from "../plane/thin-corners.ts";

/** A notch sharper than this has no room for two allowances near its tip. @source our choice */
const sharpest: Radians = Math.PI / 6;
/** Where along an edge the room in front of it is measured. */
const shares = [0.02, 0.25, 0.5, 0.75, 0.98] as const;

/** Round outlines are looked at as corners this near them. @source our choice: chalk is thicker */
const roughly: Mm = 0.5;

/**
 * Whether some slit or notch of an outline is too narrow for the allowances on both its edges: from
 * an edge straight out another edge is met within two allowances, or a notch is all but shut.
 */
export function isTooNarrow(loop: Loop, allowance: Mm): boolean {
  if (allowance <= 0) return false;
  const corners = thinCorners(flattenLoop(mergeCollinear(loop), roughly), roughly);
  return corners.some(
    (corner, i) =>
      isSharpNotch(corners, i) || facesAnEdge(corners, i, corner, 2 * allowance - 1e-3),
  );
}

function isSharpNotch(corners: Polygon, i: number): boolean {
  const [before, at, after] = [corners.at(i - 1)!, corners[i]!, corners[(i + 1) % corners.length]!];
  const [into, out] = [unit(subtract(at, before)), unit(subtract(after, at))];
  const turn = Math.atan2(cross(into, out), dot(into, out));
  // Turning right is a notch; turning back by half a turn may come out with either sign.
  return Math.abs(turn) > Math.PI - 1e-6 || turn < sharpest - Math.PI;
}

/** Whether, straight out from the edge that starts here, another edge lies within reach. */
function facesAnEdge(corners: Polygon, i: number, from: Point, reach: Mm): boolean {
  const to = corners[(i + 1) % corners.length]!;
  const out = scale(leftOf(unit(subtract(to, from))), -1);
  return shares.some((share) => {
    const start = pointAlong(line(from, to), share);
    const end = add(start, scale(out, reach));
    return corners.some((a, j) => {
      const gap = (j - i + corners.length) % corners.length;
      const isNeighbour = gap <= 1 || gap === corners.length - 1;
      return !isNeighbour && meets(start, end, a, corners[(j + 1) % corners.length]!);
    });
  });
}

/** Whether two stretches cross or touch; stretches in line do not count. */
function meets(a: Point, b: Point, c: Point, d: Point): boolean {
  const [along, other] = [subtract(b, a), subtract(d, c)];
  const area = cross(along, other);
  if (Math.abs(area) < 1e-12) return false;
  const [first, second] = [
    cross(subtract(c, a), other) / area,
    cross(subtract(c, a), along) / area,
  ];
  return first >= -1e-9 && first <= 1 && second >= 0 && second <= 1;
}
