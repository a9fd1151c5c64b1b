import type { FinishPage } from "./pages.ts";
import type { Format } from "../units/make-format.ts";
import { careLines } from "./care-lines.ts";
import { listSizes } from "./list-sizes.ts";
import { openHyphens } from "./open-hyphens.ts";
import { figures, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

const axes = ["length", "depth", "height"] as const;

/** Fit, opening and closing, care, and what to do when a check fails. Null without any of them. */
export function buildFinish(plan: Plan, format: Format): FinishPage | null {
  const { covers, steps } = plan;
  const fit = tableOrNull("finish-fit", "Foam and cover side by side", {
    columns: [words("Of the"), words("Foam"), words("Finished cover"), words("So the cover is")],
    rows: covers.flatMap(({ solid, foamSize, coverSize }) =>
      axes.map((axis, i) => [
        covers.length > 1 ? `${openHyphens(solid)}, ${axis}` : axis,
        format.length(foamSize[i]!),
        format.length(coverSize[i]!),
        easeWords(coverSize[i]! - foamSize[i]!, format),
      ]),
    ),
  });
  const facts = covers.flatMap(({ solid, opening, closing }) => [
    ...(opening === null
      ? []
      : [
          {
            label: `Opening of the ${openHyphens(solid)}`,
            value: `${format.length(opening.run)} of seam`,
          },
          {
            label: "The foam goes in",
            value:
              opening.give <= 0
                ? "without squeezing"
                : `squeezed by ${format.percent(opening.give)}`,
          },
          { label: "Why there", value: opening.reason },
        ]),
    ...(closing === null
      ? []
      : [{ label: `Closing of the ${openHyphens(solid)}`, value: closing.basis }]),
  ]);
  const remedies = tableOrNull("finish-remedies", "What to do when it does not fit", {
    columns: [figures("Step"), words("Check"), words("If it does not")],
    rows: steps.flatMap(({ check, remedy }, i) =>
      check === null || remedy === null || steps.findIndex((step) => step.remedy === remedy) < i
        ? []
        : [[`${i + 1}`, check, remedy]],
    ),
  });
  const care = careLines(plan);
  if (fit === null && facts.length === 0 && remedies === null && care.length === 0) return null;
  return {
    kind: "finish",
    id: "fit-and-finish",
    title: "Fit and finish",
    fit,
    sizes: listSizes(plan, format),
    facts,
    care,
    remedies,
  };
}

function easeWords(ease: number, format: Format): string {
  if (Math.abs(ease) < 0.05) return "the same size";
  return `${format.length(Math.abs(ease))} ${ease < 0 ? "smaller, to sit tight" : "larger"}`;
}
