import type { Count } from "../plane/types.ts";
import type { HalfEdges } from "./half-edges.ts";
import { isBoundary, type Region } from "./find-regions.ts";

/** A stretch of a face's boundary: half-edges in order, all with the same neighbour. */
export interface Run {
  readonly region: Count;
  readonly neighbour: Count;
  readonly halves: readonly Count[];
}

/**
 * Walk round every face, inside to the left, and cut its boundary where the neighbour changes or
 * where more than two boundaries meet. Loops come in order of their lowest half-edge.
 */
export function traceLoops(
  edges: HalfEdges,
  regions: readonly Region[],
  regionOf: readonly Count[],
): Run[][][] {
  const bounds = isBoundary(edges, regionOf, regions);
  const meeting = countMeetings(edges, bounds);
  const loopsOf: Run[][][] = regions.map(() => []);
  const seen = new Set<Count>();
  for (let start = 0; start < edges.count; start++) {
    if (seen.has(start) || !bounds(start)) continue;
    const halves: Count[] = [];
    for (let half = start; !seen.has(half); half = nextOnBoundary(edges, bounds, half)) {
      seen.add(half);
      halves.push(half);
    }
    const region = regionOf[edges.triangleOf(start)]!;
    loopsOf[region]!.push(cutIntoRuns(halves, region, edges, regionOf, meeting));
  }
  return loopsOf;
}

/** The next boundary half-edge of the same face: turn round the corner until the face ends. */
function nextOnBoundary(edges: HalfEdges, bounds: (half: Count) => boolean, half: Count): Count {
  let next = edges.next(half);
  while (!bounds(next)) next = edges.next(edges.twin(next));
  return next;
}

/** How many boundary edges end at each point. */
function countMeetings(
  edges: HalfEdges,
  bounds: (half: Count) => boolean,
): ReadonlyMap<Count, Count> {
  const meeting = new Map<Count, Count>();
  for (let half = 0; half < edges.count; half++) {
    if (bounds(half)) meeting.set(edges.from(half), (meeting.get(edges.from(half)) ?? 0) + 1);
  }
  return meeting;
}

function cutIntoRuns(
  halves: readonly Count[],
  region: Count,
  edges: HalfEdges,
  regionOf: readonly Count[],
  meeting: ReadonlyMap<Count, Count>,
): Run[] {
  const neighbour = (half: Count): Count => regionOf[edges.triangleOf(edges.twin(half))]!;
  const isCut = (half: Count, before: Count): boolean =>
    neighbour(half) !== neighbour(before) || (meeting.get(edges.from(half)) ?? 2) !== 2;
  const first = halves.findIndex((half, i) => isCut(half, halves.at(i - 1)!));
  // One boundary all the way round: it starts at its lowest point.
  const turned = first >= 0 ? first : lowestStart(halves, edges);
  const ordered = [...halves.slice(turned), ...halves.slice(0, turned)];
  const runs: { region: Count; neighbour: Count; halves: Count[] }[] = [];
  ordered.forEach((half, i) => {
    if (i === 0 || isCut(half, ordered[i - 1]!)) {
      runs.push({ region, neighbour: neighbour(half), halves: [half] });
    } else runs.at(-1)!.halves.push(half);
  });
  return runs;
}

const lowestStart = (halves: readonly Count[], edges: HalfEdges): Count =>
  halves.reduce((best, half, i) => (edges.from(half) < edges.from(halves[best]!) ? i : best), 0);
