import { flattenLoop } from "../plane/flatten-loop.ts";
import type { Mm } from "../plane/types.ts";
import { liftPoint } from "../solids/lift-point.ts";
import type { Face, Point3, Solid } from "../solids/types.ts";
import type { Seat } from "./find-seat.ts";
import { lowestBack } from "./find-seat.ts";

/** A level face above the seat: the top of an arm or of a back. */
export interface RaisedFace {
  readonly kind: "arm" | "back";
  readonly face: Face;
  readonly height: Mm;
  readonly corners: readonly Point3[];
  /** Whether some of it stands behind the seat, to be leant on. */
  readonly isBehind: boolean;
}

/** Arms stand this much above the seat at least. Our choice. */
const lowestArm: Mm = 60;
/** The cosine of about 15°: level enough to lean on. */
const nearlyLevel = 0.966;
/** Heights nearer than this are the same. */
const same: Mm = 1;

/**
 * The tops of arms and backs. What stands behind the seat is a back, and so is whatever beside it is
 * as high as the back: the second back of a corner seat.
 */
export function raisedFaces(seat: Seat, solid: Solid): RaisedFace[] {
  const raised = solid.faces
    .filter(({ surface, normal }) => surface.kind === "plane" && normal[2] >= nearlyLevel)
    .map((face) => {
      const corners = flattenLoop(face.shape.outer).map((corner) =>
        liftPoint(face.surface, corner),
      );
      const top = Math.max(...corners.map(([, , z]) => z)) - solid.min[2];
      return { face, corners, height: top };
    })
    .filter(({ height }) => height >= seat.height + lowestArm);
  const backs = raised.filter(
    ({ corners, height }) => height >= seat.height + lowestBack && isBehind(corners, seat),
  );
  return raised.map((one) => {
    const isBack =
      backs.includes(one) || backs.some(({ height }) => Math.abs(height - one.height) <= same);
    return { ...one, kind: isBack ? "back" : "arm", isBehind: isBehind(one.corners, seat) };
  });
}

/** Does a face reach behind the seat, and not only past its side? */
function isBehind(corners: readonly Point3[], seat: Seat): boolean {
  const behind = corners.filter(([, y]) => y >= seat.max[1] - same);
  const [left, right] = [Math.min(...behind.map(([x]) => x)), Math.max(...behind.map(([x]) => x))];
  return (
    corners.some(([, y]) => y > seat.max[1] + same) &&
    left < seat.max[0] - same &&
    right > seat.min[0] + same
  );
}
