import type { Mm } from "../plane/types.ts";
import type { Fault } from "../project/types.ts";
import { cross3, distance3, dot3, length3, subtract3, unit3 } from "../solids/points3.ts";
import type { Point3, Solid, SolidBlock, SolidEdge } from "../solids/types.ts";
import { endsOfEdge } from "./gauge-opening.ts";

/** Lines nearer than this are one line, and blocks nearer than this touch. */
const touching: Mm = 0.01;

/**
 * Blocks that no one cover can hold: parts that share no face, and edges at which four sides meet, so that
 * cloth would have to run through a line or a point.
 *
 * @param field dotted path of the solid
 */
export function findTouching(solid: Solid, field: string): readonly Fault[] {
  const [, ...others] = solid.parts;
  if (others.length > 0)
    return others.map((part) => {
      const rest = solid.parts.filter((one) => one !== part).flat();
      return isApart(solid, part, { rest, field: `${field}.blocks` });
    });
  const met = meetingBlocks(solid);
  return met === null ? [] : [meetsInEdge(met, `${field}.blocks`)];
}

/** The first two blocks that have an edge on one line with one another. */
function meetingBlocks({ edges, faces }: Solid): readonly [string, string] | null {
  const straight = edges.filter(({ isStraight, faces: [a, b] }) => isStraight && a !== b);
  const blocksOf = (edge: SolidEdge): readonly string[] =>
    edge.faces.map((id) => faces.find((face) => face.id === id)!.names[0]!.split("/")[0]!);
  for (const [i, edge] of straight.entries()) {
    for (const other of straight.slice(i + 1)) {
      if (!runTogether(endsOfEdge(edge), endsOfEdge(other))) continue;
      const names = [...new Set([...blocksOf(edge), ...blocksOf(other)])];
      return [names[0]!, names[1] ?? names[0]!];
    }
  }
  return null;
}

/** Whether two straight edges share more of a line than a point. */
function runTogether([a, b]: readonly [Point3, Point3], other: readonly [Point3, Point3]): boolean {
  const along = unit3(subtract3(b, a));
  const isOn = (point: Point3) => length3(cross3(along, subtract3(point, a))) < touching;
  if (!other.every(isOn)) return false;
  const [c, d] = other.map((point) => dot3(along, subtract3(point, a))) as [Mm, Mm];
  return Math.min(distance3(a, b), Math.max(c, d)) - Math.max(0, Math.min(c, d)) > touching;
}

const meetsInEdge = ([one, other]: readonly [string, string], field: string): Fault => ({
  field: `${field}.${other}`,
  fault: `meets ${one} along an edge only, where no cover can be sewn`,
  fix: `Move ${other} so that the two share a face or leave a gap`,
});

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
