import type { Count } from "../plane/types.ts";
import { boxOfInks } from "./boxes.ts";
import { findCollisions } from "./find-collisions.ts";
import type { Fitted } from "./fit-scale.ts";
import type { FigureLimits } from "./types.ts";

/** The first of some drawings of one thing in which every label is clear, else that with the fewest faults. */
export function firstClear(
  limits: FigureLimits,
  first: () => Fitted,
  ...others: readonly (() => Fitted)[]
): Fitted {
  let best = first();
  for (const draw of others) {
    if (faultsOf(best, limits) === 0) return best;
    const next = draw();
    if (faultsOf(next, limits) < faultsOf(best, limits)) best = next;
  }
  return best;
}

/** Labels in the way, and one more where the whole is larger than its room. */
function faultsOf({ picture }: Fitted, { width, height }: FigureLimits): Count {
  const { left, right, top, bottom } = boxOfInks(picture.inks);
  const isLarge = right - left > width || bottom - top > height;
  return picture.collisions.length + findCollisions(picture.inks).length + (isLarge ? 1 : 0);
}
