import type { Format } from "../units/make-format.ts";
import { openHyphens, titleOf } from "./open-hyphens.ts";
import type { Table } from "./pages.ts";
import { figures, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** Foam, finished and cut size of every panel and every block side by side; null without a cover. */
export function listSizes({ covers, solids }: Plan, format: Format): Table | null {
  return tableOrNull("finish-sizes", "Panel by panel and block by block", {
    columns: [words("Part"), figures("On the foam"), figures("Finished"), figures("Cut")],
    rows: covers.flatMap((cover) => {
      const of = covers.length > 1 ? ` of ${openHyphens(cover.solid)}` : "";
      const blocks = solids.find(({ id }) => id === cover.solid)?.blocks ?? [];
      return [
        ...cover.panels.map(({ id, label, size }) => {
          const foam = cover.foamPanels.find(({ panel }) => panel === id)?.size ?? null;
          const piece = cover.pieces.find(({ panel }) => panel === id);
          return [
            `Panel ${id}: ${label}`,
            foam === null ? "–" : format.sizes(foam),
            format.sizes(size),
            piece === undefined ? "–" : format.sizes(piece.cutSize),
          ];
        }),
        ...blocks.map(({ id, size }) => {
          const room = cover.blockRoom.find(({ block }) => block === id)?.size;
          return [
            `Block ${titleOf(id)}${of}`,
            format.sizes(size),
            room === undefined ? "–" : format.sizes(room),
            "as the foam",
          ];
        }),
      ];
    }),
  });
}
