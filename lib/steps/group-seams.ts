import type { Cover, Seam } from "../seams/types.ts";
import { mostInGroup } from "./split-groups.ts";

/** Seams sewn one after the other into one sub-assembly, and what it is then called. */
export interface SeamGroup {
  readonly makes: string;
  readonly seams: readonly Seam[];
}

/** A group smaller than this takes the next one in, so that no group is a single step. */
const fewest = 5;

/**
 * Seams in sewing order, grouped by the sub-assembly they make. A group ends after nine seams, or
 * when the next seam joins panels that have nothing to do with it so far. Seams left open or for the
 * closing are not in it.
 */
export function groupSeams(cover: Cover): SeamGroup[] {
  const ordered = cover.seams
    .filter((seam) => seam.state === "sewn")
    .toSorted((one, other) => one.order - other.order);
  const groups: Seam[][] = [];
  for (const seam of ordered) {
    const current = groups.at(-1);
    const joined = new Set(current?.flatMap(({ panels }) => panels) ?? []);
    const touches = seam.panels.some((panel) => joined.has(panel));
    const isSame = current?.at(-1)?.makes === seam.makes || (current?.length ?? 0) < fewest;
    if (current !== undefined && touches && isSame && current.length < mostInGroup)
      current.push(seam);
    else groups.push([seam]);
  }
  return groups.map((seams) => ({ makes: seams.at(-1)?.makes ?? "the cover", seams }));
}
