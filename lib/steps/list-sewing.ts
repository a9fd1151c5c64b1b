import type { Work } from "../estimate/types.ts";
import type { Cover, Seam } from "../seams/types.ts";
import { groupSeams } from "./group-seams.ts";
import { fitClosing } from "./fit-closing.ts";
import { coverName } from "./name-parts.ts";
import { sewSeam } from "./sew-seam.ts";
import type { Step } from "./types.ts";

/** Each cover: the closing, if it goes in flat, then the seams in order, then the rest of the closing. */
export function listSewing(work: Work): Step[] {
  return work.covers.flatMap((cover) => {
    const closing = fitClosing(cover, work);
    const seams = groupSeams(cover).flatMap(({ makes, seams: members }) =>
      members.map((seam) => sewSeam(seam, cover, { group: groupName(makes, cover, work), work })),
    );
    return finish(isFlat(cover) ? [...closing, ...seams] : [...seams, ...closing], cover);
  });
}

/** The last step leaves a whole cover. */
function finish(steps: readonly Step[], cover: Cover): Step[] {
  return steps.map((step, index) =>
    index === steps.length - 1 ? { ...step, makes: [...step.makes, coverName(cover.solid)] } : step,
  );
}

/** Does the closing come before every seam in the sewing order, while its panels are flat? */
function isFlat(cover: Cover): boolean {
  const first = (state: (one: Seam) => boolean) =>
    Math.min(...cover.seams.filter(state).map(({ order }) => order));
  return first(({ state }) => state === "closing") < first(({ state }) => state === "sewn");
}

function groupName(makes: string, cover: Cover, { covers }: Work): string {
  return covers.length > 1 ? `Sewing: ${makes} (${cover.solid})` : `Sewing: ${makes}`;
}
