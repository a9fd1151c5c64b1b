import type { Mm } from "../plane/types.ts";
import { cross3, dot3, flatten3, length3, subtract3, unit3 } from "./points3.ts";
import { axisPoint, distanceFrom, normalOf } from "./surfaces.ts";
import type { Direction, Surface } from "./types.ts";

/** Surfaces touch rather than cut one another when they come this near to it. */
const touching: Mm = 1e-6;

/**
 * For each two surfaces that touch along a line, the plane square to both through that line. Where
 * a rounded corner runs on into a flat side neither says how far along the side the corner ends;
 * this plane does.
 */
export function tangentPlanes(surfaces: readonly Surface[]): readonly Surface[] {
  return surfaces.flatMap((a, i) =>
    surfaces.slice(i + 1).flatMap((b) => {
      const plane = tangentPlane(a, b) ?? tangentPlane(b, a);
      return plane === null ? [] : [plane];
    }),
  );
}

function tangentPlane(round: Surface, other: Surface): Surface | null {
  if (round.kind !== "cylinder" || other.kind === "cone") return null;
  const towards = other.kind === "plane" ? besidePlane(round, other) : besideRound(round, other);
  if (towards === null) return null;
  return { kind: "plane", origin: round.centre, across: towards, rise: round.axis };
}

type Cylinder = Surface & { kind: "cylinder" };

/** From the axis square to a plane that the cylinder touches. */
function besidePlane(round: Cylinder, plane: Surface & { kind: "plane" }): Direction | null {
  const normal = normalOf(plane, plane.origin);
  const isAlong = Math.abs(dot3(normal, round.axis)) < 1e-9;
  const off = Math.abs(distanceFrom(plane, axisPoint(round))) - round.radius;
  return isAlong && Math.abs(off) < touching ? normal : null;
}

/** From the axis to that of a parallel cylinder which it touches, outside or inside. */
function besideRound(round: Cylinder, other: Cylinder): Direction | null {
  const isAlong = length3(cross3(round.axis, other.axis)) < 1e-9;
  const across = flatten3(subtract3(other.centre, round.centre), round.axis);
  const apart = length3(across);
  const outside = apart - (round.radius + other.radius);
  const inside = apart - Math.abs(round.radius - other.radius);
  const isTouching = Math.min(Math.abs(outside), Math.abs(inside)) < touching;
  return isAlong && isTouching && apart > touching ? unit3(across) : null;
}
