import type { Figure } from "../drawing/types.ts";
import type { Cut, CutPlace, CutPlan, UsedStock } from "../packing/types.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { cutAnchor } from "./anchors.ts";
import { openHyphens, titleOf } from "./open-hyphens.ts";
import type { CutSheet } from "./pages.ts";
import { figures, makeTable, tableOrNull, words } from "./table.ts";

/** Room that leaves the cuts and the parts on the same page where they can be. */
const sheetRooms: readonly FigureRoom[] = [
  { width: 165, height: 50 },
  { width: 165, height: 60 },
  { width: 165, height: 80 },
  { width: 165, height: 100 },
];

/** One sheet for each slab, sheet or board that is cut, with its cuts in order. */
export const buildCutSheets = (
  plan: CutPlan,
  drawings: FigureSource,
  { format, label }: { readonly format: Format; readonly label: string },
): readonly CutSheet[] =>
  plan.used.map((used, i) => buildCutSheet(plan, used, { number: i + 1, drawings, format, label }));

function buildCutSheet(
  plan: CutPlan,
  used: UsedStock,
  context: {
    readonly number: number;
    readonly drawings: FigureSource;
    readonly format: Format;
    readonly label: string;
  },
): CutSheet {
  const { number, drawings, format, label } = context;
  const id = cutAnchor(plan.kind, plan.stock, number);
  return {
    id,
    title: `${titleOf(label)}, ${plan.kind} ${number} of ${plan.used.length}: ${format.sizes(used.size)}`,
    figure: sheetFigure(`${plan.kind}/${plan.stock}/${number}`, drawings),
    cuts: tableOrNull(`${id}-cuts`, "Cuts, in this order", {
      columns: [figures("Cut"), words("How"), figures("At"), words("From")],
      rows: used.cuts.map((cut) => [
        `${cut.order}`,
        cutWords(cut),
        format.length(cut.at),
        edgeWords(cut),
      ]),
    }),
    parts: makeTable(`${id}-parts`, "Parts that come out", {
      columns: [words("Part"), words("Size as it lies"), words("Lowest corner at")],
      rows: used.places.map((place) => [
        partName(place),
        format.sizes(place.size),
        format.sizes(place.at),
      ]),
    }),
    offcuts: tableOrNull(`${id}-offcuts`, "Offcuts", {
      columns: [words("Size"), words("Lowest corner at"), words("Could still become")],
      rows: used.offcuts.map(({ size, at, use }) => [
        format.sizes(size),
        format.sizes(at),
        use ?? "–",
      ]),
    }),
  };
}

/** In the least room in which its labels keep clear, else in all there is. */
function sheetFigure(id: string, drawings: FigureSource): Figure | null {
  if (!drawings.ids.includes(id)) return null;
  return drawClear(drawings, id, sheetRooms) ?? drawings.draw(id, sheetRooms.at(-1));
}

export function partName({ part, copy, layer }: CutPlace): string {
  const [which, of] = layer;
  const layers = of > 1 ? `, layer ${which} of ${of}` : "";
  return `${openHyphens(part)}${copy > 1 ? ` (copy ${copy})` : ""}${layers}`;
}

function cutWords({ kind }: Cut): string {
  switch (kind) {
    case "rip":
      return "rip along the length";
    case "cross":
      return "cut straight across";
    case "slice":
      return "slice to thickness";
    case "free":
      return "cut round the outline";
  }
}

function edgeWords({ axis, kind }: Cut): string {
  if (kind === "free") return "the drawn line";
  return ["the left end", "the near edge", "the underside"][axis] ?? "the lowest corner";
}
