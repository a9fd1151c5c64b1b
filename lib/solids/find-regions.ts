import type { Count, Mm } from "../plane/types.ts";
import { linkHalfEdges, type HalfEdges } from "./half-edges.ts";
import { dot3, flatten3, subtract3, unit3, cross3, length3, distance3 } from "./points3.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Direction, Point3, Surface } from "./types.ts";

/** Triangles that make up one face, and where it must be slit to lie flat. */
export interface Region {
  readonly triangles: readonly Count[];
  readonly surface: Surface;
  /** Half-edges of the slit, both ways; empty where the face lies flat of itself. */
  readonly slit: ReadonlySet<Count>;
  /** For a curved face the direction from the axis at which it is opened out. */
  readonly opensAt: Direction | null;
}

/** Group triangles that lie on one surface and hang together into faces. */
export function findRegions(mesh: UnionMesh): {
  regions: Region[];
  edges: HalfEdges;
  regionOf: Count[];
} {
  const edges = linkHalfEdges(mesh.triangles.map(({ corners }) => corners));
  const regionOf = new Array<Count>(mesh.triangles.length).fill(-1);
  const regions: Region[] = [];
  mesh.triangles.forEach((start, index) => {
    if (regionOf[index] !== -1) return;
    const members: Count[] = [];
    const waiting = [index];
    regionOf[index] = regions.length;
    while (waiting.length > 0) {
      const triangle = waiting.pop()!;
      members.push(triangle);
      for (let half = triangle * 3; half < triangle * 3 + 3; half++) {
        const other = edges.triangleOf(edges.twin(half));
        if (regionOf[other] !== -1 || mesh.triangles[other]!.surface !== start.surface) continue;
        regionOf[other] = regions.length;
        waiting.push(other);
      }
    }
    members.sort((a, b) => a - b);
    const surface = mesh.surfaces[start.surface]!;
    regions.push({
      triangles: members,
      surface,
      ...openOut(mesh, edges, regionOf, members, surface),
    });
  });
  return { regions, edges, regionOf };
}

/**
 * Find the line along which a curved face is opened to lie flat: one that no triangle crosses and
 * that costs least slit. Between equals the back is slit, then the underside.
 */
function openOut(
  mesh: UnionMesh,
  edges: HalfEdges,
  regionOf: readonly Count[],
  members: readonly Count[],
  surface: Surface,
): Pick<Region, "slit" | "opensAt"> {
  if (surface.kind === "plane") return { slit: new Set(), opensAt: null };
  const own = regionOf[members[0]!]!;
  const lines = new Map<string, { direction: Direction; halves: Count[]; length: number }>();
  const crosses = (corners: readonly Point3[], direction: Direction): boolean => {
    const across = cross3(surface.axis, direction);
    const angles = corners
      .filter((corner) => !isTip(surface, corner))
      .map(radial)
      .map((to) => Math.atan2(dot3(to, across), dot3(to, direction)));
    const [low, high] = [Math.min(...angles), Math.max(...angles)];
    return low < -1e-7 && high > 1e-7 && high - low < Math.PI;
  };
  const radial = (point: Point3) =>
    unit3(flatten3(subtract3(point, axisPoint(surface)), surface.axis));
  for (const half of members.flatMap((triangle) => [0, 1, 2].map((i) => triangle * 3 + i))) {
    const [from, to] = [mesh.points[edges.from(half)]!, mesh.points[edges.to(half)]!];
    const direction = radial(isTip(surface, from) ? to : from);
    const key = direction.map((part) => Math.round(part * 1e5)).join(" ");
    const line = lines.get(key) ?? { direction, halves: [], length: 0 };
    lines.set(key, line);
    // Does this edge run straight along the surface, inside the face?
    const isInside = regionOf[edges.triangleOf(edges.twin(half))] === own;
    const isRuled = length3(cross3(subtract3(to, from), ruling(surface, direction))) < offLine;
    if (!isInside || !isRuled) continue;
    line.halves.push(half);
    line.length += distance3(from, to);
  }
  const clear = [...lines.values()].filter(({ direction }) =>
    members.every(
      (triangle) =>
        !crosses(
          mesh.triangles[triangle]!.corners.map((i) => mesh.points[i]!),
          direction,
        ),
    ),
  );
  const ranked = clear.sort(
    (a, b) =>
      Math.round((a.length - b.length) * 1e3) ||
      Math.round((b.direction[1] - a.direction[1]) * 1e6) ||
      Math.round((a.direction[2] - b.direction[2]) * 1e6),
  );
  // A slit must not cut an island off the face: then the next line is tried.
  const bothWays = (halves: readonly Count[]) => new Set([...halves, ...halves.map(edges.twin)]);
  const best =
    ranked.find(({ halves }) => isOnePiece(members, bothWays(halves), edges)) ?? ranked[0]!;
  return { slit: bothWays(best.halves), opensAt: best.direction };
}

/** Corners come from the kernel good to about this much; an edge so close to a ruling is one. */
const offLine: Mm = 1e-3;

/** Whether triangles still hang together when the edges of a slit are cut. */
function isOnePiece(
  members: readonly Count[],
  slit: ReadonlySet<Count>,
  edges: HalfEdges,
): boolean {
  const own = new Set(members);
  const reached = new Set([members[0]!]);
  const waiting = [members[0]!];
  while (waiting.length > 0) {
    const triangle = waiting.pop()!;
    for (let half = triangle * 3; half < triangle * 3 + 3; half++) {
      const other = edges.triangleOf(edges.twin(half));
      if (slit.has(half) || !own.has(other) || reached.has(other)) continue;
      reached.add(other);
      waiting.push(other);
    }
  }
  return reached.size === members.length;
}

export const axisPoint = (surface: Surface & { kind: "cylinder" | "cone" }): Point3 =>
  surface.kind === "cylinder" ? surface.centre : surface.tip;

const isTip = (surface: Surface, point: Point3): boolean =>
  surface.kind === "cone" && distance3(point, surface.tip) < 1e-6;

/** Direction of the straight line on the surface at this side of the axis, either way. */
function ruling(surface: Surface & { kind: "cylinder" | "cone" }, radial: Direction): Direction {
  if (surface.kind === "cylinder") return surface.axis;
  const [out, along] = [Math.sin(surface.halfAngle), Math.cos(surface.halfAngle)];
  return unit3(
    [0, 1, 2].map((i) => radial[i]! * out + surface.axis[i]! * along) as unknown as Point3,
  );
}

/** Whether a half-edge bounds its face: the neighbour is another face, or it lies on the slit. */
export const isBoundary =
  (edges: HalfEdges, regionOf: readonly Count[], regions: readonly Region[]) =>
  (half: Count): boolean => {
    const own = regionOf[edges.triangleOf(half)]!;
    return own !== regionOf[edges.triangleOf(edges.twin(half))] || regions[own]!.slit.has(half);
  };
