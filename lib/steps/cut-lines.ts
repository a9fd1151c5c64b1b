import type { Format } from "../estimate/types.ts";
import { listWords } from "../units/list-words.ts";
import type { Cut } from "../packing/types.ts";
import type { Count } from "../plane/types.ts";

/** Where each axis of the stock is measured from, as in the drawing and in the table of cuts. */
const from = ["the left end", "the near edge", "the underside"] as const;

/** As many lines as one sentence can name and a reader still keep apart. Our choice. */
const mostTogether = 4;

/**
 * The lines to draw, with their numbers and distances: those from one edge that follow one another in
 * one sentence. Free outlines are drawn as the figure shows, likewise together.
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
    const alike = runFrom(sorted, i);
    if (alike === null) return [];
    const edge = from[cut.axis] ?? "the left end";
    const way = cut.kind === "slice" ? " on all four sides" : "";
    const places = listWords(alike.map(({ at }) => format.length(at)));
    const last = alike.at(-1)!.order;
    return last === cut.order
      ? [`Draw line ${cut.order}${way}, ${places} from ${edge}, with the ${pen}.`]
      : [
          `Draw lines ${cut.order} ${last === cut.order + 1 ? "and" : "to"} ${last}${way} from ${edge}: ${places}.`,
        ];
  });
  return lines.length > 1 && cuts.some(({ kind }) => kind !== "free")
    ? [...lines, "Stop each line where the figure ends it."]
    : lines;
}

/** The cuts named together with the one at an index, or null where an earlier sentence names it. */
function runFrom(sorted: readonly Cut[], index: Count): readonly Cut[] | null {
  const one = sorted[index]!;
  const isAlike = (other: Cut | undefined) =>
    other?.kind === one.kind && other.axis === one.axis && other.kind !== "free";
  let start = index;
  while (isAlike(sorted[start - 1])) start -= 1;
  if ((index - start) % mostTogether !== 0) return null;
  const run = sorted.slice(index, index + mostTogether);
  const end = run.findIndex((other) => !isAlike(other));
  return end < 0 ? run : run.slice(0, end);
}
