import type { Count, Mm } from "../plane/types.ts";
import { linkHalfEdges } from "./half-edges.ts";
import { cross3, distance3, length3, subtract3 } from "./points3.ts";
import type { UnionMesh, UnionTriangle } from "./union-mesh.ts";

/** A triangle flatter than this has no inside. */
const leastHeight: Mm = 1e-6;

/**
 * Take out triangles without height. Where an edge of one block just touches a round side of
 * another, a facet lets it stick out: on the true surfaces such an island shrinks to a line, but its
 * triangles would still be faces. Each gives way to its neighbour over its longest edge, which is
 * shared out at the corner that lies on that edge.
 */
export function closeSlivers(mesh: UnionMesh): UnionMesh {
  let closed = mesh;
  // Every flip takes the place of one edge by a shorter one; the bound is for the rounding.
  for (let left = mesh.triangles.length; left > 0; left--) {
    const flat = closed.triangles.findIndex((triangle) => longestOfSliver(closed, triangle) >= 0);
    if (flat < 0) break;
    const flipped = flip(closed.triangles, flat, longestOfSliver(closed, closed.triangles[flat]!));
    if (flipped === null) break;
    closed = { ...closed, triangles: flipped };
  }
  return closed;
}

/** Which edge of a triangle its third corner lies on; −1 where the triangle has some height. */
function longestOfSliver({ points }: UnionMesh, { corners }: UnionTriangle): Count {
  const [a, b, c] = [points[corners[0]]!, points[corners[1]]!, points[corners[2]]!];
  const lengths = [distance3(a, b), distance3(b, c), distance3(c, a)];
  const longest = Math.max(...lengths);
  const height = length3(cross3(subtract3(b, a), subtract3(c, a))) / longest;
  return height < leastHeight ? lengths.indexOf(longest) : -1;
}

/** Triangle and neighbour made anew over the other diagonal, as the neighbour's; null where that is taken. */
function flip(
  triangles: readonly UnionTriangle[],
  flat: Count,
  longest: Count,
): readonly UnionTriangle[] | null {
  const edges = linkHalfEdges(triangles.map(({ corners }) => corners));
  const half = 3 * flat + longest;
  const twin = edges.twin(half);
  const [from, to] = [edges.from(half), edges.to(half)];
  const [own, other] = [edges.to(edges.next(half)), edges.to(edges.next(twin))];
  const isTaken = triangles.some(({ corners }) => corners.includes(own) && corners.includes(other));
  if (isTaken) return null;
  const neighbour = edges.triangleOf(twin);
  return triangles.map((triangle, i) => {
    if (i !== flat && i !== neighbour) return triangle;
    const corners = i === flat ? ([from, other, own] as const) : ([other, to, own] as const);
    return { ...triangles[neighbour]!, corners };
  });
}
