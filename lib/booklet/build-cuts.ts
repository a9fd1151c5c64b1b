import type { CutPlan } from "../packing/types.ts";
import { cutFacts } from "./cut-facts.ts";
import { buildCutSheets } from "./build-cut-sheets.ts";
import { drawClear, pageRoom } from "./figure-source.ts";
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
  const family = cutPlan.kind === "length" ? "board" : cutPlan.kind;
  // Many different boards would be drawn too small together: then each has a drawing of its own.
  const all = `${family}/${cutPlan.stock}`;
  const figure = figures.ids.includes(all) ? drawClear(figures, all, [pageRoom]) : null;
  return {
    kind: "cuts",
    id: `cuts-${slugOf(cutPlan.stock)}`,
    title: `Cutting the ${label}`,
    facts: cutFacts(cutPlan, { copies: plan.project.copies, format }),
    figure,
    cuts: buildCutSheets(cutPlan, figures, {
      format,
      label,
      isDrawn: figure !== null,
      isAlone: true,
    }),
    shortfalls: cutPlan.short.map((each) => shortfallNotice(each, cutPlan.stock)),
  };
}
