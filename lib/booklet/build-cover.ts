import { drawCode } from "../drawing/draw-code.ts";
import type { Project } from "../project/types.ts";
import { firstFigure } from "./figure-source.ts";
import type { FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { openHyphens, titleOf } from "./open-hyphens.ts";
import type { CoverPage, Fact } from "./pages.ts";
import type { Plan } from "./types.ts";

/** The front page: what the thing is, how large, for whom, and where it stands on the web. */
export function buildCover(
  plan: Plan,
  figures: FigureSource,
  { format, address }: { readonly format: Format; readonly address: string | null },
): CoverPage {
  const { project, solids } = plan;
  const drawings = [...solids.map((solid) => `solid/${solid.id}`), "finished"];
  return {
    kind: "cover",
    id: "cover",
    title: project.title,
    summary: project.summary,
    figure: firstFigure(figures, ["finished", ...drawings]),
    sizes: solids.map(({ id, size }) => ({
      label: solids.length === 1 ? "Length × depth × height" : titleOf(id),
      value: format.sizes(size),
    })),
    facts: [
      fact("For", audienceWords(project, format)),
      fact("How many", project.copies > 1 ? `${project.copies}` : null),
      fact("Time", project.time),
      fact("Skill", project.skill),
      fact("By", project.author),
      fact("Version", project.version),
      fact("Variant", project.variant === null ? null : openHyphens(project.variant)),
      fact("Licence", project.licence),
    ].filter((each) => each !== null),
    link: address === null ? null : { address, code: drawCode(address) },
  };
}

function audienceWords({ audience }: Project, format: Format): string | null {
  switch (audience?.kind) {
    case undefined:
      return null;
    case "age":
      return `a child of ${audience.years}`;
    case "stature":
      return `somebody ${format.length(audience.stature)} tall`;
    case "adult":
      return "an adult";
  }
}

const fact = (label: string, value: string | null): Fact | null =>
  value === null ? null : { label, value };
