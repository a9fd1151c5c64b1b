import type { Work } from "../estimate/types.ts";
import type { Step } from "./types.ts";
import { makeStep } from "./make-step.ts";
import { stockName } from "./name-parts.ts";

/** Measure what is on hand and look at the print, before anything is cut. */
export function listChecking(work: Work): Step[] {
  const { project, lays, slabs, sheets, boards, format } = work;
  const labelOf = (id: string) => project.stock.find((one) => one.id === id)?.label ?? id;
  const fabrics = project.stock.filter(
    (one) => one.kind === "fabric" && lays.some((lay) => lay.stock === one.id),
  );
  const plans = [...slabs, ...sheets, ...boards];
  if (fabrics.length === 0 && plans.length === 0) return [];

  const printed = fabrics.filter((one) => one.kind === "fabric" && one.direction !== "any");
  const shrinking = fabrics.filter((one) => one.kind === "fabric" && one.shrink === 0);
  const stock = plans.flatMap((plan) => plan.used.map((used) => stockName(plan, used, project)));
  const cloth = fabrics.map(({ label }) => label);
  const actions = [
    ...(slabs.length > 0 ? ["Let packed foam lie open for 24 hours."] : []),
    ...(plans.length > 0 ? ["Measure each piece of stock with the tape measure."] : []),
    ...cloth.map((label) => `Measure the usable width of the ${label} between the selvedges.`),
    ...shrinking.map(({ label }) => `Wash the ${label} first if it is to be washed later.`),
    ...printed.map(({ label }) => `Mark an arrow on the ${label} the way the print runs.`),
  ];
  const sizes = [
    ...plans.map(
      (plan) =>
        `${labelOf(plan.stock)} ${format.sizes(plan.used[0]?.size ?? [])}${plan.kind === "board" ? " long" : ""}`,
    ),
    ...lays.map(
      (lay) =>
        `${labelOf(lay.stock)} ${format.length(lay.width - 2 * lay.selvedge)} wide between the selvedges`,
    ),
  ];
  return [
    makeStep({
      id: "check-stock",
      group: "Checking",
      title: "Check the material",
      actions,
      uses: ["tape measure", ...(printed.length > 0 ? ["tailor's chalk"] : []), ...stock, ...cloth],
      check: `It should measure: ${sizes.join(", ")}.`,
      remedy: "Have the true sizes put into the project file and the booklet printed again.",
      figure: "stock/check",
      notes:
        project.copies > 1
          ? [
              `Foam and cloth are cut for all ${project.copies} copies together. Sew and fit each copy by itself.`,
            ]
          : [],
    }),
  ];
}
