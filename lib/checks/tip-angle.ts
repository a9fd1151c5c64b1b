import type { Mm, Radians } from "../plane/types.ts";

/**
 * Angle by which a thing can be tilted before it falls: the arc tangent of the distance from its
 * centre of mass to the edge it turns on, over the height of that centre. Negative when the centre
 * lies outside the base already.
 *
 * @source home workshop forum, tip angle of a stand,
 * https://www.homemadetools.net/forum/ post 138948: 3 ft base, centre 1 ft up, 56.3°
 */
export function tipAngle(toEdge: Mm, height: Mm): Radians {
  return Math.atan2(toEdge, height);
}
