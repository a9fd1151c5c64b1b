import { placedParts, type PlacedPart } from "../estimate/placed-parts.ts";
import type { Mm } from "../plane/types.ts";
import type { Project } from "../project/types.ts";

/** A straight gap between two placed parts that face each other. */
export interface Gap {
  readonly parts: readonly [string, string];
  readonly across: Mm;
  /** How far it goes in: the smaller side of what the two show each other. */
  readonly deep: Mm;
}

const axes = [0, 1, 2] as const;
type AxisIndex = (typeof axes)[number];

/** Gaps between parts next to each other, one of each width and pair of pieces. Touching parts have none. */
export function gapsBetween(project: Project): Gap[] {
  const parts = placedParts(project);
  const gaps = parts.flatMap((one, index) =>
    parts.slice(index + 1).flatMap((other) => gapOf(one, other, parts)),
  );
  return gaps.filter((gap, index) => gaps.findIndex((each) => isAlike(each, gap)) === index);
}

function isAlike(one: Gap, other: Gap): boolean {
  return one.parts.join() === other.parts.join() && Math.abs(one.across - other.across) < 0.5;
}

function gapOf(one: PlacedPart, other: PlacedPart, all: readonly PlacedPart[]): Gap[] {
  return axes.flatMap((axis) => {
    const across = Math.max(other.min[axis] - one.max[axis], one.min[axis] - other.max[axis]);
    const shared = axes
      .filter((each) => each !== axis)
      .map(
        (each) =>
          Math.min(one.max[each], other.max[each]) - Math.max(one.min[each], other.min[each]),
      );
    const deep = Math.min(...shared);
    if (across <= 0 || deep <= 0 || isFilled(one, other, { axis, all })) return [];
    return [{ parts: [one.piece, other.piece] as const, across, deep }];
  });
}

/** Does a third part close the gap all the way? */
function isFilled(
  one: PlacedPart,
  other: PlacedPart,
  { axis, all }: { readonly axis: AxisIndex; readonly all: readonly PlacedPart[] },
): boolean {
  const from = Math.min(one.max[axis], other.max[axis]);
  const to = Math.max(one.min[axis], other.min[axis]);
  const spans = (part: PlacedPart, each: AxisIndex) =>
    part.min[each] <= Math.max(one.min[each], other.min[each]) + 0.5 &&
    part.max[each] >= Math.min(one.max[each], other.max[each]) - 0.5;
  return all.some(
    (part) =>
      part !== one &&
      part !== other &&
      part.min[axis] <= from + 0.5 &&
      part.max[axis] >= to - 0.5 &&
      axes.filter((each) => each !== axis).every((each) => spans(part, each)),
  );
}
