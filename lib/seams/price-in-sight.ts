import type { Mm } from "../plane/types.ts";
import { add3, scale3 } from "../solids/points3.ts";
import { normalOf } from "../solids/surfaces.ts";
import type { Face, Point3, Solid, SolidEdge } from "../solids/types.ts";

/**
 * What some open edges cost, in millimetres of an opening that nobody sees.
 *
 * @source our choice: a zip belongs underneath or at the back; on the front it is in everybody's sight
 */
export function priceInSight(edges: readonly string[], cover: Pick<Solid, "faces" | "edges">): Mm {
  const faces = new Map(cover.faces.map((face) => [face.id, face]));
  return cover.edges
    .filter(({ id }) => edges.includes(id))
    .reduce((sum, edge) => {
      const [a, b] = edge.faces.map((id) => sight(faces.get(id)!, edge)) as [number, number];
      return sum + (edge.length * (a + b)) / 2;
    }, 0);
}

/** How much of a face is seen: an edge has half of each of its two. */
function sight(face: Face, edge: SolidEdge): number {
  if (!face.isVisible) return 1;
  const [, towardsBack, upwards] = normalAlong(face, edge);
  if (upwards < -0.9) return 1;
  if (towardsBack > 0.9) return 1.3;
  return towardsBack < -0.9 ? 5 : 3;
}

/** A bolster looks every way, but the seam along its back only backwards. */
function normalAlong({ surface, isCurved, normal }: Face, { path, isStraight }: SolidEdge): Point3 {
  if (!isCurved || !isStraight) return normal;
  return normalOf(surface, scale3(add3(path[0]!, path.at(-1)!), 0.5));
}
