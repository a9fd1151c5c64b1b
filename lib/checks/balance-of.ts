import type { Mm, Point, Radians } from "../plane/types.ts";
import type { Audience } from "../project/types.ts";
import type { Point3, Solid } from "../solids/types.ts";
import { findSeat, seatMiddle } from "./find-seat.ts";
import { rules } from "./rules.ts";
import { sitterFor } from "./sitter-for.ts";
import { isRoll, supportBase } from "./support-base.ts";
import { tipAngle } from "./tip-angle.ts";
import { insideOf, tipSides, type TipSide } from "./tip-sides.ts";

/** What a thing stands on, where its mass is, and how far it can be tilted. */
export interface Balance {
  /** Counter-clockwise, seen from above. */
  readonly base: readonly Point[];
  readonly sides: readonly TipSide[];
  readonly alone: Tilt;
  /** The same with somebody in the middle of the seat; null without a seat or a sitter. */
  readonly seated: Tilt | null;
}

/** The weakest side for one centre of mass. */
export interface Tilt {
  readonly centre: Point3;
  readonly side: TipSide;
  /** From the edge of the base to the centre; negative outside. */
  readonly toEdge: Mm;
  /** From the floor. */
  readonly height: Mm;
  readonly angle: Radians;
}

/** Balance of a solid on its base; null where it has none, or lies on a line and rolls. */
export function balanceOf(solid: Solid, audience: Audience | null): Balance | null {
  const base = supportBase(solid);
  if (isRoll(solid, base)) return null;
  const sides = tipSides(base);
  const alone = tiltOf(solid.centreOfMass, sides, solid);
  if (alone === null) return null;
  const together = audience === null ? null : centreWith(solid, audience);
  return { base, sides, alone, seated: together === null ? null : tiltOf(together, sides, solid) };
}

function tiltOf(centre: Point3, sides: readonly TipSide[], solid: Solid): Tilt | null {
  const [weakest] = sides
    .map((side) => ({ side, toEdge: insideOf(side, centre) }))
    .toSorted((one, other) => one.toEdge - other.toEdge);
  if (weakest === undefined) return null;
  const height = centre[2] - solid.min[2];
  return { centre, ...weakest, height, angle: tipAngle(weakest.toEdge, height) };
}

/**
 * Centre of mass of the thing and a sitter in the middle of its seat.
 *
 * @source NASA-STD-3000 (from memory): the centre of a seated body is about 0.13 of stature above the seat
 */
export function centreWith(solid: Solid, audience: Audience): Point3 | null {
  const seat = findSeat(solid);
  if (seat === null) return null;
  const sitter = sitterFor(audience);
  const [x, y] = seatMiddle(seat, solid);
  const body: Point3 = [x, y, seat.max[2] + rules["tips-with-sitter"].share * sitter.stature];
  const own = solid.mass ?? 0;
  const share = sitter.mass / (own + sitter.mass);
  const at = (axis: 0 | 1 | 2) => share * body[axis] + (1 - share) * solid.centreOfMass[axis];
  return [at(0), at(1), at(2)];
}
