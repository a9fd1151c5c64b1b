import type { Count, Mm } from "../plane/types.ts";
import { distance3 } from "./points3.ts";
import type { UnionMesh, UnionTriangle } from "./union-mesh.ts";

/** Ends of an edge nearer than this are one corner. */
const samePlace: Mm = 1e-6;

/**
 * Take out edges without length. Where round sides all but touch, their facets can cross oftener
 * than the sides do; on the true surfaces some of these crossings fall together, and the slivers
 * between them close. Points that merely lie in one place, as where two blocks touch in an edge,
 * stay apart.
 */
export function weldPoints(mesh: UnionMesh): UnionMesh {
  const stands = mesh.points.map((_, i) => i);
  const find = (i: Count): Count => {
    let at = i;
    while (stands[at] !== at) at = stands[at]!;
    return at;
  };
  let isWhole = true;
  for (const { corners } of mesh.triangles) {
    corners.forEach((from, i) => {
      const to = corners[(i + 1) % 3]!;
      if (distance3(mesh.points[from]!, mesh.points[to]!) > samePlace) return;
      isWhole = false;
      const [a, b] = [find(from), find(to)];
      stands[Math.max(a, b)] = Math.min(a, b);
    });
  }
  if (isWhole) return mesh;
  const triangles = mesh.triangles
    .map((triangle): UnionTriangle => {
      const [a, b, c] = triangle.corners.map(find) as [Count, Count, Count];
      return { ...triangle, corners: [a, b, c] };
    })
    .filter(({ corners: [a, b, c] }) => a !== b && b !== c && c !== a);
  return { ...mesh, triangles: withoutFlaps(triangles) };
}

/** Two triangles back to back enclose nothing: both go. */
function withoutFlaps(triangles: readonly UnionTriangle[]): readonly UnionTriangle[] {
  const waiting = new Map<string, Count>();
  const gone = new Set<Count>();
  triangles.forEach(({ corners }, i) => {
    const mate = waiting.get(keyOf([...corners].reverse()));
    if (mate === undefined) waiting.set(keyOf(corners), i);
    else {
      gone.add(i).add(mate);
      waiting.delete(keyOf([...corners].reverse()));
    }
  });
  return triangles.filter((_, i) => !gone.has(i));
}

/** Corners from the lowest on, in their order. */
function keyOf(corners: readonly Count[]): string {
  const first = corners.indexOf(Math.min(...corners));
  return [...corners.slice(first), ...corners.slice(0, first)].join(" ");
}
