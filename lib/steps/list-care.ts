import { fibreCare } from "../estimate/fibre-care.ts";
import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import { makeStep } from "./make-step.ts";
import { coverName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** How to keep each cover, in words: whether it comes off depends on its closing. */
export function listCare(work: Work): Step[] {
  return work.covers.map((cover) => {
    const fabric = work.project.stock.find(({ id }) => id === cover.fabric);
    const care = fabric?.kind === "fabric" ? fibreCare(fabric) : null;
    const isRemovable = cover.closing !== null && cover.closing.kind !== "hand-sewn";
    const finished = `${cover.closing === null ? "filled" : "closed"} ${coverName(cover.solid)}`;
    return makeStep({
      id: `care-${cover.solid}`,
      group: "Care",
      title: work.covers.length > 1 ? `Keep the ${coverName(cover.solid)} well` : "Keep it well",
      actions: isRemovable
        ? [
            `Take the cloth off the ${finished} before you wash it.`,
            care?.wash ?? "Wash the cloth as its seller advises.",
            care?.dry ?? "Let it dry flat, without heat.",
            "Wipe spills off the foam at once.",
          ]
        : [
            `Brush the ${finished} from time to time.`,
            "Wipe off spills at once with a damp cloth.",
            "Unpick the hand-sewn edge if the cloth must be washed.",
          ],
      uses: [finished],
      check: careCheck(cover),
      remedy: "Sew a loose stretch over before it runs on.",
      figure: `care/${cover.solid}`,
    });
  });
}

function careCheck(cover: Cover): string {
  const attached = cover.closing?.kind === "ties" ? "seams and ties" : "seams";
  return `Look over the ${attached} every few months: nothing should be loose.`;
}
