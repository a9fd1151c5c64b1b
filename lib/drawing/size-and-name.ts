import type { Ratio } from "../plane/types.ts";
import { boxOfInks } from "./boxes.ts";
import { dotInk } from "./dot-ink.ts";
import { findCollisions } from "./find-collisions.ts";
import { type Callout, placeBeside } from "./place-beside.ts";
import type { Ink, Picture } from "./types.ts";

/** Where the figure of the height may stand along its line. */
const shares: readonly Ratio[] = [0.5, 0.35, 0.65, 0.2, 0.8, 0, 1];

/**
 * A body with its sizes and the names of its faces: the figure of the height slides along its line
 * to where no leader runs through it.
 */
export function sizeAndName(
  body: Ink,
  callouts: readonly Callout[],
  sizes: (height: Ratio) => readonly Ink[],
): Picture {
  const tries = shares.map((share): Ink[] => {
    const inks = [body, ...sizes(share)];
    const names = placeBeside(callouts, boxOfInks(inks));
    return [...inks, ...names, ...callouts.map(({ to }) => dotInk(to))];
  });
  const clear = tries.find((inks) => findCollisions(inks).length === 0);
  return { inks: clear ?? tries[0] ?? [body], collisions: [] };
}
