import { sectionAt } from "../packing/section-at.ts";
import type { Lay } from "../packing/types.ts";
import { boxOfPoints } from "./boxes.ts";
import { insidePoints } from "./inside-point.ts";
import type { Callout } from "./place-beside.ts";
import { sectionWords } from "./section-words.ts";
import type { DrawingInput, ToPaper } from "./types.ts";

/**
 * Which piece of cloth each part of a lay is, where there are several, named from the margin on a spot
 * that no piece covers. What is bought needs no name beside remnants alone: the rulers stand there.
 */
export function labelSections(
  { sections = [], places }: Pick<Lay, "sections" | "places">,
  { toPaper, project }: { readonly toPaper: ToPaper; readonly project: DrawingInput["project"] },
): Callout[] {
  const isPlain = sections.filter(({ kind }) => kind !== "remnant").length < 2;
  const named = sections.filter(({ kind }) => !isPlain || kind === "remnant");
  return named.map((section): Callout => {
    const region = section.outline.map(toPaper);
    const covered = places
      .filter((place) => sectionAt({ sections }, place).section === section)
      .map(({ outline }) => outline.map(toPaper));
    const { right, top } = boxOfPoints(region);
    const [to = [right, top]] = insidePoints([region, ...covered], 1);
    return { lines: [sectionWords(section, project)], style: "label", to };
  });
}
