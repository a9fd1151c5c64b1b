import type { Format } from "../estimate/types.ts";
import type { Cut } from "../packing/types.ts";

/** Where each axis of the stock is measured from, as in the drawing and in the table of cuts. */
const from = ["the left end", "the near edge", "the underside"] as const;

/** One sentence a cut: the line to draw, its number and its distance. Free outlines are drawn round. */
export function cutLines(cuts: readonly Cut[], pen: string, format: Format): string[] {
  const lines = cuts
    .toSorted((one, other) => one.order - other.order)
    .map((cut) => {
      if (cut.kind === "free")
        return `Draw outline ${cut.order} with the ${pen} as the figure shows.`;
      const edge = from[cut.axis] ?? "the left end";
      const way = cut.kind === "slice" ? " on all four sides" : "";
      return `Draw line ${cut.order}${way}, ${format.length(cut.at)} from ${edge}, with the ${pen}.`;
    });
  return lines.length > 1 && cuts.some(({ kind }) => kind !== "free")
    ? [...lines, "Stop each line where the figure ends it."]
    : lines;
}
