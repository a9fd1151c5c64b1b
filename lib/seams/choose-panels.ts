import { findWays } from "../panels/find-ways.ts";
import type { Panel, Way } from "../panels/types.ts";
import { weightsOf } from "../panels/weigh-candidate.ts";
import type { Mm, Ratio } from "../plane/types.ts";
import type { CoverSpec, FabricStock, Fault } from "../project/types.ts";
import { partEdge, partSide, type EdgePart } from "../solids/part-edge.ts";
import type { Solid } from "../solids/types.ts";
import { chooseOpen } from "./choose-open.ts";
import type { NamedEdges } from "./name-edges.ts";
import { partOpen } from "./part-open.ts";
import { measureOpening, proposeOpening, type OpeningPlan } from "./plan-opening.ts";
import { priceInSight } from "./price-in-sight.ts";

export interface PanelOptions {
  readonly cover: CoverSpec;
  readonly cloth: FabricStock;
  readonly named: NamedEdges;
  /** The edge down the middle of a strip that takes the closing, null where there is none. */
  readonly parted: string | null;
  /** Edges at the ends of that strip, which stay seams. */
  readonly ends: readonly string[];
  readonly hardness: number | null;
  readonly field: string;
}

/** Ways to panel the cover, the chosen one first, with the opening it has; or what stands in the way. */
export type ChosenPanels = Chosen | { readonly faults: readonly Fault[] };

interface Chosen {
  readonly ways: readonly Way[];
  readonly plan: OpeningPlan;
}

/**
 * Panels and opening together, and the solid they belong to: where a seam is open for a share of its
 * length, every stretch is an edge of it.
 */
export function choosePanels(
  fitted: Solid,
  foam: Solid,
  options: PanelOptions,
): (Chosen & { readonly solid: Solid }) | { readonly faults: readonly Fault[] } {
  const chosen = chooseWhole(fitted, foam, options);
  if ("faults" in chosen) return chosen;
  const { parts } = chosen.plan;
  if (parts.length === 0) return { ...chosen, solid: fitted };
  const partPanel = (panel: Panel, part: EdgePart): Panel => ({
    ...panel,
    loops: panel.loops.map((loop) => loop.flatMap((side) => partSide(side, part))),
  });
  const partAll = (panel: Panel): Panel => parts.reduce(partPanel, panel);
  const ways = chosen.ways.map((way) => ({ ...way, panels: way.panels.map(partAll) }));
  return { ways, plan: chosen.plan, solid: parts.reduce(partEdge, fitted) };
}

/**
 * Where the program chooses both, and no seam of its panels lets the foam in
 * or only one in full view, they are chosen anew with seams where the foam would best go in.
 */
function chooseWhole(fitted: Solid, foam: Solid, options: PanelOptions): ChosenPanels {
  const first = panelsWith(fitted, foam, options, new Set());
  if ("faults" in first || !first.plan.isProposed) return first;
  if (typeof options.cover.panels !== "string") return first;
  const anywhere = new Set(fitted.edges.map(({ id }) => id));
  const best = proposeOpening([], fitted, foam, options.hardness, anywhere);
  const price = ({ edges, parts }: OpeningPlan) =>
    (parts[0]?.share ?? 1) * priceInSight(edges, fitted);
  if (!best.fits || (first.plan.fits && price(best) > price(first.plan) * muchCheaper)) {
    return first;
  }
  const second = panelsWith(fitted, foam, options, new Set(best.edges));
  if ("faults" in second || !second.plan.fits) return first;
  const [one, other] = [first.ways[0]!, second.ways[0]!];
  const isWorth =
    other.turnedFaces.length <= one.turnedFaces.length &&
    price(second.plan) + dearer(other, one) < price(first.plan);
  return !first.plan.fits || isWorth ? second : first;
}

/** Only an opening that costs this much less is worth another look at the panels. @source our choice */
const muchCheaper: Ratio = 0.8;
/** How much dearer one way is than another, in millimetres of seam. */
const dearer = (way: Way, other: Way): Mm =>
  way.seamLength -
  other.seamLength +
  weightsOf.auto.panel * (way.panels.length - other.panels.length);

function panelsWith(
  fitted: Solid,
  foam: Solid,
  { cover, cloth, named, parted, ends, hardness, field }: PanelOptions,
  opened: ReadonlySet<string>,
): ChosenPanels {
  const wanted = parted === null ? named.open : null;
  const partedOnly = parted === null ? [] : [parted];
  const toOpen = wanted === null ? partedOnly : chooseOpen(wanted, new Set()).edges;
  const { ways, faults } = findWays(fitted, cover.panels, {
    cloth: {
      usableWidth: cloth.width - 2 * cloth.selvedge,
      direction: cloth.direction,
      allowance: cover.seamAllowance,
    },
    seamed: new Set([...named.piped, ...named.anchored, ...toOpen, ...ends, ...opened]),
    parted: new Set(partedOnly),
    field: `${field}.panels`,
  });
  const all = [...named.faults, ...faults];
  if (all.length > 0) return { faults: all };
  const [{ panels }] = ways as [Way, ...Way[]];
  const folded = new Set(panels.flatMap(({ folds }) => folds.map(({ edge }) => edge)));
  const open = wanted === null ? { edges: partedOnly, faults: [] } : chooseOpen(wanted, folded);
  if (open.faults.length > 0) return { faults: open.faults };
  const plan =
    open.edges.length === 0
      ? proposeOpening(panels, fitted, foam, hardness)
      : measureOpening(partOpen(wanted ?? [], open.edges), panels, fitted, foam, {
          hardness,
          isFixed: parted !== null,
        });
  return { ways, plan };
}
