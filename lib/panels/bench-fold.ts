import type { Count, Mm, Mm2 } from "../plane/types.ts";
import type { BlockSpec } from "../project/types.ts";
import { buildSolid } from "../solids/build-solid.ts";
import { randomBlocks } from "../solids/random-blocks.ts";
import { cross3, length3, subtract3 } from "../solids/points3.ts";
import type { Point3, Solid } from "../solids/types.ts";
import { growCandidates } from "./grow-candidates.ts";
import { makePanel } from "./make-panel.ts";
import { refoldPanels } from "./refold-panel.ts";
import { searchWays } from "./search-ways.ts";
import type { Panel } from "./types.ts";
import { graphSolid } from "./unfold-panel.ts";
import type { ClothRules } from "./weigh-candidate.ts";

/** What can go wrong with a cover, from the plainest to the worst. */
export type FoldFault = "refold" | "area" | "seam" | "crash";

/** One random form that did not come back. */
export interface FoldFailure {
  readonly seed: Count;
  readonly fault: FoldFault;
  readonly detail: string;
  /** The fewest of its blocks that still show the fault. */
  readonly blocks: readonly BlockSpec[];
}

export interface FoldBench {
  readonly runs: Count;
  readonly failures: readonly FoldFailure[];
  /** Largest gap of any form that folded back, in mm. */
  readonly worst: Mm;
}

/** Corners come back at least as near as this. */
const foldsWithin: Mm = 1e-6;
/** Share of its area that a cover may lose to rounding. */
const areaWithin = 1e-6;
/** Facets stray a quarter of a millimetre from round sides, more where these graze one another. */
const facetsWithin: Mm = 1;
const facetShare = 0.005;
/** The two sides of a straight or round seam are as long as each other to this. */
const seamWithin: Mm = 1e-6;
/** Those of a free curve, which each flat keeps as chords of its own, to this and a share. */
const freeWithin: Mm = 0.05;
const freeShare = 1e-4;

/** A word on progress after so many forms. */
const formsBetween: Count = 500;

/** Whom to tell while forms are folded: a run that is stopped still tells something. */
export interface FoldWatch {
  /** How far it has come, each time so many forms are done. */
  readonly onForms: (soFar: FoldBench) => void;
  readonly onFailure: (failure: FoldFailure) => void;
}

const nobody: FoldWatch = { onForms: () => undefined, onFailure: () => undefined };

const cloth: ClothRules = { usableWidth: 1400, direction: "any", allowance: 10 };

/**
 * Cover random forms by the plain rule and fold every cover back up.
 *
 * @param firstSeed seeds run on from here, so that a failure can be looked at by itself
 */
export function benchFold(runs: Count, firstSeed: Count = 1, watch: FoldWatch = nobody): FoldBench {
  const failures: FoldFailure[] = [];
  let worst: Mm = 0;
  for (let seed = firstSeed; seed < firstSeed + runs; seed++) {
    const blocks = randomBlocks(seed);
    const tried = tryFold(blocks);
    if (tried.fault === null) worst = Math.max(worst, tried.worst);
    else {
      const failure = { seed, ...tried, blocks: fewestBlocks(blocks, tried.fault) };
      failures.push(failure);
      watch.onFailure(failure);
    }
    const done = seed - firstSeed + 1;
    if (done % formsBetween === 0 && done < runs) watch.onForms({ runs: done, failures, worst });
  }
  return { runs, failures, worst };
}

type Tried =
  | { readonly fault: null; readonly worst: Mm }
  | { readonly fault: FoldFault; readonly detail: string };

/** Cover one form and say what is wrong with the cover, if anything is. */
export function tryFold(blocks: readonly BlockSpec[]): Tried {
  try {
    const solid = buildSolid({ id: "form", foam: null, blocks });
    const graph = graphSolid(solid);
    const faces = solid.faces.map(({ id }) => id);
    const found = searchWays(faces, growCandidates(graph, cloth.allowance), "plain", cloth);
    const panels = found.map((one, i) => makePanel(graph, one, `P${i + 1}`, ""));
    const area = findAreaFault(solid, panels);
    if (area !== null) return { fault: "area", detail: area };
    const seam = findSeamFault(solid, panels);
    if (seam !== null) return { fault: "seam", detail: seam };
    const { worst } = refoldPanels(panels, graph);
    if (worst <= foldsWithin) return { fault: null, worst };
    return { fault: "refold", detail: `misses by ${worst} mm` };
  } catch (error) {
    return { fault: "crash", detail: error instanceof Error ? error.message : String(error) };
  }
}

function findAreaFault(solid: Solid, panels: readonly Panel[]): string | null {
  const area = panels.reduce((sum, panel) => sum + panel.area, 0);
  const off = Math.abs(area - solid.area) / solid.area;
  if (!(off <= areaWithin)) return `panels ${area} mm², solid ${solid.area} mm²`;
  const facets = areaOfFacets(solid);
  for (const face of solid.faces) {
    // Facets lie a little inside their round sides, and the edges they cut out are as rough.
    const rim = face.loops.flat().reduce((sum, { length }) => sum + length, 0);
    const rough = facetsWithin * rim + facetShare * face.area;
    const facet = facets.get(face.id) ?? 0;
    if (!(Math.abs(face.area - facet) <= rough)) {
      return `${face.id} ${face.area} mm², its facets ${facet} mm²`;
    }
  }
  return null;
}

/** Area of the triangles of each face: no outline is walked for it. */
function areaOfFacets({ mesh }: Solid): ReadonlyMap<string, Mm2> {
  const areas = new Map<string, Mm2>();
  mesh.triangles.forEach((corners, i) => {
    const [a, b, c] = corners.map((corner) => mesh.points[corner]!) as [Point3, Point3, Point3];
    const area = length3(cross3(subtract3(b, a), subtract3(c, a))) / 2;
    areas.set(mesh.faces[i]!, (areas.get(mesh.faces[i]!) ?? 0) + area);
  });
  return areas;
}

/** Every edge is folded once or sewn once, from two sides of one length. */
function findSeamFault(solid: Solid, panels: readonly Panel[]): string | null {
  const folds = panels.flatMap((panel) => panel.folds.map(({ edge }) => edge));
  const sides = panels.flatMap(({ loops }) => loops.flat());
  for (const edge of solid.edges) {
    const folded = folds.filter((one) => one === edge.id).length;
    const sewn = sides.filter((side) => side.edge === edge.id);
    const isOnce = folded === 1 ? sewn.length === 0 : folded === 0 && sewn.length === 2;
    if (!isOnce) return `${edge.id} folded ${folded} times with ${sewn.length} sides`;
    if (folded === 1) continue;
    const [own, other] = sewn.map(({ length }) => length) as [Mm, Mm];
    const isFree = !edge.isStraight && sewn.some(({ segments }) => segments[0]!.kind === "line");
    const within = seamWithin + (isFree ? freeWithin + freeShare * edge.length : 0);
    if (!(Math.abs(own - other) <= within)) return `${edge.id} is ${own} and ${other} mm long`;
  }
  return null;
}

/** Leave out blocks while the same fault stays. */
function fewestBlocks(blocks: readonly BlockSpec[], fault: FoldFault): readonly BlockSpec[] {
  for (const block of blocks) {
    const fewer = blocks.filter((one) => one !== block);
    if (fewer.length > 0 && tryFold(fewer).fault === fault) return fewestBlocks(fewer, fault);
  }
  return blocks;
}
