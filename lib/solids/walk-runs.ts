import type { Count, Mm } from "../plane/types.ts";
import type { Region } from "./find-regions.ts";
import { meetFreely } from "./flatten-run.ts";
import type { HalfEdges } from "./half-edges.ts";
import { refineStep } from "./refine-step.ts";
import type { Run } from "./trace-loops.ts";
import { distanceFrom } from "./surfaces.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Point3, Surface } from "./types.ts";

/** A step along a stretch of boundary, and a half-edge of the face it bounds there. */
export interface RunStep {
  readonly from: Point3;
  readonly to: Point3;
  readonly half: Count;
}

/** The steps of each stretch of boundary, the same from both its faces: free curves are cut finer. */
export function walkRuns(
  mesh: UnionMesh,
  edges: HalfEdges,
  regions: readonly Region[],
): (run: Run) => readonly RunStep[] {
  const known = new Map<Count, readonly RunStep[]>();
  return (run) => {
    const old = known.get(run.halves[0]!);
    if (old) return old;
    const rough = run.halves.map((half): RunStep => ({
      from: mesh.points[edges.from(half)]!,
      to: mesh.points[edges.to(half)]!,
      half,
    }));
    const steps = refine(rough, run, regions);
    known.set(run.halves[0]!, steps);
    known.set(edges.twin(run.halves.at(-1)!), reversed(steps, edges));
    return steps;
  };
}

const reversed = (steps: readonly RunStep[], edges: HalfEdges): RunStep[] =>
  [...steps]
    .reverse()
    .map(({ from, to, half }) => ({ from: to, to: from, half: edges.twin(half) }));

function refine(
  steps: readonly RunStep[],
  { region, neighbour }: Run,
  regions: readonly Region[],
): readonly RunStep[] {
  const surfaces = [regions[region]!.surface, regions[neighbour]!.surface] as const;
  if (region === neighbour || !(meetFreely(...surfaces) || strays(steps, surfaces))) return steps;
  return steps.flatMap(({ from, to, half }) => {
    const places = [from, ...refineStep(from, to, surfaces), to];
    return places.slice(1).map((place, i) => ({ from: places[i]!, to: place, half }));
  });
}

/** A point this near to a surface lies on it. */
const onSurface: Mm = 1e-6;

/**
 * Whether a circle starts or ends beside itself. Where three surfaces all but meet in a corner, their
 * facets can cross though they do not; such an edge is no arc in either flat, and both keep it as chords.
 */
const strays = (steps: readonly RunStep[], surfaces: readonly Surface[]): boolean =>
  surfaces.some(({ kind }) => kind !== "plane") &&
  [steps[0]!.from, ...steps.map(({ to }) => to)].some((point) =>
    surfaces.some((surface) => Math.abs(distanceFrom(surface, point)) > onSurface),
  );
