import type { Loop, Mm, Ratio } from "../plane/types.ts";
import { pointAlong, segmentLength } from "../plane/segments.ts";
import { liftPoint } from "./lift-point.ts";
import { distance3 } from "./points3.ts";
import type { Face, FaceSide, Point3, Solid, SolidEdge } from "./types.ts";

/** A place on an edge, as a share of its length from its start. */
export interface EdgePart {
  readonly edge: string;
  readonly share: Ratio;
}

/** Points of a path nearer than this are one. */
const samePlace: Mm = 1e-6;

/** The stretch of a parted edge beyond the place; the one before it keeps the edge's name. */
export const beyondPart = (edge: string): string => `${edge}'`;

/** Cut a straight or round edge in two, so that one stretch can be sewn and the other left open. */
export function partEdge(solid: Solid, part: EdgePart): Solid {
  return {
    ...solid,
    edges: solid.edges.flatMap((edge) =>
      edge.id === part.edge ? partPath(edge, part, placeOf(solid, part)) : [edge],
    ),
    faces: solid.faces.map((face) => partFace(face, part)),
  };
}

/** Sides along the edge come apart at the same place, in the order in which they are met. */
export function partSide<S extends FaceSide>(side: S, { edge, share }: EdgePart): readonly S[] {
  if (side.edge !== edge) return [side];
  const at = side.length * (side.isForward ? share : 1 - share);
  const [near, far] = cutLoop(side.segments, at);
  const names = [edge, beyondPart(edge)];
  const [first, last] = side.isForward ? names : names.toReversed();
  return [
    { ...side, edge: first!, segments: near, length: at },
    { ...side, edge: last!, segments: far, length: side.length - at },
  ];
}

function partFace(face: Face, part: EdgePart): Face {
  if (!face.loops.flat().some(({ edge }) => edge === part.edge)) return face;
  const loops = face.loops.map((loop) => loop.flatMap((side) => partSide(side, part)));
  const [outer, ...holes] = loops.map((loop) => loop.flatMap(({ segments }) => segments));
  return { ...face, loops, shape: { outer: outer!, holes } };
}

/** Where in space the edge is cut, read off the side that runs along it. */
function placeOf({ faces }: Solid, { edge, share }: EdgePart): Point3 {
  for (const { surface, loops } of faces) {
    const side = loops.flat().find((one) => one.edge === edge && one.isForward);
    if (side === undefined) continue;
    const [near] = cutLoop(side.segments, side.length * share);
    return liftPoint(surface, near.at(-1)!.to);
  }
  return [0, 0, 0];
}

function partPath(edge: SolidEdge, { share }: EdgePart, place: Point3): readonly SolidEdge[] {
  const detour = (i: number): Mm => {
    const [from, to] = [edge.path[i]!, edge.path[i + 1]!];
    return distance3(from, place) + distance3(place, to) - distance3(from, to);
  };
  const steps = edge.path.slice(1).map((_, i) => i);
  const step = steps.reduce((best, i) => (detour(i) < detour(best) - samePlace ? i : best), 0);
  const isOther = (point: Point3) => distance3(point, place) > samePlace;
  const before = edge.path.slice(0, step + 1).filter((point, i) => i === 0 || isOther(point));
  const after = edge.path
    .slice(step + 1)
    .filter((point, i, all) => i === all.length - 1 || isOther(point));
  return [
    { ...edge, length: edge.length * share, path: [...before, place] },
    {
      ...edge,
      id: beyondPart(edge.id),
      length: edge.length * (1 - share),
      path: [place, ...after],
    },
  ];
}

/** Segments up to a place some way along, and those after it. */
function cutLoop(segments: Loop, along: Mm): readonly [Loop, Loop] {
  let left = along;
  for (const [i, segment] of segments.entries()) {
    const length = segmentLength(segment);
    if (left > length - samePlace && i < segments.length - 1) {
      left -= length;
      if (left < samePlace) return [segments.slice(0, i + 1), segments.slice(i + 1)];
      continue;
    }
    const middle = pointAlong(segment, left / length);
    return [
      [...segments.slice(0, i), { ...segment, to: middle }],
      [{ ...segment, from: middle }, ...segments.slice(i + 1)],
    ];
  }
  return [segments, []];
}
