import type { Mm, Ratio } from "../plane/types.ts";
import { distance3 } from "../solids/points3.ts";
import type { Point3, Solid, SolidEdge } from "../solids/types.ts";
import type { Opening } from "./types.ts";

/** An opening as measured, before anyone says who chose it. */
export type Gauged = Pick<Opening, "edges" | "run" | "girth" | "needed" | "give" | "fits">;

/** What has to go in: its smallest girth and the hardness of the foam in newtons, null if unknown. */
export interface Load {
  readonly needed: Mm;
  readonly hardness: number | null;
}

/** Ends nearer than this are one corner. */
const sameCorner: Mm = 1e-6;

/**
 * How much foam may be squeezed on the way in, by its hardness in newtons.
 * @source our choice: hardness is measured at a quarter of the thickness (ASTM D3574); foam that is
 *   pushed through a cloth slit is gripped by hand, so we ask for far less
 */
export function giveAllowed(hardness: number | null): Ratio {
  if (hardness === null) return 0.1;
  return hardness < 110 ? 0.2 : hardness < 180 ? 0.12 : 0.06;
}

/** How wide some edges open, and whether the foam goes in there. */
export function gaugeOpening(
  edges: readonly string[],
  cover: Pick<Solid, "edges">,
  { needed, hardness }: Load,
): Gauged {
  const open = edges.map((edge) => cover.edges.find(({ id }) => id === edge)!);
  const run = open.reduce((sum, { length }) => sum + length, 0);
  const girth = girthOfOpening(open);
  const give = Math.max(0, 1 - girth / needed);
  return { edges, run, girth, needed, give, fits: give <= giveAllowed(hardness) + 1e-9 };
}

/**
 * The widest girth an open run spans: its own length, and back straight across the flap of cloth
 * that swings out of the way. A straight slit opens to twice its length.
 */
function girthOfOpening(open: readonly SolidEdge[]): Mm {
  return groupRuns(open).reduce((widest, group) => {
    const run = group.reduce((sum, { length }) => sum + length, 0);
    const ends = looseEnds(group);
    return Math.max(widest, run + (ends.length < 2 ? 0 : distance3(ends[0]!, ends.at(-1)!)));
  }, 0);
}

/** Edges that hang together end to end. */
function groupRuns(open: readonly SolidEdge[]): SolidEdge[][] {
  const groups: SolidEdge[][] = [];
  for (const edge of open) {
    const touching = groups.filter((group) => group.some((other) => meet(edge, other)));
    const rest = groups.filter((group) => !touching.includes(group));
    groups.splice(0, groups.length, ...rest, [...touching.flat(), edge]);
  }
  return groups;
}

export const isSameCorner = (p: Point3, q: Point3): boolean => distance3(p, q) < sameCorner;
export const endsOfEdge = ({ path }: SolidEdge): readonly [Point3, Point3] => [
  path[0]!,
  path.at(-1)!,
];
const meet = (a: SolidEdge, b: SolidEdge): boolean =>
  endsOfEdge(a).some((p) => endsOfEdge(b).some((q) => isSameCorner(p, q)));

/** The two ends of a run of edges; none where it closes on itself. */
export function looseEnds(group: readonly SolidEdge[]): readonly Point3[] {
  const all = group.flatMap(endsOfEdge);
  return all.filter((p) => all.filter((q) => isSameCorner(p, q)).length === 1);
}
