import type { CutPlan, Offcut } from "../packing/types.ts";
import type { Mm } from "../plane/types.ts";
import type { Stock } from "../project/types.ts";
import type { Plan } from "./types.ts";

/**
 * The offcuts of a project as a stock file for other projects, or null where nothing worth keeping is
 * left. Sizes are whole millimetres, rounded down: an offcut is never larger than it says.
 */
export function writeOffcuts({ project, slabs, sheets, boards }: Plan): string | null {
  const entries = [...slabs, ...sheets, ...boards].flatMap((plan) => {
    const stock = project.stock.find(({ id }) => id === plan.stock);
    return stock === undefined ? [] : entriesOf(plan, stock, project.slug);
  });
  if (entries.length === 0) return null;
  return [
    `# What is left over from ${project.title.replaceAll("\n", " ")}. Take out what is used up.`,
    "units: mm",
    "stock:",
    ...entries.map((entry) => `  ${entry}`),
    "",
  ].join("\n");
}

/** Offcuts of one size are one entry. */
function entriesOf(plan: CutPlan, stock: Stock, slug: string): readonly string[] {
  const counts = new Map<string, number>();
  for (const offcut of plan.used.flatMap(({ offcuts }) => offcuts)) {
    const key = sizeOf(offcut).join(", ");
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return [...counts].map(([size, count], i) => {
    const name = `${stock.id.slice(0, 30)}-end-${i + 1}`;
    const label = JSON.stringify(`${stock.label}, offcut of ${slug}`);
    return `${name}: {${fieldsOf(stock, size, count).join(", ")}, label: ${label}}`;
  });
}

const sizeOf = ({ size }: Offcut): readonly Mm[] => size.map((each) => Math.floor(each + 1e-6));

function fieldsOf(stock: Stock, size: string, count: number): readonly string[] {
  switch (stock.kind) {
    case "slab":
      return [
        `kind: slab, size: [${size}], have: ${count}, kerf: ${tidy(stock.kerf)}`,
        ...(stock.density === null ? [] : [`density: ${tidy(stock.density)} kg/m3`]),
        ...(stock.hardness === null ? [] : [`hardness: ${tidy(stock.hardness)} N`]),
      ];
    case "sheet":
      return [
        `kind: sheet, size: [${size}], thickness: ${tidy(stock.thickness)}, have: ${count}`,
        `kerf: ${tidy(stock.kerf)}, grain: ${stock.grain}`,
      ];
    case "board":
      return [
        `kind: board, section: [${stock.section.map(tidy).join(", ")}], length: ${size}`,
        `have: ${count}, kerf: ${tidy(stock.kerf)}`,
      ];
    case "zip":
    case "length":
      return [`kind: ${stock.kind}, have: [${Array(count).fill(size).join(", ")}]`];
    case "fabric":
      return [`kind: fabric, width: ${tidy(stock.width)}`];
  }
}

const tidy = (value: number): number => Math.round(value * 1000) / 1000;
