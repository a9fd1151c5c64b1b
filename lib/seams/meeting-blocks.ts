import type { Mm } from "../plane/types.ts";
import { cross3, distance3, dot3, length3, subtract3, unit3 } from "../solids/points3.ts";
import type { Point3, Solid, SolidEdge } from "../solids/types.ts";
import { endsOfEdge } from "./gauge-opening.ts";

/** Lines nearer than this are one line. */
const touching: Mm = 0.01;

/**
 * The first two blocks of which an edge lies on an edge of the other, so that four sides meet there; null
 * where all edges have two sides.
 *
 * @source Weisstein, "Manifold", MathWorld: a surface has two faces at every edge
 */
export function meetingBlocks({ edges, faces }: Solid): readonly [string, string] | null {
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
