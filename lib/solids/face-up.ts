import type { UpDirection } from "../project/types.ts";
import { dot3, flatten3, length3, unit3 } from "./points3.ts";
import type { Direction, Point3 } from "./types.ts";

const up: Direction = [0, 0, 1];
const awayFromFront: Direction = [0, 1, 0];
/** Steeper than 45° is a wall. A hair more, so that a 45° slope counts as one. */
const wallLimit = Math.SQRT1_2 + 1e-9;

/**
 * The way the print should run on a face with this outward normal: walls up; seats and tops away
 * from the front.
 * @source our choice for the limit: at 45° a slope is seen as much from the front as from above
 */
export function upOfNormal(normal: Point3): Direction {
  const preferred = Math.abs(normal[2]) <= wallLimit ? up : awayFromFront;
  const flat = flatten3(preferred, unit3(normal));
  return length3(flat) < 1e-9 ? up : unit3(flat);
}

const directions: Record<UpDirection, Direction> = {
  up: [0, 0, 1],
  down: [0, 0, -1],
  front: [0, -1, 0],
  back: [0, 1, 0],
  left: [-1, 0, 0],
  right: [1, 0, 0],
};

/** The author's own up on a face, or null where it runs straight into the face. */
export function upByAuthor(wanted: UpDirection, normal: Point3): Direction | null {
  const direction = directions[wanted];
  if (Math.abs(dot3(direction, unit3(normal))) > 0.999) return null;
  return unit3(flatten3(direction, unit3(normal)));
}
