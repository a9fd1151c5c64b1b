import type { Mm, Mm3 } from "../plane/types.ts";
import { add3, cross3, dot3, flatten3, length3, scale3, subtract3 } from "./points3.ts";
import { axisPoint } from "./surfaces.ts";
import type { Point3, Surface } from "./types.ts";

export interface SurfacedTriangle {
  readonly corners: readonly [Point3, Point3, Point3];
  readonly surface: Surface;
}

/**
 * Volume and centre of a closed mesh whose curved triangles have their corners on the true surface.
 *
 * Flat parts by the divergence theorem; then, for each curved triangle, the sliver between it and
 * the true surface, ∫ (R² − ρ²)/2 dθ dz, by a rule exact for fifth powers.
 * @source Dunavant 1985, "High degree efficient symmetrical Gaussian quadrature rules for the
 *   triangle", degree 5, from memory
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

// Barycentric weights and places of the seven-point rule.
const [near, far] = [0.1012865073234563, 0.4701420641051151];
const rule: readonly (readonly [weight: number, a: number, b: number])[] = [
  [0.225, 1 / 3, 1 / 3],
  [0.1259391805448271, near, near],
  [0.1259391805448271, 1 - 2 * near, near],
  [0.1259391805448271, near, 1 - 2 * near],
  [0.1323941527885062, far, far],
  [0.1323941527885062, 1 - 2 * far, far],
  [0.1323941527885062, far, 1 - 2 * far],
];

function measureSliver(
  [a, b, c]: SurfacedTriangle["corners"],
  surface: Surface & { kind: "cylinder" | "cone" },
) {
  const normal = cross3(subtract3(b, a), subtract3(c, a));
  let volume: Mm3 = 0;
  let moment: Point3 = [0, 0, 0];
  for (const [weight, i, j] of rule) {
    const point = add3(scale3(a, i), add3(scale3(b, j), scale3(c, 1 - i - j)));
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

function radiusAt(surface: Surface & { kind: "cylinder" | "cone" }, point: Point3): Mm {
  if (surface.kind === "cylinder") return surface.radius;
  return dot3(subtract3(point, surface.tip), surface.axis) * Math.tan(surface.halfAngle);
}
