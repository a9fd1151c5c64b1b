import type { Count, Mm, Radians } from "../plane/types.ts";
import { linkHalfEdges } from "./half-edges.ts";
import { cross3, distance3, dot3, length3, subtract3 } from "./points3.ts";
import { middleOfStep } from "./refine-step.ts";
import { normalOf } from "./surfaces.ts";
import type { UnionMesh, UnionTriangle } from "./union-mesh.ts";
import type { Point3, Surface } from "./types.ts";

/** Points this near to one another are in one place. */
const samePlace: Mm = 1e-6;
/** Surfaces this near to one direction touch: a corner of both is only good to about 1e-4 mm there. */
const touching: Radians = 2e-6;

/** A point of an edge that lies past one of its neighbours on it, and that neighbour. */
interface Overshoot {
  readonly point: Count;
  readonly past: Count;
}

/**
 * Take out points that lie past the next one on their edge. Where two surfaces all but touch, putting
 * a corner on both can carry it a long way, past corners of facets that stood before it: the edge
 * would run back on itself there and the facets lie double. Such a point falls together with the one
 * it lies past. So does the far end of an edge that runs out and straight back, as where a flat side
 * just touches a round one: a seam there would have nothing on either side.
 */
export function dropOvershoots(mesh: UnionMesh): UnionMesh {
  let straight = mesh;
  for (let left = mesh.points.length; left > 0; left--) {
    const found = findOvershoot(straight);
    if (found === null) break;
    straight = together(straight, found);
  }
  return straight;
}

function findOvershoot(mesh: UnionMesh): Overshoot | null {
  const edges = linkHalfEdges(mesh.triangles.map(({ corners }) => corners));
  const surfaceOf = (half: Count): Count => mesh.triangles[edges.triangleOf(half)]!.surface;
  const leaving = new Map<Count, Count[]>();
  for (let half = 0; half < edges.count; half++) {
    if (surfaceOf(half) === surfaceOf(edges.twin(half))) continue;
    const known = leaving.get(edges.from(half));
    if (known) known.push(half);
    else leaving.set(edges.from(half), [half]);
  }
  for (const [point, halves] of leaving) {
    // Is it on one edge alone, the same two surfaces either way, and no tip?
    const [one, other] = halves;
    if (halves.length !== 2 || surfaceOf(one!) !== surfaceOf(edges.twin(other!))) continue;
    if (surfaceOf(other!) !== surfaceOf(edges.twin(one!))) continue;
    const [a, b] = [edges.to(one!), edges.to(other!)];
    const [at, ahead, behind] = [mesh.points[point]!, mesh.points[a]!, mesh.points[b]!];
    if (dot3(subtract3(ahead, at), subtract3(behind, at)) <= 0) continue;
    const surfaces = [one!, other!].map((half) => mesh.surfaces[surfaceOf(half)]!);
    // Out and straight back is an edge round nothing, even where an edge may turn.
    const isBack = distance3(ahead, behind) < samePlace;
    if (!isBack && (mayTurn(at, surfaces) || runsOn(at, ahead, behind, surfaces))) continue;
    const past = distance3(at, ahead) < distance3(at, behind) ? a : b;
    if (canMeet(mesh.triangles, point, past)) return { point, past };
  }
  return null;
}

/**
 * Whether an edge may turn as sharply as it likes: at the tip of a cone, where a plane through the
 * axis runs up and down again, and where two round sides touch in a point, where their curves cross.
 */
function mayTurn(at: Point3, surfaces: readonly Surface[]): boolean {
  const isTip = surfaces.some(
    (surface) => surface.kind === "cone" && distance3(surface.tip, at) < samePlace,
  );
  if (isTip) return true;
  const [one, other] = surfaces.map((surface) => normalOf(surface, at));
  return length3(cross3(one!, other!)) < touching;
}

/**
 * Whether the curve of both surfaces goes through the point from one neighbour to the other. At the
 * apex of a slender curve, as where a plane grazes a nearly straight cone, its chords make a sharp
 * corner though none lies past another: there the neighbours are on either side along the tangent,
 * and the curve is found again between the point and each. A point carried over to another branch
 * has no curve to its neighbours.
 */
function runsOn(at: Point3, ahead: Point3, behind: Point3, surfaces: readonly Surface[]): boolean {
  const [one, other] = surfaces.map((surface) => normalOf(surface, at));
  const tangent = cross3(one!, other!);
  const [on, back] = [ahead, behind].map((next) => dot3(subtract3(next, at), tangent));
  const isSmooth = on! * back! < 0;
  return isSmooth && [ahead, behind].every((next) => middleOfStep(at, next, surfaces) !== null);
}

/** Whether no other triangles than the two along their edge close when both points fall together. */
function canMeet(triangles: readonly UnionTriangle[], a: Count, b: Count): boolean {
  const round = (point: Count): ReadonlySet<Count> =>
    new Set(triangles.flatMap(({ corners }) => (corners.includes(point) ? corners : [])));
  const near = round(b);
  return (
    [...round(a)].filter((point) => point !== a && point !== b && near.has(point)).length === 2
  );
}

function together(mesh: UnionMesh, { point, past }: Overshoot): UnionMesh {
  const move = (corner: Count): Count => (corner === point ? past : corner);
  const triangles = mesh.triangles
    .filter(({ corners }) => !(corners.includes(point) && corners.includes(past)))
    .map((triangle): UnionTriangle => {
      const [a, b, c] = triangle.corners;
      return { ...triangle, corners: [move(a), move(b), move(c)] };
    });
  return { ...mesh, triangles, points: mesh.points.map((_, i) => mesh.points[move(i)]!) };
}
