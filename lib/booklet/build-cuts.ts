import type { CutPlan } from "../packing/types.ts";
import { buildCutSheets } from "./build-cut-sheets.ts";
import { firstFigure } from "./figure-source.ts";
import type { FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { shortfallNotice, slugOf } from "./make-notice.ts";
import { stockLabel } from "./open-hyphens.ts";
import type { CutsPage } from "./pages.ts";
import type { Plan } from "./types.ts";

/** The cut drawings of one kind of sheet or board. */
export function buildCuts(
  cutPlan: CutPlan,
  figures: FigureSource,
  { plan, format }: { readonly plan: Plan; readonly format: Format },
): CutsPage {
  const label = stockLabel(plan.project.stock, cutPlan.stock);
  return {
    kind: "cuts",
    id: `cuts-${slugOf(cutPlan.stock)}`,
    title: `Cutting the ${label}`,
    facts: [
      { label: "Needed", value: `${cutPlan.needed}` },
      { label: "On hand", value: `${cutPlan.have}` },
      { label: "No plan can use fewer than", value: `${cutPlan.lowerBound}` },
    ],
    figure: firstFigure(figures, [`${cutPlan.kind}/${cutPlan.stock}`]),
    cuts: buildCutSheets(cutPlan, figures, { format, label }),
    shortfalls: cutPlan.short.map((each) => shortfallNotice(each, cutPlan.stock)),
  };
}
