import type { Format } from "../estimate/types.ts";
import type { Cut } from "../packing/types.ts";

/** Where each axis of the stock is measured from, as in the drawing and in the table of cuts. */
const from = ["the left end", "the near edge", "the underside"] as const;

/**
 * One sentence a cut: the line to draw, its number and its distance. Free outlines are drawn as the
 * figure shows, those that follow one another in one sentence.
 */
export function cutLines(cuts: readonly Cut[], pen: string, format: Format): string[] {
  const sorted = cuts.toSorted((one, other) => one.order - other.order);
  const lines = sorted.flatMap((cut, i): string[] => {
    if (cut.kind === "free") {
      if (sorted[i - 1]?.kind === "free") return [];
      const after = sorted.slice(i).findIndex(({ kind }) => kind !== "free");
      const last = sorted[(after < 0 ? sorted.length : i + after) - 1]?.order ?? cut.order;
      const which = last === cut.order ? `outline ${last}` : `outlines ${cut.order} to ${last}`;
      return [`Draw ${which} with the ${pen} as the figure shows.`];
    }
    const edge = from[cut.axis] ?? "the left end";
    const way = cut.kind === "slice" ? " on all four sides" : "";
    return [
      `Draw line ${cut.order}${way}, ${format.length(cut.at)} from ${edge}, with the ${pen}.`,
    ];
  });
  return lines.length > 1 && cuts.some(({ kind }) => kind !== "free")
    ? [...lines, "Stop each line where the figure ends it."]
    : lines;
}
