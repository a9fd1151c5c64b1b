import type { Bounds, Mm2, Placement, Polygon } from "../plane/types.ts";
import { overlapArea } from "../plane/clip-polygons.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import { placePoint } from "../plane/place.ts";
import type { Face } from "../solids/types.ts";

/** Faces that share no more than this, in mm², only touch. */
const touching: Mm2 = 1;

/** A face where it lies in a panel, ready to be tested. */
export interface PlacedFace {
  readonly region: readonly Polygon[];
  readonly bounds: Bounds;
}

export function placeFace(face: Face, placement: Placement): PlacedFace {
  const region = [face.shape.outer, ...face.shape.holes].map((loop) =>
    flattenLoop(loop, 0.5).map((point) => placePoint(point, placement)),
  );
  return { region, bounds: pointBounds(region[0]!) };
}

export function facesOverlap(a: PlacedFace, b: PlacedFace): boolean {
  const apart =
    a.bounds.max[0] <= b.bounds.min[0] + 1e-6 ||
    b.bounds.max[0] <= a.bounds.min[0] + 1e-6 ||
    a.bounds.max[1] <= b.bounds.min[1] + 1e-6 ||
    b.bounds.max[1] <= a.bounds.min[1] + 1e-6;
  return !apart && overlapArea(a.region, b.region) > touching;
}
