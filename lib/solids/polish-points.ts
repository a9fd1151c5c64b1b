import type { Mm } from "../plane/types.ts";
import { add3, cross3, dot3, scale3 } from "./points3.ts";
import { distanceFrom, normalOf } from "./surfaces.ts";
import { tangentPlanes } from "./tangent-planes.ts";
import type { Point3, Surface } from "./types.ts";

const closeEnough: Mm = 1e-11;
const rounds = 100;
/** Keeps the step small in directions no surface holds; slows surfaces that all but touch a little. */
const damping = 1e-9;

/**
 * Move a point onto all the surfaces it belongs to at once, by the shortest steps that do it. The
 * kernel's single precision is good to about 1e-4 mm; afterwards corners are good to 1e-9 mm.
 * @source Marquardt 1963, "An algorithm for least-squares estimation of nonlinear parameters"
 */
export function polishPoint(point: Point3, surfaces: readonly Surface[]): Point3 {
  let at = point;
  const known = [...surfaces, ...tangentPlanes(surfaces)];
  for (let round = 0; round < rounds; round++) {
    const held = known.map((surface) => ({
      off: distanceFrom(surface, at),
      normal: normalOf(surface, at),
    }));
    if (held.every(({ off }) => Math.abs(off) < closeEnough)) break;
    at = add3(at, stepTowards(held));
  }
  return at.map((part) => Math.round(part * 1e9) / 1e9 || 0) as unknown as Point3;
}

/** Solve (NᵀN + damping) step = −Nᵀ off for the step. */
function stepTowards(held: readonly { readonly off: Mm; readonly normal: Point3 }[]): Point3 {
  const column = (i: number): Point3 =>
    [0, 1, 2].map(
      (j) =>
        held.reduce((sum, { normal }) => sum + normal[i]! * normal[j]!, 0) +
        (i === j ? damping : 0),
    ) as unknown as Point3;
  const [a, b, c] = [column(0), column(1), column(2)];
  const right = held.reduce<Point3>(
    (sum, { off, normal }) => add3(sum, scale3(normal, -off)),
    [0, 0, 0],
  );
  // Cramer's rule; the damping keeps the determinant from 0.
  const whole = dot3(a, cross3(b, c));
  return [
    dot3(right, cross3(b, c)) / whole,
    dot3(a, cross3(right, c)) / whole,
    dot3(a, cross3(b, right)) / whole,
  ];
}
