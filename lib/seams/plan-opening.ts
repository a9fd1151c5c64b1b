import type { Panel, PanelSide } from "../panels/types.ts";
import { theFace } from "../solids/the-face.ts";
import { partEdge } from "../solids/part-edge.ts";
import type { Face, Solid, SolidEdge } from "../solids/types.ts";
import { endsOfEdge, gaugeOpening, isSameCorner, type Gauged, type Load } from "./gauge-opening.ts";
import { growRun, runsRound } from "./list-runs.ts";
import { smallestGirth } from "./measure-girth.ts";
import { priceInSight } from "./price-in-sight.ts";
import { shareRound } from "./share-round.ts";
import { lengthen, type PartedOpen } from "./part-open.ts";
import type { Opening, WayOut } from "./types.ts";

export type OpeningPlan = Omit<Opening, "seams">;

/**
 * What the author's open edges let through, and where that is too little the nearest way out.
 *
 * @param isFixed the opening is the middle of a strip, beside which nothing else can be left open
 */
export function measureOpening(
  open: PartedOpen,
  panels: readonly Panel[],
  cover: Solid,
  foam: Solid,
  { hardness, isFixed }: { readonly hardness: number | null; readonly isFixed: boolean },
): OpeningPlan {
  const load: Load = { needed: smallestGirth(foam).girth, hardness };
  const parted = open.parts.reduce(partEdge, cover);
  const plan = gaugeOpening(open.edges, parted, load);
  const wayOut = plan.fits
    ? null
    : (lengthen(open, cover, load) ??
      findWayOut(gaugeOpening(open.wholes, cover, load), seamsOf(panels), cover, {
        load,
        isFixed,
      }));
  const rings = open.edges.filter((id) => isRing(parted.edges.find((edge) => edge.id === id)!));
  const reason = reasonOf(rings, cover);
  return { ...plan, isProposed: false, reason, wayOut, parts: open.parts };
}

/**
 * Choose seams to leave open: the shortest run round one face that lets the foam in, first where it
 * is not seen, then at the back. Where no face has one, the widest run grows over its ends on to the next
 * faces; where that is not enough either, the widest is taken.
 *
 * @param sewn edges that are seams anyway: a fold cannot be left open
 */
export function proposeOpening(
  panels: readonly Panel[],
  cover: Solid,
  foam: Solid,
  hardness: number | null,
  seamed: ReadonlySet<string> = seamsOf(panels),
): OpeningPlan {
  const load: Load = { needed: smallestGirth(foam).girth, hardness };
  const tried = cover.faces.flatMap((face) =>
    runsRound(face, seamed).map(({ edges, corners }) => {
      const shared = edges.length > 1 ? null : shareRound(face, edges[0]!, cover, load);
      const { plan, part, words } = shared ?? whole(edges, face, cover, load);
      const price = (part?.share ?? 1) * priceInSight(edges, cover) + corners;
      return { plan, part, words, price, face };
    }),
  );
  const fitting = tried.filter(({ plan }) => plan.fits);
  if (fitting.length > 0) {
    const { plan, part, words } = fitting.reduce((a, b) => (b.price < a.price - 1e-6 ? b : a));
    const why = `${words}: the shortest opening, least in sight, that lets the foam in.`;
    return { ...proposed(plan, why), parts: part === null ? [] : [part] };
  }
  const widest = tried.toSorted((a, b) => b.plan.girth - a.plan.girth);
  for (const { plan, face } of widest.slice(0, mostGrown)) {
    const grown = growRun(plan.edges, seamed, cover, load);
    if (grown === null) continue;
    const words = `${countWords(grown)} from ${theFace(face.label)} on to its neighbours`;
    return proposed(grown, `${words}: no run round one face alone lets the foam in.`);
  }
  const { plan, face } = widest[0]!;
  const words = `${countWords(plan)} at ${theFace(face.label)}`;
  return proposed(plan, `${words}: the widest there is, but still too small for the foam.`);
}

/** A run as it is, all of its seams open. */
const whole = (edges: readonly string[], face: Face, cover: Solid, load: Load) => {
  const plan = gaugeOpening(edges, cover, load);
  return { plan, part: null, words: `${countWords(plan)} at ${theFace(face.label)}` };
};

/** So many of the widest runs are tried to be grown. @source our choice: bounds the work */
const mostGrown = 6;

const seamsOf = (panels: readonly Panel[]): ReadonlySet<string> =>
  new Set(panels.flatMap(({ loops }) => loops.flat().map((side: PanelSide) => side.edge)));

const proposed = (plan: Gauged, reason: string): OpeningPlan => ({
  ...plan,
  isProposed: true,
  reason,
  wayOut: null,
  parts: [],
});

const isRing = (edge: SolidEdge): boolean => isSameCorner(...endsOfEdge(edge));

/** A face with one seam all round has no other that could be its hinge: that needs a word. */
function reasonOf(rings: readonly string[], cover: Solid): string {
  const loose = cover.faces.find(
    ({ loops }) =>
      loops.length === 1 && loops[0]!.length === 1 && rings.includes(loops[0]![0]!.edge),
  );
  if (loose === undefined) return "The author chose these seams.";
  const face = theFace(loose.label);
  return `The author chose ${face}. It has one seam all the way round and so no edge for a hinge: it comes off whole.`;
}

const countWords = ({ edges }: Gauged): string =>
  edges.length === 1 ? "One seam" : `${edges.length} seams`;

/** More seams beside those the author left open; else other ones in their place. */
function findWayOut(
  { edges }: Gauged,
  seamed: ReadonlySet<string>,
  cover: Solid,
  { load, isFixed }: { readonly load: Load; readonly isFixed: boolean },
): WayOut | null {
  const pairs = (ids: readonly string[]) =>
    ids.map((id) => cover.edges.find((edge) => edge.id === id)!.faces);
  const grown = isFixed ? null : growRun(edges, seamed, cover, load);
  if (grown !== null) {
    const added = grown.edges.filter((edge) => !edges.includes(edge));
    return { kind: "also", pairs: pairs(added), run: grown.run, girth: grown.girth };
  }
  const [other] = cover.faces
    .flatMap((face) => runsRound(face, seamed))
    .map((run) => gaugeOpening(run.edges, cover, load))
    .filter(({ fits }) => fits)
    .toSorted((a, b) => a.run - b.run);
  if (other === undefined) return null;
  return { kind: "instead", pairs: pairs(other.edges), run: other.run, girth: other.girth };
}
