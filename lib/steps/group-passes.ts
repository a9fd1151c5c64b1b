import type { Count } from "../plane/types.ts";
import type { Cover, SewingPass } from "../seams/types.ts";
import { mostInGroup } from "./split-groups.ts";

/** Passes sewn one after the other into one sub-assembly, and what it is then called. */
export interface PassGroup {
  readonly makes: string;
  readonly passes: readonly SewingPass[];
}

/** A group smaller than this goes with the next, so that no group is a step or two. Our choice. */
const fewest: Count = 3;

/**
 * The passes of a cover in order, grouped by the sub-assembly they make: a new one begins where a pass
 * has nothing to do with the work just before it. At most nine to a group.
 */
export function groupPasses({ passes }: Pick<Cover, "passes">): PassGroup[] {
  const groups: SewingPass[][] = [];
  for (const pass of passes) {
    const current = groups.at(-1);
    const made = new Set(current?.flatMap(({ panels }) => panels) ?? []);
    if (current !== undefined && pass.panels.some((panel) => made.has(panel))) current.push(pass);
    else groups.push([pass]);
  }
  return joinSmall(groups)
    .flatMap(cutLong)
    .map((members) => ({
      makes: members.at(-1)!.makes,
      passes: members,
    }));
}

function joinSmall(groups: readonly (readonly SewingPass[])[]): SewingPass[][] {
  const joined: SewingPass[][] = [];
  for (const group of groups) {
    const last = joined.at(-1);
    const isSmall = last !== undefined && Math.min(last.length, group.length) < fewest;
    if (isSmall && last.length + group.length <= mostInGroup) last.push(...group);
    else joined.push([...group]);
  }
  return joined;
}

/** Long groups in parts as even as can be. */
function cutLong(group: readonly SewingPass[]): SewingPass[][] {
  const parts = Math.ceil(group.length / mostInGroup);
  const size = Math.ceil(group.length / parts);
  return Array.from({ length: parts }, (_, i) => group.slice(i * size, (i + 1) * size));
}
