import { figuresUnder } from "./figure-source.ts";
import type { FigureSource } from "./figure-source.ts";
import { cutFacts } from "./cut-facts.ts";
import { buildCutSheets } from "./build-cut-sheets.ts";
import type { Format } from "../units/make-format.ts";
import { shortfallNotice } from "./make-notice.ts";
import { openHyphens, stockLabel, titleOf } from "./open-hyphens.ts";
import type { FoamPage, Table } from "./pages.ts";
import { figures as numbers, makeTable, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** Blocks, how they are cut from the slabs, and how they are glued up. Null without foam. */
export function buildFoam(plan: Plan, figures: FigureSource, format: Format): FoamPage | null {
  const { solids, slabs, project } = plan;
  const withFoam = solids.filter(({ blocks }) => blocks.some(({ foam }) => foam !== null));
  if (withFoam.length === 0 && slabs.length === 0) return null;
  const many = withFoam.length > 1;
  const name = (solid: string, block: string): string =>
    many ? `${titleOf(solid)}: ${openHyphens(block)}` : titleOf(block);
  return {
    kind: "foam",
    id: "foam",
    title: "Foam",
    blocks: tableOrNull("foam-blocks", "Blocks", {
      columns: [words("Block"), words("Length × depth × height"), words("Foam")],
      rows: withFoam.flatMap(({ id, blocks }) =>
        blocks.map((block) => [
          name(id, block.id),
          format.sizes(block.size),
          block.foam === null ? "–" : stockLabel(project.stock, block.foam),
        ]),
      ),
    }),
    joints: tableOrNull("foam-joints", "Glue joints", {
      columns: [words("Joint"), numbers("Area glued")],
      rows: withFoam.flatMap(({ id, joints }) =>
        joints.map(({ blocks: [a, b], area }) => [
          `${name(id, a)} to ${openHyphens(b)}`,
          format.area(area),
        ]),
      ),
    }),
    figures: withFoam.flatMap(({ id }) => figuresUnder(figures, `glue/${id}`)),
    cuts: slabs.flatMap((slab) =>
      buildCutSheets(slab, figures, { format, label: stockLabel(project.stock, slab.stock) }),
    ),
    use: useTable(plan, format),
    shortfalls: slabs.flatMap(({ short, stock }) =>
      short.map((each) => shortfallNotice(each, stock)),
    ),
  };
}

/** What the cut plans take, how well they use it, and how near they come to the best there can be. */
function useTable({ slabs, project }: Plan, format: Format): Table | null {
  if (slabs.length === 0) return null;
  const facts = slabs.map((slab) => cutFacts(slab, { copies: project.copies, format }));
  const labels = [...new Set(facts.flatMap((each) => each.map(({ label }) => label)))];
  return makeTable("foam-use", "How well the slabs are used", {
    columns: [words("Foam"), ...labels.map((label) => numbers(label))],
    rows: slabs.map(({ stock }, i) => [
      stockLabel(project.stock, stock),
      ...labels.map((label) => facts[i]!.find((fact) => fact.label === label)?.value ?? "–"),
    ]),
  });
}
