import type { Mm2 } from "../plane/types.ts";
import type { Joint } from "../solids/types.ts";

/**
 * Area to be coated in a glue-up: contact adhesive goes on both sides of every joint.
 *
 * @source 3M, Foam Fast 74 spray adhesive directions: coat both surfaces (from memory)
 */
export function adhesiveArea(joints: readonly Joint[]): Mm2 {
  return 2 * joints.reduce((sum, joint) => sum + joint.area, 0);
}
