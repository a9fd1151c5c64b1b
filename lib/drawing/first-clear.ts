import { findCollisions } from "./find-collisions.ts";
import type { Fitted } from "./fit-scale.ts";

/** The first of some drawings of one thing in which every label is clear, else that with the fewest faults. */
export function firstClear(first: () => Fitted, ...others: readonly (() => Fitted)[]): Fitted {
  let best = first();
  for (const draw of others) {
    if (faultsOf(best) === 0) return best;
    const next = draw();
    if (faultsOf(next) < faultsOf(best)) best = next;
  }
  return best;
}

const faultsOf = ({ picture }: Fitted): number =>
  picture.collisions.length + findCollisions(picture.inks).length;
