import type { Point, Radians } from "../plane/types.ts";
import { add3, cross3, dot3, flatten3, length3, scale3, subtract3, unit3 } from "./points3.ts";
import type { Point3, Surface } from "./types.ts";

/** The place in space of a flat point of a face: the inverse of `flattenPoint`. */
export function liftPoint(surface: Surface, [u, v]: Point): Point3 {
  switch (surface.kind) {
    case "plane":
      return add3(surface.origin, add3(scale3(surface.across, u), scale3(surface.rise, v)));
    case "cylinder": {
      const out = swing(surface.zero, surface.axis, u / surface.radius);
      return add3(surface.centre, add3(scale3(out, surface.radius), scale3(surface.axis, v)));
    }
    case "cone": {
      const down = narrowsUp(surface) ? -1 : 1;
      const reach = Math.hypot(u, v);
      const round = Math.atan2(u, v * down) / Math.sin(surface.halfAngle);
      const out = swing(surface.zero, upright, round);
      const along = scale3(surface.axis, reach * Math.cos(surface.halfAngle));
      return add3(surface.tip, add3(scale3(out, reach * Math.sin(surface.halfAngle)), along));
    }
  }
}

/**
 * The flat place of a point on a face's surface. On a curved face a point near the line where the
 * face is opened lies at either end: `hint`, a point nearby inside the face, says which.
 */
export function flattenPoint(surface: Surface, point: Point3, hint: Point3 = point): Point {
  switch (surface.kind) {
    case "plane": {
      const reach = subtract3(point, surface.origin);
      return [dot3(reach, surface.across), dot3(reach, surface.rise)];
    }
    case "cylinder": {
      const round = angleRound(surface.centre, surface.axis, surface.zero, point, hint);
      return [round * surface.radius, dot3(subtract3(point, surface.centre), surface.axis)];
    }
    case "cone": {
      const reach = length3(subtract3(point, surface.tip));
      // The flat sector is opened opposite `zero`, so that it hangs evenly on both sides.
      const opened = scale3(surface.zero, -1);
      const isTip = reach < 1e-9;
      const round = angleRound(surface.tip, upright, opened, isTip ? hint : point, hint) - Math.PI;
      const angle = round * Math.sin(surface.halfAngle);
      const down = narrowsUp(surface) ? -1 : 1;
      return [reach * Math.sin(angle), reach * Math.cos(angle) * down];
    }
  }
}

const upright: Point3 = [0, 0, 1];

export const narrowsUp = (surface: Surface & { kind: "cone" }): boolean => surface.axis[2] < 0;

/** Angle counter-clockwise round an axis: the hint's in [0, 2π), the point's within half a turn of it. */
function angleRound(
  centre: Point3,
  axis: Point3,
  zero: Point3,
  point: Point3,
  hint: Point3,
): Radians {
  const angle = (to: Point3): Radians => {
    const out = flatten3(subtract3(to, centre), axis);
    return Math.atan2(dot3(out, cross3(axis, zero)), dot3(out, zero));
  };
  const near = angle(hint) < 0 ? angle(hint) + 2 * Math.PI : angle(hint);
  const turns = Math.round((near - angle(point)) / (2 * Math.PI));
  return angle(point) + turns * 2 * Math.PI;
}

/** A direction turned round an axis at right angles to it. */
function swing(zero: Point3, axis: Point3, by: Radians): Point3 {
  const side = cross3(axis, zero);
  return unit3(add3(scale3(zero, Math.cos(by)), scale3(side, Math.sin(by))));
}
