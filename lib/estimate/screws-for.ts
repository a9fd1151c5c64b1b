import table from "../../shared/tables/checks.json" with { type: "json" };
import type { Count } from "../plane/types.ts";
import type { BuyLine } from "../project/types.ts";
import type { WoodJoint } from "./joints-between.ts";

const rule = table.rules["screws-few"];

/** Whether a line of the author's is screws, and not a tool for them. */
export function isScrew({ item }: BuyLine): boolean {
  return /\bscrews?\b/i.test(item);
}

/**
 * The fewest screws that hold parts together: two for every part that must hold on to another, so that
 * none can turn. Parts that touch nothing take none.
 *
 * @source common practice, no source
 */
export function screwsFor(joints: readonly WoodJoint[]): Count {
  return rule.each * (partsIn(joints) - groupsIn(joints));
}

/** How many placed parts meet another. */
function partsIn(joints: readonly WoodJoint[]): Count {
  return new Set(joints.flatMap(({ places }) => places)).size;
}

/** How many separate things they make. */
function groupsIn(joints: readonly WoodJoint[]): Count {
  const leader = new Map<Count, Count>();
  const find = (part: Count): Count => {
    const next = leader.get(part) ?? part;
    return next === part ? part : find(next);
  };
  for (const { places } of joints) leader.set(find(places[0]), find(places[1]));
  const parts = [...new Set(joints.flatMap(({ places }) => places))];
  return new Set(parts.map(find)).size;
}
