import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import type { SeamBatch } from "./batch-seams.ts";
import { listWords } from "../units/list-words.ts";
import { makeStep } from "./make-step.ts";
import { panelName, seamName } from "./name-parts.ts";
import { layTogether } from "./sew-seam.ts";
import type { Step } from "./types.ts";

/** Several short joins of strips in one step; each keeps its own name for the author's notes. */
export function joinBoxing(
  batch: SeamBatch,
  cover: Cover,
  { group, work }: { readonly group: string; readonly work: Work },
): Step {
  const letters = batch.map(({ id }) => id);
  const length = work.format.length(batch[0].length[0]);
  const whose = work.covers.length > 1 ? ` of ${cover.solid}` : "";
  const last = batch.at(-1) ?? batch[0];
  return makeStep({
    id: `sew-${cover.solid}-${letters.join("-")}`,
    alsoNamed: letters.map((letter) => `sew-${cover.solid}-${letter}`),
    group,
    title: `Join the boxing: seams ${listWords(letters)}${whose}`,
    actions: [
      ...batch.map((seam) => layTogether(seam, cover, work, ` for seam ${seam.id}`)),
      "Sew each seam from end to end.",
      "Press the allowances open with the iron.",
    ],
    uses: [
      ...batch.flatMap(({ panels }) => panels.map((panel) => panelName(cover, panel, work))),
      "iron",
    ],
    makes: [...batch.map(({ id }) => seamName(cover, id, work)), last.makes],
    check: `Each seam should measure ${length}.`,
    figure: `seam/${cover.solid}/${letters.join("+")}`,
  });
}
