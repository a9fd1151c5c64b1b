import { arcRadius } from "../plane/segments.ts";
import type { Count, Mm } from "../plane/types.ts";
import type { PanelSide } from "../panels/types.ts";
import type { Cover, Seam, SewingPass } from "./types.ts";

/** Where the strip behind an opening goes. */
export interface UnderlapPlace {
  /** Panel whose edge the strip is sewn to; null where either will do. */
  readonly on: string | null;
  /** Panel it hangs down behind; null where there are several, or either will do. */
  readonly behind: string | null;
  /** How the strip follows the edge: folded and straight, cut as a ring, or snipped and pleated. */
  readonly shape: "straight" | "ring" | "pleated";
  /** The edge of a ring that hangs free. */
  readonly freeEdge: "shorter" | "longer";
  /** Whether some edge of the opening is a curve. */
  readonly isRound: boolean;
}

/** So many lines in one edge stand for a free curve. @source our choice, as in `seam-edges.ts` */
const freeCurve: Count = 6;

/**
 * Sew the strip to the panel that is cut round, and it hangs down behind the one that is cut straight:
 * there a straight strip lies as flat as that panel does. Where both are round it has to be cut round too.
 *
 * @source our choice: behind a panel lies flat what is cut like its edge
 */
export function placeUnderlap(
  { seams: own }: Pick<SewingPass, "seams">,
  { seams, panels }: Pick<Cover, "seams" | "panels">,
): UnderlapPlace {
  const met = seams.filter(({ id }) => own.includes(id));
  const names = [...new Set(met.flatMap((seam) => seam.panels))];
  const round = names.filter((name) => sidesAlong(met, name, panels).some(isRoundSide));
  const rest = { freeEdge: "shorter", isRound: round.length > 0 } as const;
  const [shared] = names.filter((name) => met.every((seam) => seam.panels.includes(name)));
  if (round.length === 0) {
    const hasCorners = met.length > 1 || met.some(({ corners }) => corners.length > 0);
    return { on: (hasCorners ? shared : null) ?? null, behind: null, shape: "straight", ...rest };
  }
  const straight = names.filter((name) => !round.includes(name));
  const [one, other] = round;
  if (other === undefined && straight.length > 0)
    return {
      on: one!,
      behind: straight.length > 1 ? null : straight[0]!,
      shape: "straight",
      ...rest,
    };
  if (names.length !== 2) return { on: shared ?? null, behind: null, shape: "pleated", ...rest };
  // Both are round: the strip is cut like the flatter of the two.
  const [a, b] = names.map((name) => radiusAlong(sidesAlong(met, name, panels)) ?? 0) as [Mm, Mm];
  const [on, behind] = a < b ? [one!, other!] : [other!, one!];
  if (Math.max(a, b) === 0) return { on, behind, shape: "pleated", ...rest };
  // The panel lies to the left of travel: outside its circle where it runs clockwise.
  const [first] = sidesAlong(met, behind, panels).flatMap(({ segments }) => segments);
  const isOutside = first?.kind === "arc" && first.isClockwise;
  return { ...rest, on, behind, shape: "ring", freeEdge: isOutside ? "longer" : "shorter" };
}

/** Whether a cover opens along a curve. */
export const opensRound = (cover: Pick<Cover, "passes" | "seams" | "panels">): boolean =>
  cover.passes.some((pass) => pass.state === "closing" && placeUnderlap(pass, cover).isRound);

/** Sides of a panel along some seams, in the order of its outline. */
export function sidesAlong(
  seams: readonly Pick<Seam, "edges">[],
  panel: string,
  panels: Cover["panels"],
): readonly PanelSide[] {
  const edges = new Set(seams.flatMap((seam) => seam.edges));
  const own = panels.find(({ id }) => id === panel)?.loops.flat() ?? [];
  return own.filter(({ edge }) => edges.has(edge));
}

const isRoundSide = ({ segments }: PanelSide): boolean =>
  segments.length > freeCurve || segments.some(({ kind }) => kind === "arc");

/** Radius of the one circle that all sides lie on; null where there is none. */
export function radiusAlong(sides: readonly PanelSide[]): Mm | null {
  const radii = sides
    .flatMap(({ segments }) => segments)
    .map((segment) => (segment.kind === "arc" ? arcRadius(segment) : Infinity));
  const [first = Infinity] = radii;
  return radii.every((one) => Math.abs(one - first) < sameRadius) ? first : null;
}

const sameRadius: Mm = 1e-6;
