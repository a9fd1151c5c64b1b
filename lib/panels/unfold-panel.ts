import type { Loop, Placement, Point, Radians } from "../plane/types.ts";
import { angleOf, distance, subtract } from "../plane/points.ts";
import { atHome, composePlacements, placePoint, placeSegment } from "../plane/place.ts";
import { loopArea } from "../plane/loop-area.ts";
import type { Face, FaceSide, Solid, SolidEdge } from "../solids/types.ts";
import type { Fold } from "./types.ts";

/** Faces and edges of a solid by id, and the two sides of each edge. */
export interface FaceGraph {
  readonly faces: ReadonlyMap<string, Face>;
  readonly edges: ReadonlyMap<string, SolidEdge>;
  /** The side of a face along an edge, forward or backward. */
  readonly sides: ReadonlyMap<string, FaceSide>;
  /** Edges that stay seams wherever their faces lie: piped, left open, or cut for a closing. */
  readonly kept: ReadonlySet<string>;
}

/** Faces laid flat together, in the frame of the first. */
export interface Unfolding {
  readonly placements: ReadonlyMap<string, Placement>;
  readonly folds: readonly Fold[];
  /** Outline loops as sides, moved into the common frame; the outer one first. */
  readonly loops: readonly (readonly FaceSide[])[];
}

export function graphSolid(
  solid: Pick<Solid, "faces" | "edges">,
  kept: ReadonlySet<string> = new Set(),
): FaceGraph {
  return {
    kept,
    faces: new Map(solid.faces.map((face) => [face.id, face])),
    edges: new Map(solid.edges.map((edge) => [edge.id, edge])),
    sides: new Map(
      solid.faces.flatMap((face) =>
        face.loops.flat().map((side) => [sideKey(side.edge, side.isForward), side]),
      ),
    ),
  };
}

export const sideKey = (edge: string, isForward: boolean): string =>
  `${edge}${isForward ? "+" : "-"}`;

/** The side across the edge. */
export const twinOf = (graph: FaceGraph, side: FaceSide): FaceSide =>
  graph.sides.get(sideKey(side.edge, !side.isForward))!;

/**
 * Where a neighbour lies once it is folded out over an edge: its side runs back along ours.
 * Needs a straight edge.
 */
export function placeNeighbour(graph: FaceGraph, side: FaceSide, placement: Placement): Placement {
  const twin = twinOf(graph, side);
  const [ownFrom, ownTo] = endsOf(side.segments).map((end) => placePoint(end, placement)) as [
    Point,
    Point,
  ];
  const [from, to] = endsOf(twin.segments);
  const turn: Radians = angleOf(subtract(ownFrom, ownTo)) - angleOf(subtract(to, from));
  const turned = placePoint(from, { ...atHome, turn });
  return { turn, isFlipped: false, shift: subtract(ownTo, turned) };
}

const endsOf = (segments: Loop): [Point, Point] => [segments[0]!.from, segments.at(-1)!.to];

/**
 * Lay faces flat along a tree of folds.
 *
 * @param folded edges to fold; together they must join all the faces, without a ring
 */
export function unfoldPanel(
  graph: FaceGraph,
  faces: readonly string[],
  folded: readonly string[],
): Unfolding {
  const placements = new Map<string, Placement>([[faces[0]!, atHome]]);
  const waiting = [faces[0]!];
  const isFolded = new Set(folded);
  while (waiting.length > 0) {
    const face = waiting.shift()!;
    for (const side of graph.faces.get(face)!.loops.flat()) {
      const other = twinOf(graph, side).face;
      if (!isFolded.has(side.edge) || placements.has(other)) continue;
      placements.set(other, placeNeighbour(graph, side, placements.get(face)!));
      waiting.push(other);
    }
  }
  closeSlits(graph, faces, placements, isFolded);
  const folds = [...isFolded].map((edge) => describeFold(graph, edge, placements));
  return { placements, folds, loops: walkOutline(graph, faces, placements, isFolded) };
}

/** Two sides of one edge that come to lie on each other are one more fold, unless a seam is wanted there. */
function closeSlits(
  graph: FaceGraph,
  faces: readonly string[],
  placements: ReadonlyMap<string, Placement>,
  folded: Set<string>,
): void {
  for (const side of faces.flatMap((face) => graph.faces.get(face)!.loops.flat())) {
    if (!folded.has(side.edge) && liesOnTwin(graph, side, placements)) folded.add(side.edge);
  }
}

/** Whether both sides of a straight edge lie on each other, so that it needs no seam. */
export function liesOnTwin(
  graph: FaceGraph,
  side: FaceSide,
  placements: ReadonlyMap<string, Placement>,
): boolean {
  const twin = twinOf(graph, side);
  if (twin.face === side.face || !placements.has(twin.face)) return false;
  if (!graph.edges.get(side.edge)!.isStraight || graph.kept.has(side.edge)) return false;
  const own = endsOf(side.segments).map((end) => placePoint(end, placements.get(side.face)!));
  const other = endsOf(twin.segments).map((end) => placePoint(end, placements.get(twin.face)!));
  return distance(own[0]!, other[1]!) < 1e-6 && distance(own[1]!, other[0]!) < 1e-6;
}

function describeFold(
  graph: FaceGraph,
  edge: string,
  placements: ReadonlyMap<string, Placement>,
): Fold {
  const { faces, bend, turn } = graph.edges.get(edge)!;
  const side = graph.sides.get(sideKey(edge, true))!;
  const [from, to] = endsOf(side.segments).map((end) =>
    placePoint(end, placements.get(side.face)!),
  ) as [Point, Point];
  return { edge, faces, from, to, bend, turn };
}

/** Walk the sides that are not folded, stepping over each fold into the face beyond. */
function walkOutline(
  graph: FaceGraph,
  faces: readonly string[],
  placements: ReadonlyMap<string, Placement>,
  folded: ReadonlySet<string>,
): FaceSide[][] {
  const next = new Map<FaceSide, FaceSide>();
  const all = faces.flatMap((face) => graph.faces.get(face)!.loops);
  all.forEach((loop) => loop.forEach((side, i) => next.set(side, loop[(i + 1) % loop.length]!)));
  const seen = new Set<FaceSide>();
  const loops: FaceSide[][] = [];
  for (const start of all.flat()) {
    if (seen.has(start) || folded.has(start.edge)) continue;
    const loop: FaceSide[] = [];
    for (let side = start; !seen.has(side);) {
      seen.add(side);
      loop.push(moveSide(side, placements.get(side.face)!));
      side = next.get(side)!;
      while (folded.has(side.edge)) side = next.get(twinOf(graph, side))!;
    }
    loops.push(loop);
  }
  const area = (loop: readonly FaceSide[]) => loopArea(loop.flatMap(({ segments }) => segments));
  return loops.sort((a, b) => area(b) - area(a));
}

export const moveSide = <T extends FaceSide>(side: T, placement: Placement): T => ({
  ...side,
  segments: side.segments.map((segment) => placeSegment(segment, placement)),
});

/** Every face of an unfolding moved on by the same placement. */
export const moveUnfolding = (unfolding: Unfolding, by: Placement): Unfolding => ({
  placements: new Map(
    [...unfolding.placements].map(([face, own]) => [face, composePlacements(own, by)]),
  ),
  folds: unfolding.folds.map((fold) => ({
    ...fold,
    from: placePoint(fold.from, by),
    to: placePoint(fold.to, by),
  })),
  loops: unfolding.loops.map((loop) => loop.map((side) => moveSide(side, by))),
});
