import type { Mm, Mm2 } from "../plane/types.ts";

/** Area of a flat rectangular part that oil or paint must cover: both faces and the four edges. */
export function finishArea(size: readonly [Mm, Mm], thickness: Mm): Mm2 {
  const [length, width] = size;
  return 2 * (length * width + (length + width) * thickness);
}
