import type { Count, Loop, Mm, Point, Radians } from "../plane/types.ts";
import { angleOf, subtract } from "../plane/points.ts";
import { loopArea } from "../plane/loop-area.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import { segmentLength } from "../plane/segments.ts";
import type { UpDirection } from "../project/types.ts";
import { upByAuthor, upOfNormal } from "./face-up.ts";
import type { Region } from "./find-regions.ts";
import { flattenRun, isStraightPath } from "./flatten-run.ts";
import type { HalfEdges } from "./half-edges.ts";
import { flattenPoint, liftPoint } from "./lift-point.ts";
import { add3, cross3, dot3, length3, scale3, subtract3, unit3 } from "./points3.ts";
import { axisPoint, normalOf } from "./surfaces.ts";
import type { Run } from "./trace-loops.ts";
import { walkRuns, type RunStep } from "./walk-runs.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Direction, Face, FaceSide, Point3, SolidEdge, Surface } from "./types.ts";

export interface NamedRegion extends Region {
  readonly id: string;
  readonly names: readonly string[];
  readonly label: string;
  readonly wantedUp: UpDirection | null;
}

/** Lay every region flat in its own frame and give each stretch of boundary its edge. */
export function buildFaces(
  mesh: UnionMesh,
  halfEdges: HalfEdges,
  regions: readonly NamedRegion[],
  loops: readonly (readonly (readonly Run[])[])[],
): { faces: Face[]; edges: SolidEdge[] } {
  const frames = regions.map((region) => frameRegion(mesh, region));
  const walk = walkRuns(mesh, halfEdges, regions);
  const edges: SolidEdge[] = [];
  const edgeOf = new Map<Count, { edge: string; isForward: boolean }>();
  for (const run of loops.flat(2)) {
    const [half] = run.halves;
    if (edgeOf.has(half!)) continue;
    const edge = describeEdge(
      `E${edges.length + 1}`,
      walk(run),
      [regions[run.region]!, regions[run.neighbour]!],
      flattenRun(
        flatCorners(walk(run), mesh, halfEdges, frames[run.region]!.surface),
        frames[run.region]!.surface,
        regions[run.neighbour]!.surface,
      ),
    );
    edges.push(edge);
    run.halves.forEach((one) => edgeOf.set(one, { edge: edge.id, isForward: true }));
    run.halves.forEach((one) =>
      edgeOf.set(halfEdges.twin(one), { edge: edge.id, isForward: false }),
    );
  }
  const lowest = Math.min(...mesh.points.map(([, , z]) => z));
  const faces = regions.map((region, index): Face => {
    const frame = frames[index]!;
    const flatLoops = loops[index]!.map((loop) =>
      loop.map((run): FaceSide => {
        const segments = flattenRun(
          flatCorners(walk(run), mesh, halfEdges, frame.surface),
          frame.surface,
          regions[run.neighbour]!.surface,
        );
        const { edge, isForward } = edgeOf.get(run.halves[0]!)!;
        return { face: region.id, edge, segments, length: lengthOf(segments), isForward };
      }),
    ).sort((a, b) => Math.abs(loopArea(joined(b))) - Math.abs(loopArea(joined(a))));
    const [outer, ...holes] = flatLoops.map(joined);
    const shape = { outer: outer!, holes };
    return {
      id: region.id,
      names: region.names,
      label: region.label,
      surface: frame.surface,
      area: holes.reduce((area, hole) => area + loopArea(hole), loopArea(outer!)),
      normal: frame.normal,
      up: frame.up,
      upAngle: frame.upAngle,
      shape,
      loops: flatLoops,
      isCurved: region.surface.kind !== "plane",
      isVisible: !(
        region.surface.kind === "plane" &&
        frame.normal[2] < -0.999 &&
        lowestOf(mesh, region) < lowest + 1e-6
      ),
    };
  });
  return { faces, edges };
}

const joined = (sides: readonly FaceSide[]): Loop => sides.flatMap(({ segments }) => segments);
const lengthOf = (segments: Loop): Mm => segments.reduce((sum, one) => sum + segmentLength(one), 0);
const lowestOf = (mesh: UnionMesh, region: Region): Mm =>
  Math.min(
    ...region.triangles.flatMap((t) => mesh.triangles[t]!.corners.map((i) => mesh.points[i]![2])),
  );

/** Corners of a stretch, start and end included, in the face's flat. */
function flatCorners(
  steps: readonly RunStep[],
  mesh: UnionMesh,
  edges: HalfEdges,
  surface: Surface,
): Point[] {
  const flat = (point: Point3, half: Count): Point =>
    flattenPoint(surface, point, middleOf(mesh, edges.triangleOf(half)));
  const last = steps.at(-1)!;
  return [...steps.map(({ from, half }) => flat(from, half)), flat(last.to, last.half)];
}

function middleOf(mesh: UnionMesh, triangle: Count): Point3 {
  const [a, b, c] = mesh.triangles[triangle]!.corners.map((i) => mesh.points[i]!);
  return scale3(add3(a!, add3(b!, c!)), 1 / 3);
}

