import type { Material } from "../estimate/types.ts";
import type { Mm } from "../plane/types.ts";
import type { Format } from "../units/make-format.ts";
import type { MaterialsPage } from "./pages.ts";
import { figures, makeTable, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** The shopping list, each line with what it rests on; null when nothing is needed. */
export function buildMaterials({ materials, project }: Plan, format: Format): MaterialsPage | null {
  if (materials.length === 0) return null;
  const hasPrices = materials.some(({ price }) => price !== null);
  const columns = [
    words("Item"),
    figures("Needed"),
    figures("On hand"),
    figures("To buy"),
    ...(hasPrices ? [figures("Price")] : []),
    words("Why this much"),
  ];
  const rows = materials.map((line) => [
    line.item,
    isLong(line) ? format.shop(line.quantity) : amount(line.quantity, line, format),
    amount(line.have, line, format),
    line.buy === 0 ? "–" : toBuy(line, format),
    ...(hasPrices ? [line.price === null ? "" : line.price.toFixed(2)] : []),
    line.basis,
  ]);
  return {
    kind: "materials",
    id: "materials",
    title: "Materials",
    table: makeTable("materials-list", "What is needed, on hand and to buy", { columns, rows }),
    notes: [
      ...(project.copies > 1 ? [`All amounts are for ${project.copies} copies.`] : []),
      ...(hasPrices ? [totalPrice(materials)] : []),
    ],
  };
}

function totalPrice(materials: readonly Material[]): string {
  const total = materials.reduce((sum, { price }) => sum + (price ?? 0), 0);
  const unpriced = materials.filter(({ price, buy }) => price === null && buy > 0).length;
  const rest =
    unpriced === 0 ? "" : `; ${unpriced} ${unpriced === 1 ? "line has" : "lines have"} no price`;
  return `Prices given come to ${total.toFixed(2)}${rest}.`;
}

/** Nobody measures off so much: thread, and cord for many. @source our choice */
const longFrom: Mm = 5000;
const isLong = ({ unit, quantity }: Material): boolean => unit === "mm" && quantity >= longFrom;

/** Lengths as a shop sells them, all else in its own unit. */
const toBuy = (line: Material, format: Format): string =>
  line.unit === "mm" ? format.shop(line.buy) : amount(line.buy, line, format);

/** A quantity in its own unit. */
export function amount(quantity: number, { unit, unitWord }: Material, format: Format): string {
  switch (unit) {
    case "mm":
      return format.length(quantity);
    case "mm2":
      return format.area(quantity);
    case "kg":
      return format.mass(quantity);
    case "piece":
      return unitWord === null
        ? format.number(quantity)
        : `${format.number(quantity)} ${quantity === 1 ? unitWord : manyOf(unitWord)}`;
  }
}

/** Measures stand as they are: "3 m", "2 lb"; things take their plural. An author's own is left alone. */
function manyOf(word: string): string {
  if (word.length < 3 || /[^a-z]|s$|^(dozen|foot|feet)$/.test(word)) return word;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  return /(ch|sh|x|z)$/.test(word) ? `${word}es` : `${word}s`;
}
