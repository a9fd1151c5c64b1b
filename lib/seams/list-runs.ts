import type { Mm } from "../plane/types.ts";
import { cross } from "../plane/points.ts";
import { directionAlong } from "../plane/segments.ts";
import type { Face, FaceSide, Solid, SolidEdge } from "../solids/types.ts";
import {
  endsOfEdge,
  gaugeOpening,
  isSameCorner,
  looseEnds,
  type Gauged,
  type Load,
} from "./gauge-opening.ts";

/** A run of seams that could stay open, and what the corners on its way cost. */
export interface OpenRun {
  readonly edges: readonly string[];
  readonly face: Face;
  readonly corners: Mm;
}

/**
 * What a corner on the way is worth in millimetres of opening: a zip is eased round an outward corner;
 * at an inward one cloth and tape both have to be clipped.
 * @source our choice
 */
const outwardCorner: Mm = 60;
const inwardCorner: Mm = 500;
const isFlat = 1e-6;

/** Every stretch of neighbouring seams round a face, short of the whole ring where it has corners. */
export function runsRound(face: Face, seamed: ReadonlySet<string>): OpenRun[] {
  const ring = face.loops[0]!;
  const most = ring.length === 1 ? 1 : ring.length - 1;
  const priceAt = ring.map((side, i) => cornerPrice(ring.at(i - 1)!, side));
  const runs = ring.flatMap((_, start) =>
    Array.from({ length: most }, (_, i): OpenRun => {
      const places = Array.from({ length: i + 1 }, (_, step) => (start + step) % ring.length);
      const corners = places.slice(1).reduce((sum, place) => sum + priceAt[place]!, 0);
      return { edges: places.map((place) => ring[place]!.edge), face, corners };
    }),
  );
  return runs.filter(
    ({ edges }) => edges.every((edge) => seamed.has(edge)) && new Set(edges).size === edges.length,
  );
}

function cornerPrice(before: FaceSide, side: FaceSide): Mm {
  const turn = cross(
    directionAlong(before.segments.at(-1)!, 1),
    directionAlong(side.segments[0]!, 0),
  );
  return Math.abs(turn) < isFlat ? 0 : turn > 0 ? outwardCorner : inwardCorner;
}

/** A run is not grown by more edges than this. @source our choice: more would be no cover */
const mostAdded = 8;

/**
 * A run made longer, edge by edge, where no run round one face is wide enough: always by the seam at one
 * of its ends that opens it most, on to whichever face it leads, until the foam goes in.
 *
 * @returns null where it never does
 */
export function growRun(
  start: readonly string[],
  seamed: ReadonlySet<string>,
  cover: Pick<Solid, "edges">,
  load: Load,
): Gauged | null {
  let plan = gaugeOpening(start, cover, load);
  const edgeOf = new Map(cover.edges.map((edge) => [edge.id, edge]));
  for (let added = 0; !plan.fits && added < mostAdded; added++) {
    const group = plan.edges.map((edge) => edgeOf.get(edge)!);
    const ends = looseEnds(group);
    const wider = cover.edges
      .filter(({ id }) => seamed.has(id) && !plan.edges.includes(id))
      .filter((edge) => touchesOnce(edge, ends, group))
      .map(({ id }) => gaugeOpening([...plan.edges, id], cover, load))
      .filter(({ girth }) => girth > plan.girth + isFlat);
    if (wider.length === 0) return null;
    const fitting = wider.filter(({ fits }) => fits);
    plan =
      fitting.length > 0
        ? fitting.reduce((a, b) => (b.run < a.run - isFlat ? b : a))
        : wider.reduce((a, b) => (b.girth > a.girth + isFlat ? b : a));
  }
  return plan.fits ? plan : null;
}

/** Whether an edge goes on from a loose end and does not run back to the rest. */
function touchesOnce(
  edge: SolidEdge,
  ends: ReturnType<typeof looseEnds>,
  group: readonly SolidEdge[],
): boolean {
  const met = endsOfEdge(edge).map((own) => ends.some((end) => isSameCorner(own, end)));
  const held = endsOfEdge(edge).map((own) =>
    group.flatMap(endsOfEdge).some((other) => isSameCorner(own, other)),
  );
  return met.some(Boolean) && held.filter(Boolean).length === 1;
}
