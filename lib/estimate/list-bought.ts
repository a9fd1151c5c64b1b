import type { Material, Work } from "./types.ts";

/** The author's own lines, multiplied by the copies. */
export function listBought({ project }: Work): Material[] {
  return project.buy.map((line, index) => {
    const quantity = line.quantity * project.copies;
    const buy = Math.max(0, quantity - line.have);
    const each = `${Number(line.quantity.toFixed(3))}${line.unit === null ? "" : ` ${line.unit}`}`;
    return {
      id: `buy/${index + 1}`,
      item: line.item,
      quantity,
      perCopy: line.quantity,
      unit: "piece",
      unitWord: line.unit,
      have: line.have,
      buy,
      basis:
        project.copies > 1
          ? `${each} for each of ${project.copies} copies.`
          : "Listed by the author.",
      price: line.price === null ? null : buy * line.price,
      group: "other",
    };
  });
}
