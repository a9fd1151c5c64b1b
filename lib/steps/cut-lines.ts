import type { Format } from "../estimate/types.ts";
import { evenRuns } from "../packing/even-runs.ts";
import type { Cut } from "../packing/types.ts";
import { listWords } from "../units/list-words.ts";

/** Where each axis of the stock is measured from, as in the drawing and in the table of cuts. */
const from = ["the left end", "the near edge", "the underside"] as const;

/** As many lines as one sentence can name and a reader still keep apart. Our choice. */
const mostTogether = 4;
/** So many even lines are told by the first of them and their distance. Our choice. */
const fewestEven = 5;

/**
 * The lines to draw, with their numbers and distances: those from one edge that follow one another in
 * one sentence. Free outlines are drawn as the figure shows, likewise together.
 */
export function cutLines(cuts: readonly Cut[], pen: string, format: Format): string[] {
  const sorted = cuts.toSorted((one, other) => one.order - other.order);
  const lines = groupAlong(sorted, isAlike).flatMap((group) =>
    group[0]!.kind === "free"
      ? [freeLine(group, pen)]
      : sentencesOf(group).map((told) => lineWords(told, pen, format)),
  );
  return lines.length > 1 && cuts.some(({ kind }) => kind !== "free")
    ? [...lines, "Stop each line where the figure ends it."]
    : lines;
}

const isAlike = (one: Cut, other: Cut): boolean =>
  one.kind === other.kind && (one.kind === "free" || one.axis === other.axis);

/** Neighbours that belong together, in order. */
function groupAlong<T>(items: readonly T[], belongs: (one: T, next: T) => boolean): T[][] {
  const groups: T[][] = [];
  for (const item of items) {
    const last = groups.at(-1);
    if (last !== undefined && belongs(last.at(-1)!, item)) last.push(item);
    else groups.push([item]);
  }
  return groups;
}

/** Even lines in one sentence, all others a few at a time. */
function sentencesOf(group: readonly Cut[]): Cut[][] {
  const runs = evenRuns(group, {
    kind: ({ kind }) => kind,
    at: ({ at }) => at,
    fewest: fewestEven,
  });
  return groupAlong(runs, (one, next) => one.length === 1 && next.length === 1).flatMap((told) => {
    const lines = told.flat();
    if (told[0]!.length > 1) return [lines];
    return groupAlong([...lines.keys()], (_, next) => next % mostTogether !== 0).map((indices) =>
      indices.map((index) => lines[index]!),
    );
  });
}

function lineWords(told: readonly Cut[], pen: string, { length }: Format): string {
  const [cut, next] = told;
  const last = told.at(-1)!.order;
  const edge = from[cut!.axis] ?? "the left end";
  const way = cut!.kind === "slice" ? " on all four sides" : "";
  if (next === undefined) {
    return `Draw line ${last}${way}, ${length(cut!.at)} from ${edge}, with the ${pen}.`;
  }
  const which = `${cut!.order} ${last === cut!.order + 1 ? "and" : "to"} ${last}${way}`;
  const places =
    told.length >= fewestEven
      ? `${length(cut!.at)}, then every ${length(next.at - cut!.at)}`
      : listWords(told.map(({ at }) => length(at)));
  return `Draw lines ${which} from ${edge}: ${places}.`;
}

function freeLine(told: readonly Cut[], pen: string): string {
  const [first, last] = [told[0]!.order, told.at(-1)!.order];
  const which = last === first ? `outline ${last}` : `outlines ${first} to ${last}`;
  return `Draw ${which} with the ${pen} as the figure shows.`;
}
