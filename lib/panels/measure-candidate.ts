import type { Count, Mm, Mm2, Radians } from "../plane/types.ts";
import { cross } from "../plane/points.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { mergeCollinear } from "../plane/merge-collinear.ts";
import { directionAlong } from "../plane/segments.ts";
import type { PrintDirection } from "../project/types.ts";
import { isTooNarrow } from "./is-too-narrow.ts";
import { orientUnfolding, turnOfFace } from "./orient-unfolding.ts";
import { twinOf, type FaceGraph, type Unfolding } from "./unfold-panel.ts";

/** What a panel would cost the maker, before anyone weighs it. */
export interface Measures {
  /** Half of every seam round it: summed over all panels, each seam counts once. */
  readonly halfSeam: Mm;
  readonly box: readonly [width: Mm, height: Mm];
  readonly area: Mm2;
  /** Visible faces turned from upright, whatever the print. */
  readonly turned: readonly string[];
  /** Those whose print would also be seen to be wrong on a two-way print. */
  readonly sideways: readonly string[];
  readonly inwardFolds: Count;
  readonly inwardFoldLength: Mm;
  /** Corners of the outline beyond four. */
  readonly extraCorners: Count;
  readonly inwardCorners: Count;
  /** Seams of the panel with itself that start at a corner: darts. */
  readonly darts: Count;
  readonly holes: Count;
  /** Seam along an edge where the surface runs on smoothly. */
  readonly smoothSeam: Mm;
  /** Folds over a real corner, not where the surface runs on smoothly. */
  readonly foldLength: Mm;
  readonly hasVisible: boolean;
  readonly isLopsided: boolean;
  /** Some slit or notch is too narrow for the allowances on both its edges. */
  readonly isTooNarrow: boolean;
}

/** A print this little out of upright is not seen. @source our choice */
const seen: Radians = (5 * Math.PI) / 180;

/**
 * @param twins for each face its mirror image across the middle of the form, itself if it straddles
 *   it; empty where the form is not symmetrical
 */
export function measureCandidate(
  graph: FaceGraph,
  unfolding: Unfolding,
  twins: ReadonlyMap<string, string>,
  allowance: Mm = 0,
): Measures {
  const laid = orientUnfolding(graph, unfolding);
  const [outer = [], ...holes] = laid.loops;
  const outline = mergeCollinear(outer.flatMap(({ segments }) => segments));
  const { min, max } = loopBounds(outline);
  const turns = [...laid.placements].map(([face, placement]) => ({
    face,
    turn: Math.abs(turnOfFace(graph, face, placement)),
    isVisible: graph.faces.get(face)!.isVisible,
  }));
  const visible = turns.filter(({ isVisible }) => isVisible);
  const corners = outline.map((segment, i) => {
    const before = outline.at(i - 1)!;
    return cross(directionAlong(before, 1), directionAlong(segment, 0));
  });
  const sides = laid.loops.flat();
  const inward = laid.folds.filter(({ bend }) => bend === "inward");
  const lengthOf = (edge: string) => graph.edges.get(edge)!.length;
  return {
    halfSeam: sides.reduce((sum, side) => sum + side.length, 0) / 2,
    box: [max[0] - min[0], max[1] - min[1]],
    area: turns.reduce((sum, { face }) => sum + graph.faces.get(face)!.area, 0),
    turned: visible.filter(({ turn }) => turn > seen).map(({ face }) => face),
    sideways: visible
      .filter(({ turn }) => Math.min(turn, Math.PI - turn) > seen)
      .map(({ face }) => face),
    inwardFolds: inward.length,
    inwardFoldLength: inward.reduce((sum, { edge }) => sum + lengthOf(edge), 0),
    extraCorners: Math.max(0, corners.filter((turn) => Math.abs(turn) > 1e-6).length - 4),
    inwardCorners: corners.filter((turn) => turn < -1e-6).length,
    darts: countDarts(laid.loops),
    holes: holes.length,
    smoothSeam:
      sides
        .filter(
          (side) =>
            graph.edges.get(side.edge)!.turn < 1e-6 && twinOf(graph, side).face !== side.face,
        )
        .reduce((sum, side) => sum + side.length, 0) / 2,
    foldLength: laid.folds
      .filter(({ turn }) => turn > 1e-6)
      .reduce((sum, { edge }) => sum + lengthOf(edge), 0),
    hasVisible: visible.length > 0,
    isLopsided: isLopsided(
      turns.map(({ face }) => face),
      twins,
    ),
    isTooNarrow: laid.loops.some((loop) =>
      isTooNarrow(
        loop.flatMap((side) => side.segments),
        allowance,
      ),
    ),
  };
}

/** Whether a panel holds a face of the middle and one side, but not the other side. */
function isLopsided(faces: readonly string[], twins: ReadonlyMap<string, string>): boolean {
  const own = new Set(faces);
  const mirrored = faces.map((face) => twins.get(face));
  if (mirrored.some((face) => face === undefined)) return false;
  const inside = mirrored.filter((face) => own.has(face!)).length;
  return inside > 0 && inside < faces.length;
}

/** Seams whose two sides follow one another in the outline. */
const countDarts = (loops: Unfolding["loops"]): Count =>
  loops.reduce(
    (darts, loop) =>
      darts +
      loop.filter((side, i) => loop.length > 2 && loop[(i + 1) % loop.length]!.edge === side.edge)
        .length,
    0,
  );

/** Faces whose print would be wrong, given how the cloth is printed. */
export function turnedOn(measures: Measures, direction: PrintDirection): readonly string[] {
  switch (direction) {
    case "one-way":
      return measures.turned;
    case "two-way":
      return measures.sideways;
    case "any":
      return [];
  }
}
