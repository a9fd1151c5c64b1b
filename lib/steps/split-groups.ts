import type { Step } from "./types.ts";

/** The most steps a group may have before a reader loses the thread. */
export const mostInGroup = 9;

/**
 * Long groups come apart into parts of at most nine steps, as even as can be.
 *
 * @source Novick and Morse 2000; Zacks and Tversky 2003, on grouping steps; nine is our choice
 */
export function splitGroups(steps: readonly Step[]): Step[] {
  const counts = new Map<string, number>();
  for (const { group } of steps) counts.set(group, (counts.get(group) ?? 0) + 1);
  const seen = new Map<string, number>();
  return steps.map((step) => {
    const count = counts.get(step.group) ?? 0;
    if (count <= mostInGroup) return step;
    const index = seen.get(step.group) ?? 0;
    seen.set(step.group, index + 1);
    const perPart = Math.ceil(count / Math.ceil(count / mostInGroup));
    return { ...step, group: `${step.group}, part ${Math.floor(index / perPart) + 1}` };
  });
}
