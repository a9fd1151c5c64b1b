import type { Mm, Ratio } from "../plane/types.ts";
import type { Panel, PanelSide } from "../panels/types.ts";
import { distance3 } from "../solids/points3.ts";
import type { Face, Solid, SolidEdge } from "../solids/types.ts";
import { smallestGirth } from "./measure-girth.ts";
import type { Opening } from "./types.ts";

export type OpeningPlan = Omit<Opening, "seams">;

/**
 * How much foam may be squeezed on the way in, by its hardness in newtons.
 * @source our choice: hardness is measured at a quarter of the thickness (ASTM D3574); foam that is
 *   pushed through a cloth slit is gripped by hand, so we ask for far less
 */
export function giveAllowed(hardness: number | null): Ratio {
  if (hardness === null) return 0.1;
  return hardness < 110 ? 0.2 : hardness < 180 ? 0.12 : 0.06;
}

/** What the author's open edges let through. */
export function measureOpening(
  edges: readonly string[],
  cover: Solid,
  foam: Solid,
  hardness: number | null,
): OpeningPlan {
  const plan = gauge(edges, cover, smallestGirth(foam).girth, hardness);
  return { ...plan, isProposed: false, reason: "The author chose these seams." };
}

/**
 * Choose seams to leave open: the shortest run round one face that lets the foam in, first where it
 * is not seen, then at the back. Where none is long enough the widest is taken.
 *
 * @param sewn edges that are seams anyway: a fold cannot be left open
 */
export function proposeOpening(
  panels: readonly Panel[],
  cover: Solid,
  foam: Solid,
  hardness: number | null,
): OpeningPlan {
  const needed = smallestGirth(foam).girth;
  const seamed = new Set(
    panels.flatMap(({ loops }) => loops.flat().map((side: PanelSide) => side.edge)),
  );
  const tried = cover.faces.flatMap((face) =>
    runsRound(face, seamed).map((edges) => {
      const plan = gauge(edges, cover, needed, hardness);
      return { plan, price: plan.run * sight(face) + (edges.length - 1) * 60, face };
    }),
  );
  const fitting = tried.filter(({ plan }) => plan.fits);
  const best =
    fitting.length > 0
      ? fitting.reduce((a, b) => (b.price < a.price - 1e-6 ? b : a))
      : tried.reduce((a, b) => (b.plan.girth > a.plan.girth + 1e-6 ? b : a));
  const count = best.plan.edges.length;
  const where = `${count === 1 ? "One seam" : `${count} seams`} round the ${best.face.label}`;
  const reason =
    fitting.length > 0
      ? `${where}: the shortest opening, least in sight, that lets the foam in.`
      : `${where}: the widest there is, but still too small for the foam.`;
  return { ...best.plan, isProposed: true, reason };
}

/** How dear a millimetre of opening is: least where nobody looks. @source our choice */
function sight(face: Face): number {
  if (!face.isVisible) return 1;
  return face.normal[1] > 0.9 ? 1.3 : 3;
}

/** Every stretch of neighbouring seams round a face, short of the whole ring where it has corners. */
function runsRound(face: Face, seamed: ReadonlySet<string>): string[][] {
  const ring = face.loops[0]!.map(({ edge }) => edge);
  const most = ring.length === 1 ? 1 : ring.length - 1;
  const runs = ring.flatMap((_, start) =>
    Array.from({ length: most }, (_, i) =>
      Array.from({ length: i + 1 }, (_, step) => ring[(start + step) % ring.length]!),
    ),
  );
  return runs.filter(
    (edges) => edges.every((edge) => seamed.has(edge)) && new Set(edges).size === edges.length,
  );
}

function gauge(
  edges: readonly string[],
  cover: Solid,
  needed: Mm,
  hardness: number | null,
): Omit<OpeningPlan, "isProposed" | "reason"> {
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
    return Math.max(widest, run + (ends === null ? 0 : ends));
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

const ends = ({ path }: SolidEdge) => [path[0]!, path.at(-1)!];
const meet = (a: SolidEdge, b: SolidEdge): boolean =>
  ends(a).some((p) => ends(b).some((q) => distance3(p, q) < 1e-6));

/** Straight distance between the two ends of a run; null where it closes on itself. */
function looseEnds(group: readonly SolidEdge[]): Mm | null {
  const all = group.flatMap(ends);
  const loose = all.filter((p) => all.filter((q) => distance3(p, q) < 1e-6).length === 1);
  return loose.length < 2 ? null : distance3(loose[0]!, loose.at(-1)!);
}