/** The face's own frame: flat axes, up, and the mean outward direction. */
function frameRegion(mesh: UnionMesh, region: NamedRegion) {
  const { surface } = region;
  const mean = meanNormal(mesh, region);
  const normal: Point3 = surface.kind === "plane" ? normalOf(surface, surface.origin) : mean;
  const reference = referenceNormal(surface, mean);
  const up = (region.wantedUp && upByAuthor(region.wantedUp, reference)) ?? upOfNormal(reference);
  const framed = placeFrame(surface, region, up, mesh);
  const upAngle = surface.kind === "plane" ? Math.PI / 2 : angleInFlat(framed, reference, up);
  return { surface: framed, normal, up, upAngle };
}

function meanNormal(mesh: UnionMesh, region: Region): Point3 {
  const parts = region.triangles.map((triangle) => {
    const [a, b, c] = mesh.triangles[triangle]!.corners.map((i) => mesh.points[i]!);
    return cross3(subtract3(b!, a!), subtract3(c!, a!));
  });
  const sum = parts.reduce(add3, [0, 0, 0]);
  const whole = parts.reduce((area, part) => area + length3(part), 0);
  const { surface } = region;
  const across =
    surface.kind === "plane" ? sum : subtract3(sum, scale3(surface.axis, dot3(sum, surface.axis)));
  return length3(across) < 1e-6 * whole ? [0, 0, 0] : unit3(sum);
}

/** Where on a curved face its up is read: the middle of a patch, the front of one that goes round. */
function referenceNormal(surface: Surface, mean: Point3): Direction {
  if (surface.kind === "plane") return normalOf(surface, surface.origin);
  const flat = subtract3(mean, scale3(surface.axis, dot3(mean, surface.axis)));
  if (length3(flat) > 1e-3) return unit3(flat);
  const front: Direction = [0, -1, 0];
  return Math.abs(surface.axis[1]) > 0.9 ? [0, 0, 1] : front;
}

function placeFrame(surface: Surface, region: Region, up: Direction, mesh: UnionMesh): Surface {
  const corners = region.triangles.flatMap((t) =>
    mesh.triangles[t]!.corners.map((i) => mesh.points[i]!),
  );
  switch (surface.kind) {
    case "plane": {
      const normal = normalOf(surface, surface.origin);
      const loose: Surface = { ...surface, rise: up, across: unit3(cross3(up, normal)) };
      const { min } = pointBounds(corners.map((corner) => flattenPoint(loose, corner)));
      return { ...loose, origin: liftPoint(loose, min) };
    }
    case "cylinder": {
      const turned: Surface = { ...surface, zero: region.opensAt! };
      const low = Math.min(
        ...corners.map((corner) => dot3(subtract3(corner, surface.centre), surface.axis)),
      );
      return { ...turned, centre: add3(surface.centre, scale3(surface.axis, low)) };
    }
    case "cone":
      return { ...surface, zero: scale3(region.opensAt!, -1) };
  }
}

/** Which way a direction in space points in the flat of a curved face, near a given normal. */
function angleInFlat(surface: Surface, normal: Direction, up: Direction): Radians {
  if (surface.kind === "plane") return Math.PI / 2;
  if (surface.kind === "cone") return Math.PI / 2;
  const at = add3(axisPoint(surface), scale3(normal, surface.radius));
  const step = 1e-3;
  const moved = add3(at, scale3(up, step));
  const angle = angleOf(subtract(flattenPoint(surface, moved, at), flattenPoint(surface, at)));
  const quarter = Math.PI / 2;
  // Up runs along the axis or round it on everything we can cut; drop the rounding of the step.
  const nearest = Math.round(angle / quarter) * quarter;
  return Math.abs(angle - nearest) < 1e-3 ? nearest : angle;
}

function describeEdge(
  id: string,
  steps: readonly RunStep[],
  [own, other]: readonly [NamedRegion, NamedRegion],
  flat: Loop,
): SolidEdge {
  const path = [...steps.map(({ from }) => from), steps.at(-1)!.to];
  const middle = path[Math.floor((path.length - 1) / 2)]!;
  const after = path[Math.floor((path.length - 1) / 2) + 1]!;
  const halfWay = scale3(add3(middle, after), 0.5);
  const [n1, n2] = [normalOf(own.surface, halfWay), normalOf(other.surface, halfWay)];
  const travel = unit3(subtract3(after, middle));
  // The face lies to the left of travel: the edge is convex when the normals turn away from each other.
  const sine = dot3(cross3(n1, n2), travel);
  const turn = Math.atan2(length3(cross3(n1, n2)), dot3(n1, n2));
  return {
    id,
    faces: [own.id, other.id],
    length: lengthOf(flat),
    bend: sine < -1e-9 ? "inward" : "convex",
    turn: turn < 1e-9 ? 0 : turn,
    isStraight: isStraightPath(path, [own.surface, other.surface]),
    path,
  };
}
