import { neatenStitch, neateningOf, neatenWidth } from "../estimate/neaten-edges.ts";
import type { Work } from "../estimate/types.ts";
import { makeStep } from "./make-step.ts";
import { coverName, panelName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** Neaten the raw edges while the pieces lie flat, where the author asks for it. */
export function listNeatening(work: Work): Step[] {
  return work.covers.flatMap((cover) => {
    const how = neateningOf(cover, work);
    if (how === null) return [];
    const set =
      how === "zigzag"
        ? `Set the sewing machine to a zigzag ${neatenWidth} mm wide and ${neatenStitch} mm long.`
        : `Set the sewing machine to an overedge stitch ${neatenWidth} mm wide.`;
    return [
      makeStep({
        id: `neaten-${cover.solid}`,
        group: "Cutting",
        title: `Neaten the edges of the ${coverName(cover.solid)}`,
        actions: [
          set,
          "Try it on a scrap.",
          "Sew round every panel, the outer stitches just over the edge.",
          "Do not stretch or trim the edge.",
        ],
        uses: [
          ...cover.panels.map(({ id }) => panelName(cover, id, work)),
          "sewing machine",
          "thread",
        ],
        check: "The edges should lie flat, with every notch still open.",
        remedy: "Unpick a stretch that curls. Sew it again with a longer stitch.",
        figure: "method/neaten",
      }),
    ];
  });
}
