import type { Mm, Ratio } from "../plane/types.ts";
import { boxOfInks } from "./boxes.ts";
import { dotInk } from "./dot-ink.ts";
import { findCollisions } from "./find-collisions.ts";
import { type Callout, placeBeside } from "./place-beside.ts";
import type { Ink, Picture } from "./types.ts";

/** Where the figure of the height may stand along its line. */
const shares: readonly Ratio[] = [0.5, 0.35, 0.65, 0.2, 0.8, 0, 1];

/** How far across the names change sides: half way, else all to the right or to the left of the body. */
const leans: readonly Ratio[] = [0.5, 0.3, 0.7, 0, 1];
/** How far the columns of names are moved down to get their leaders out of the way. */
const shifts: readonly Mm[] = [0, -10, 10, -20, 20];

/**
 * A body with its sizes and the names of its faces: the figure of the height slides along its line
 * to where no leader runs through it.
 */
export function sizeAndName(
  body: Ink,
  callouts: readonly Callout[],
  sizes: (height: Ratio) => readonly Ink[],
): Picture {
  const draw = (lean: Ratio, share: Ratio, shift: Mm): Ink[] => {
    const inks = [body, ...sizes(share)];
    const names = placeBeside(callouts, boxOfInks(inks), { lean, shift });
    return [...inks, ...names, ...callouts.map(({ to }) => dotInk(to))];
  };
  for (const shift of shifts) {
    for (const lean of leans) {
      for (const share of shares) {
        const inks = draw(lean, share, shift);
        if (findCollisions(inks).length === 0) return { inks, collisions: [] };
      }
    }
  }
  return { inks: draw(leans[0]!, shares[0]!, shifts[0]!), collisions: [] };
}
