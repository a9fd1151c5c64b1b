import type { LaySection } from "../packing/types.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import type { DrawingInput } from "./types.ts";

/** Which piece of cloth: a length on hand, a remnant, or what is bought. */
export function sectionWords(
  { kind, label, length, outline }: LaySection,
  project: DrawingInput["project"],
): string {
  if (label !== null) return label;
  switch (kind) {
    case "length":
      return `${formatLength(length, project)} on hand`;
    case "remnant": {
      const { min, max } = pointBounds(outline);
      return `remnant of ${formatSizes([max[0] - min[0], max[1] - min[1]], project)}`;
    }
    case "bought":
      return "new cloth";
  }
}
