import type { Mm } from "../plane/types.ts";
import type { Direction, Point3, Surface } from "./types.ts";
import {
  add3,
  cross3,
  distance3,
  dot3,
  flatten3,
  length3,
  scale3,
  subtract3,
  unit3,
} from "./points3.ts";

/** Two surfaces closer than this, at a metre's reach, are one. */
const sameSurface: Mm = 1e-3;
const sameDirection = 1e-7;

/** How far a point lies outside a surface; negative inside. For a cone measured square to its side. */
export function distanceFrom(surface: Surface, point: Point3): Mm {
  switch (surface.kind) {
    case "plane":
      return dot3(subtract3(point, surface.origin), normalOf(surface, point));
    case "cylinder":
      return length3(flatten3(subtract3(point, surface.centre), surface.axis)) - surface.radius;
    case "cone": {
      const reach = subtract3(point, surface.tip);
      const out = length3(flatten3(reach, surface.axis));
      const along = dot3(reach, surface.axis);
      return out * Math.cos(surface.halfAngle) - along * Math.sin(surface.halfAngle);
    }
  }
}

/** Outward normal at a point on (or near) the surface. */
export function normalOf(surface: Surface, point: Point3): Direction {
  switch (surface.kind) {
    case "plane":
      return unit3(cross3(surface.across, surface.rise));
    case "cylinder":
      return unit3(flatten3(subtract3(point, surface.centre), surface.axis));
    case "cone": {
      const out = unit3(flatten3(subtract3(point, surface.tip), surface.axis));
      return unit3(
        subtract3(
          scale3(out, Math.cos(surface.halfAngle)),
          scale3(surface.axis, Math.sin(surface.halfAngle)),
        ),
      );
    }
  }
}

/** Whether two surfaces are the same, facing the same way. */
export function isSameSurface(a: Surface, b: Surface): boolean {
  if (a.kind === "plane" && b.kind === "plane") {
    const normal = normalOf(a, a.origin);
    const isParallel = dot3(normal, normalOf(b, b.origin)) > 1 - sameDirection;
    return isParallel && Math.abs(distanceFrom(a, b.origin)) < sameSurface;
  }
  if (a.kind === "cylinder" && b.kind === "cylinder") {
    const isParallel = Math.abs(dot3(a.axis, b.axis)) > 1 - sameDirection;
    const apart = length3(flatten3(subtract3(a.centre, b.centre), a.axis));
    return isParallel && apart < sameSurface && Math.abs(a.radius - b.radius) < sameSurface;
  }
  if (a.kind === "cone" && b.kind === "cone") {
    return (
      dot3(a.axis, b.axis) > 1 - sameDirection &&
      distance3(a.tip, b.tip) < sameSurface &&
      Math.abs(a.halfAngle - b.halfAngle) < sameDirection
    );
  }
  return false;
}

/** The nearest point on the surface, along its normal. */
export const dropOnto = (surface: Surface, point: Point3): Point3 =>
  add3(point, scale3(normalOf(surface, point), -distanceFrom(surface, point)));

/** A point of the axis of a round surface: for a cone its tip. */
export const axisPoint = (surface: Surface & { kind: "cylinder" | "cone" }): Point3 =>
  surface.kind === "cylinder" ? surface.centre : surface.tip;
