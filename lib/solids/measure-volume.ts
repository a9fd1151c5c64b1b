import type { Mm, Mm3 } from "../plane/types.ts";
import { add3, cross3, dot3, flatten3, length3, scale3, subtract3 } from "./points3.ts";
import { axisPoint } from "./surfaces.ts";
import type { Round } from "./round-angles.ts";
import type { Point3, Surface } from "./types.ts";

export interface SurfacedTriangle {
  readonly corners: readonly [Point3, Point3, Point3];
  readonly surface: Surface;
}

/**
 * Volume and centre of a closed mesh whose curved triangles have their corners on the true surface.
 *
 * Flat parts by the divergence theorem; then, for each curved triangle, the sliver between it and
 * the true surface, ∫ (R² − ρ²)/2 dθ dz. The rule runs out from the corner nearest to the axis, so
 * that it holds at the tip of a cone, where angles crowd together.
 * @source Stroud 1971, "Approximate Calculation of Multiple Integrals", conical product rules, from
 *   memory
 */
export function measureVolume(triangles: readonly SurfacedTriangle[]): {
  volume: Mm3;
  centre: Point3;
} {
  let volume: Mm3 = 0;
  let moment: Point3 = [0, 0, 0];
  for (const { corners, surface } of triangles) {
    const [a, b, c] = corners;
    const cone = dot3(a, cross3(b, c)) / 6;
    volume += cone;
    moment = add3(moment, scale3(add3(a, add3(b, c)), cone / 4));
    if (surface.kind === "plane") continue;
    const sliver = measureSliver(corners, surface);
    volume += sliver.volume;
    moment = add3(moment, sliver.moment);
  }
  return { volume, centre: volume === 0 ? [0, 0, 0] : scale3(moment, 1 / volume) };
}

// Places and weights for [−1, 1]. @source Abramowitz and Stegun 1964, table 25.4, n = 5
const gauss: readonly (readonly [place: number, weight: number])[] = [
  [0, 0.568888888888889],
  [-0.538469310105683, 0.478628670499366],
  [0.538469310105683, 0.478628670499366],
  [-0.906179845938664, 0.236926885056189],
  [0.906179845938664, 0.236926885056189],
];

/** Weights and shares of the three corners; the first corner may be the tip of a cone. */
const rule = gauss.flatMap(([s, sWeight]) =>
  gauss.map(([t, tWeight]) => {
    const [away, aside] = [(1 + t) / 2, (1 + s) / 2];
    const weight = (sWeight * tWeight * away) / 2;
    return { weight, shares: [1 - away, away * (1 - aside), away * aside] as const };
  }),
);

function measureSliver(corners: SurfacedTriangle["corners"], surface: Round) {
  const [a, b, c] = fromNearest(corners, surface);
  const normal = cross3(subtract3(b, a), subtract3(c, a));
  let volume: Mm3 = 0;
  let moment: Point3 = [0, 0, 0];
  for (const { weight, shares } of rule) {
    const [i, j, k] = shares;
    const point = add3(scale3(a, i), add3(scale3(b, j), scale3(c, k)));
    const out = flatten3(subtract3(point, axisPoint(surface)), surface.axis);
    const reach: Mm = length3(out);
    if (reach === 0) continue;
    const radius = radiusAt(surface, point);
    // dθ dz of this share of the triangle, seen from the axis
    const share = (weight * dot3(normal, out)) / (2 * reach * reach);
    const part = (share * (radius ** 2 - reach ** 2)) / 2;
    volume += part;
    moment = add3(moment, scale3(add3(point, scale3(out, (radius / reach - 1) / 2)), part));
  }
  return { volume, moment };
}

/** Corners in their order, from the one nearest to the axis on. */
function fromNearest([a, b, c]: SurfacedTriangle["corners"], surface: Round) {
  const reach = (point: Point3): Mm =>
    length3(flatten3(subtract3(point, axisPoint(surface)), surface.axis));
  const [first, second, third] = [reach(a), reach(b), reach(c)];
  if (first <= second && first <= third) return [a, b, c] as const;
  return second <= third ? ([b, c, a] as const) : ([c, a, b] as const);
}

function radiusAt(surface: Round, point: Point3): Mm {
  if (surface.kind === "cylinder") return surface.radius;
  return dot3(subtract3(point, surface.tip), surface.axis) * Math.tan(surface.halfAngle);
}
