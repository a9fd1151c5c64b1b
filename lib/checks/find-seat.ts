import { flattenLoop } from "../plane/flatten-loop.ts";
import type { Mm, Mm2, Point } from "../plane/types.ts";
import { liftPoint } from "../solids/lift-point.ts";
import type { Face, Point3, Solid } from "../solids/types.ts";

/** The face somebody sits on and where it lies, from the lowest point of the solid. */
export interface Seat {
  readonly face: Face;
  readonly height: Mm;
  readonly min: Point3;
  readonly max: Point3;
}

/** An upward normal may lean this far: the cosine of about 15°. */
const nearlyUpright = 0.966;

/**
 * The largest flat face that looks up, or null when there is none.
 *
 * @source our choice: in a seat with arms and a back the seat is the largest level face
 */
export function findSeat(solid: Solid): Seat | null {
  const level = solid.faces.filter(
    (face) => face.surface.kind === "plane" && face.normal[2] >= nearlyUpright,
  );
  const face = level.toSorted((one, other) => other.area - one.area)[0];
  if (face === undefined) return null;
  const corners = cornersOf(face);
  const min: Point3 = [least(corners, 0), least(corners, 1), least(corners, 2)];
  const max: Point3 = [most(corners, 0), most(corners, 1), most(corners, 2)];
  return { face, min, max, height: max[2] - solid.min[2] };
}

/** A back must stand at least this far above the seat to be leant on. Our choice. */
export const lowestBack: Mm = 100;

/** Whether something rises above the seat to lean on: without it a low seat is a stool or a pouf. */
export function hasBack(seat: Seat, solid: Solid): boolean {
  return solid.size[2] - seat.height >= lowestBack;
}

/** The blocks the seat is made of: those whose sides its names belong to. */
export function seatBlocks(seat: Seat): readonly string[] {
  return [...new Set(seat.face.names.map((name) => name.split("/")[0] ?? name))];
}

/** A place where somebody sits: the middle of the largest block of the seat, as far as the seat goes. */
export function seatMiddle(seat: Seat, solid: Solid): Point {
  const carriers = solid.blocks.filter(({ id }) => seatBlocks(seat).includes(id));
  const bounds = (carriers.length === 0 ? [{ min: seat.min, size: solid.size }] : carriers)
    .map(({ min, size }) => {
      const low = (axis: 0 | 1) => Math.max(min[axis], seat.min[axis]);
      const high = (axis: 0 | 1) => Math.min(min[axis] + size[axis], seat.max[axis]);
      return { low: [low(0), low(1)] as const, high: [high(0), high(1)] as const };
    })
    .toSorted((one, other) => areaOf(other) - areaOf(one));
  const [largest] = bounds;
  if (largest === undefined) return [0, 0];
  const { low, high } = largest;
  return [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2];
}

function areaOf({ low, high }: { readonly low: Point; readonly high: Point }): Mm2 {
  return Math.max(0, high[0] - low[0]) * Math.max(0, high[1] - low[1]);
}

/** The corners of a flat face in space, arcs flattened. */
export function cornersOf({ surface, shape }: Face): Point3[] {
  return flattenLoop(shape.outer).map((corner) => liftPoint(surface, corner));
}

function least(points: readonly Point3[], axis: 0 | 1 | 2): Mm {
  return Math.min(...points.map((point) => point[axis]));
}

function most(points: readonly Point3[], axis: 0 | 1 | 2): Mm {
  return Math.max(...points.map((point) => point[axis]));
}
