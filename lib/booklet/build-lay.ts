import type { Lay } from "../packing/types.ts";
import type { Mm } from "../plane/types.ts";
import type { Figure } from "../drawing/types.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { shortfallNotice, slugOf } from "./make-notice.ts";
import { buildPlaces } from "./build-places.ts";
import { stockLabel } from "./open-hyphens.ts";
import type { Fact, LayPage } from "./pages.ts";
import type { Plan } from "./types.ts";

/** Pieces laid on one cloth, with coordinates a person can chalk. */
export function buildLay(
  lay: Lay,
  figures: FigureSource,
  { plan, format }: { readonly plan: Plan; readonly format: Format },
): LayPage {
  const id = `lay-${slugOf(lay.stock)}`;
  const label = stockLabel(plan.project.stock, lay.stock);
  const table = buildPlaces(lay, `${id}-places`, { plan, format });
  return {
    kind: "lay",
    id,
    title: `Lay on the ${label}`,
    facts: layFacts(lay, format),
    figure: layFigure(lay, figures, table.rows.length),
    table,
    shortfalls: lay.unplaced.map((piece) =>
      shortfallNotice(
        {
          part: piece,
          reason: "is wider than the cloth and has no place on this lay",
          remedy: "Use a wider cloth, or cut the panel in two with a seam",
        },
        lay.stock,
      ),
    ),
  };
}

/** Rows that a drawing of the second height still leaves room for. @source our choice: 6 mm a row */
const fewRows = 12;

/**
 * Drawing and coordinates share a page where the list is short; a long list runs on by itself. The
 * largest drawing is taken whose labels are clear, in the least room that gives it.
 */
function layFigure({ stock }: Lay, figures: FigureSource, rows: number): Figure | null {
  const id = `lay/${stock}`;
  if (!figures.ids.includes(id)) return null;
  const heights = rows <= fewRows ? [100, 115, 130] : [115, 150, 190];
  const rooms = heights.map((height): FigureRoom => ({ width: 165, height }));
  const largest = Math.max(...rooms.map((room) => drawClear(figures, id, [room])?.drawn ?? 0));
  return (
    drawClear(figures, id, rooms, ({ drawn = 0 }) => drawn >= largest) ??
    figures.draw(id, rooms.at(-1))
  );
}

function layFacts(lay: Lay, format: Format): readonly Fact[] {
  return [
    { label: "Cloth width", value: format.length(lay.width) },
    { label: "Selvedge left out on each side", value: format.length(lay.selvedge) },
    { label: "Length used", value: format.length(lay.length) },
    { label: "On hand", value: format.length(lay.have) },
    ...(lay.folded === undefined
      ? []
      : [{ label: "Folded, and cut double, for", value: format.length(lay.folded) }]),
    { label: "To buy", value: lay.buy === 0 ? "nothing" : format.shop(lay.buy) },
    { label: "Share of the cloth used", value: format.percent(lay.yield) },
    { label: "No lay can be shorter than", value: format.length(lay.lowerBound) },
    ...(lay.copies > 1
      ? [
          {
            label: `${lay.copies} laid one by one would take`,
            value: format.length(lay.separately),
          },
        ]
      : []),
  ];
}

/** What the page of a lay takes: heading, facts, the head of its table, its rows and its drawing. */
export const layHeight = ({ figure, table }: LayPage): Mm =>
  70 + table.rows.length * 5 + (figure?.height ?? 0);
