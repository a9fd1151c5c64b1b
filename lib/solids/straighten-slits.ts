import type { Count } from "../plane/types.ts";
import type { Region } from "./find-regions.ts";
import type { HalfEdges } from "./half-edges.ts";
import { polishPoint } from "./polish-points.ts";
import { axisPoint } from "./surfaces.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Surface } from "./types.ts";

/**
 * Put the points of each slit exactly on the line along which the face is opened. Points that only
 * two surfaces hold could otherwise lie a hair to either side, and the two edges of the slit would
 * differ by as much.
 */
export function straightenSlits(
  mesh: UnionMesh,
  edges: HalfEdges,
  regions: readonly Region[],
): UnionMesh {
  const held = mesh.points.map(() => new Set<Count>());
  mesh.triangles.forEach(({ corners, surface }) => corners.forEach((i) => held[i]!.add(surface)));
  const points = [...mesh.points];
  for (const { slit, surface, opensAt, isStraight } of regions) {
    if (surface.kind === "plane" || opensAt === null || !isStraight) continue;
    const along: Surface = {
      kind: "plane",
      origin: axisPoint(surface),
      across: opensAt,
      rise: surface.axis,
    };
    for (const index of new Set([...slit].flatMap((half) => [edges.from(half), edges.to(half)]))) {
      if (held[index]!.size > 2) continue;
      const surfaces = [...held[index]!].map((number) => mesh.surfaces[number]!);
      points[index] = polishPoint(points[index]!, [...surfaces, along]);
    }
  }
  return { ...mesh, points };
}
