import type { Count, Mm, Placement } from "../plane/types.ts";
import { loopArea } from "../plane/loop-area.ts";
import { atHome } from "../plane/place.ts";
import { measureCandidate, type Measures } from "./measure-candidate.ts";
import { findTwins } from "./find-twins.ts";
import { facesOverlap, placeFace, type PlacedFace } from "./overlaps.ts";
import { liesOnTwin, placeNeighbour, twinOf, unfoldPanel, type FaceGraph } from "./unfold-panel.ts";

/** Faces that lie flat together without overlap, and the folds that hold them. */
export interface Candidate {
  readonly faces: readonly string[];
  readonly folded: readonly string[];
  /** Worked out when first asked for: many candidates are only steps on the way to others. */
  readonly measures: Measures;
  readonly placements: ReadonlyMap<string, Placement>;
  readonly placed: readonly PlacedFace[];
}

/** Remembers what has been unfolded, so that every rule shares the geometry. */
export interface Grower {
  readonly single: (face: string) => Candidate;
  /** The candidate with one more face, or null when it would overlap itself. */
  readonly extend: (candidate: Candidate, edge: string) => Candidate | null;
  /** The face that an open edge of a candidate leads to. */
  readonly beyond: (candidate: Candidate, edge: string) => string;
  /** Straight edges from the candidate to faces outside it. */
  readonly openEdges: (candidate: Candidate) => readonly string[];
}

/** @param allowance room that every edge needs for its seam */
export function growCandidates(graph: FaceGraph, allowance: Mm): Grower {
  const twins = findTwins(graph);
  const known = new Map<string, Candidate | null>();
  const singles = new Map<string, Candidate>();
  const remember = (
    faces: readonly string[],
    folded: readonly string[],
    placements: ReadonlyMap<string, Placement>,
    placed: readonly PlacedFace[],
  ): Candidate => {
    let measures: Measures | null = null;
    return {
      faces,
      folded,
      placements,
      placed,
      get measures() {
        const unfolding = () => unfoldPanel(graph, faces, folded);
        return (measures ??= measureCandidate(graph, unfolding(), twins, allowance));
      },
    };
  };
  const open = new WeakMap<Candidate, readonly string[]>();
  const findOpen = (candidate: Candidate): readonly string[] =>
    candidate.faces.flatMap((face) =>
      graph.faces
        .get(face)!
        .loops.flat()
        .filter(
          (side) =>
            graph.edges.get(side.edge)!.isStraight &&
            !graph.kept.has(side.edge) &&
            !candidate.placements.has(twinOf(graph, side).face),
        )
        .map((side) => side.edge),
    );
  return {
    single: (face) => {
      const made =
        singles.get(face) ??
        remember([face], [], new Map([[face, atHome]]), [
          placeFace(graph.faces.get(face)!, atHome),
        ]);
      singles.set(face, made);
      return made;
    },
    extend: (candidate, edge) => {
      const folded = [...candidate.folded, edge].sort(byNumber);
      const key = folded.join(" ");
      const old = known.get(key);
      if (old !== undefined) return old;
      const made = extended(graph, candidate, edge, folded, remember);
      known.set(key, made);
      return made;
    },
    beyond: ({ placements }, edge) =>
      graph.edges.get(edge)!.faces.find((face) => !placements.has(face))!,
    openEdges: (candidate) => {
      const edges = open.get(candidate) ?? findOpen(candidate);
      open.set(candidate, edges);
      return edges;
    },
  };
}

function extended(
  graph: FaceGraph,
  candidate: Candidate,
  edge: string,
  folded: readonly string[],
  remember: (
    faces: readonly string[],
    folded: readonly string[],
    placements: ReadonlyMap<string, Placement>,
    placed: readonly PlacedFace[],
  ) => Candidate,
): Candidate | null {
  const side = candidate.faces
    .flatMap((face) => graph.faces.get(face)!.loops.flat())
    .find((one) => one.edge === edge)!;
  const own = candidate.placements.has(side.face) ? side : twinOf(graph, side);
  const other = twinOf(graph, own).face;
  const placement = placeNeighbour(graph, own, candidate.placements.get(own.face)!);
  const placed = placeFace(graph.faces.get(other)!, placement);
  if (candidate.placed.some((face) => facesOverlap(face, placed))) return null;
  const faces = [...candidate.faces, other];
  const placements = new Map([...candidate.placements, [other, placement]]);
  if (closesOverItself(graph, { faces, folded, placements }, other)) return null;
  return remember(faces, folded, placements, [...candidate.placed, placed]);
}

/**
 * Whether the face just added closes a ring whose inside is walked the wrong way: its two rims lie
 * over one another by less than is seen face by face, as a round rim and the curve it faces can.
 */
function closesOverItself(
  graph: FaceGraph,
  { faces, folded, placements }: Pick<Candidate, "faces" | "folded" | "placements">,
  added: string,
): boolean {
  const sides = graph.faces.get(added)!.loops.flat();
  const isRing = sides.some(
    (side) => !folded.includes(side.edge) && liesOnTwin(graph, side, placements),
  );
  if (!isRing) return false;
  const [, ...holes] = unfoldPanel(graph, faces, folded).loops;
  return holes.some((hole) => loopArea(hole.flatMap(({ segments }) => segments)) > 0);
}

/** Edges are called E1, E2 …: in order of their number. */
const byNumber = (a: string, b: string): Count => Number(a.slice(1)) - Number(b.slice(1));
