import type { Mm } from "../plane/types.ts";
import type { Fault } from "../project/types.ts";
import type { Solid, SolidBlock } from "../solids/types.ts";

/** Blocks nearer than this touch. */
const touching: Mm = 0.01;

/**
 * Blocks that no one cover can hold, as cloth would have to run through a line, a point or the air: parts
 * that share no face with the rest.
 *
 * @param field dotted path of the solid
 */
export function findTouching(solid: Solid, field: string): readonly Fault[] {
  const [, ...others] = solid.parts;
  return others.map((part) => {
    const rest = solid.parts.filter((one) => one !== part).flat();
    return isApart(solid, part, { rest, field: `${field}.blocks` });
  });
}

function isApart(
  solid: Solid,
  part: readonly string[],
  { rest, field }: { readonly rest: readonly string[]; readonly field: string },
): Fault {
  const block = (id: string) => solid.blocks.find((one) => one.id === id)!;
  const pairs = part.flatMap((own) =>
    rest.map((other) => ({ own, other, gap: gapBetween(block(own), block(other)) })),
  );
  const { own, other, gap } = pairs.reduce((a, b) => (b.gap < a.gap ? b : a));
  const how =
    gap > touching
      ? `stands apart from ${other}`
      : `meets ${other} along an edge or at a point only`;
  return {
    field: `${field}.${own}`,
    fault: `${how}: one cover cannot hold both`,
    fix: `Move ${own} so that the two share a face, or make it a solid of its own`,
  };
}

/** Distance between the boxes round two blocks; 0 when they meet or overlap. */
function gapBetween(one: SolidBlock, other: SolidBlock): Mm {
  const apart = ([0, 1, 2] as const).map((axis) =>
    Math.max(
      0,
      other.min[axis] - (one.min[axis] + one.size[axis]),
      one.min[axis] - (other.min[axis] + other.size[axis]),
    ),
  );
  return Math.hypot(...apart);
}
