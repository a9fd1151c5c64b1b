import type { Mm, Point } from "../plane/types.ts";
import { convexHull, perimeter } from "../plane/convex-hull.ts";
import { cross3, dot3, unit3 } from "../solids/points3.ts";
import type { Direction, Solid } from "../solids/types.ts";

export interface Girth {
  readonly girth: Mm;
  /** Direction the foam is pushed in. */
  readonly along: Direction;
}

/**
 * The smallest girth the solid presents in any direction it can be pushed: the length round the
 * hull of its shadow. Tried along every face normal and twenty-six directions between the axes.
 */
export function smallestGirth(solid: Pick<Solid, "mesh" | "faces">): Girth {
  const directions = [
    ...compass(),
    ...solid.faces.filter(({ isCurved }) => !isCurved).map(({ normal }) => unit3(normal)),
  ];
  return directions
    .map((along) => ({ along, girth: girthAlong(solid, along) }))
    .reduce((least, one) => (one.girth < least.girth - 1e-6 ? one : least));
}

/** Length round the hull of the shadow that the solid throws along a direction. */
export function girthAlong(solid: Pick<Solid, "mesh">, along: Direction): Mm {
  const helper: Direction = Math.abs(along[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
  const across = unit3(cross3(helper, along));
  const rise = cross3(along, across);
  const shadow = solid.mesh.points.map((point): Point => [dot3(point, across), dot3(point, rise)]);
  return perimeter(convexHull(shadow));
}

/** The axes, and the diagonals between two and between three of them. */
function compass(): Direction[] {
  const steps = [-1, 0, 1];
  return steps.flatMap((x) =>
    steps.flatMap((y) =>
      steps.flatMap((z): Direction[] => (x || y || z ? [unit3([x, y, z])] : [])),
    ),
  );
}
