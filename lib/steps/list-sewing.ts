import type { Work } from "../estimate/types.ts";
import type { Cover, Seam } from "../seams/types.ts";
import { batchSeams } from "./batch-seams.ts";
import { fitClosing } from "./fit-closing.ts";
import { groupSeams } from "./group-seams.ts";
import { joinBoxing } from "./join-boxing.ts";
import { listWords } from "../estimate/list-words.ts";
import { coverName, seamName } from "./name-parts.ts";
import { sewMethod } from "./sew-method.ts";
import { sewSeam } from "./sew-seam.ts";
import type { Step } from "./types.ts";

/**
 * How every seam is sewn, once; then each cover: the closing, if it goes in flat, the seams in order,
 * and the rest of the closing.
 */
export function listSewing(work: Work): Step[] {
  const steps = work.covers.flatMap((cover) => sewCover(cover, work));
  const [first] = steps;
  return first === undefined ? [] : [sewMethod(first.group, work), ...steps];
}

function sewCover(cover: Cover, work: Work): Step[] {
  const seams = groupSeams(cover).flatMap(({ makes, seams: members }) => {
    const inGroup = { group: groupName(makes, cover, work), work };
    return batchSeams(members, cover).map((batch) =>
      batch.length > 1 ? joinBoxing(batch, cover, inGroup) : sewSeam(batch[0], cover, inGroup),
    );
  });
  const isFirst = isFlat(cover);
  const [first] = seams;
  const closing = fitClosing(cover, work).map((step) =>
    isFirst && first !== undefined ? { ...step, group: first.group } : step,
  );
  return finish(isFirst ? [...closing, ...seams] : [...seams, ...closing], cover, work);
}

/** The last step leaves a whole cover, and open what is closed by hand. */
function finish(steps: readonly Step[], cover: Cover, work: Work): Step[] {
  const open = cover.seams.filter(({ state }) => state === "open");
  const isOpen = open.length > 0 && cover.opening !== null;
  const leave = isOpen
    ? [
        `Leave ${listWords(open.map(({ id }) => seamName(cover, id, work)))} open for the foam, ${work.format.length(cover.opening.run)} in all.`,
      ]
    : [];
  return steps.map((step, index) =>
    index === steps.length - 1
      ? {
          ...step,
          actions: [...step.actions, ...leave],
          makes: [...step.makes, coverName(cover.solid)],
        }
      : step,
  );
}

/** Does the closing come before every seam in the sewing order, while its panels are flat? */
function isFlat(cover: Cover): boolean {
  const first = (state: (one: Seam) => boolean) =>
    Math.min(...cover.seams.filter(state).map(({ order }) => order));
  return first(({ state }) => state === "closing") < first(({ state }) => state === "sewn");
}

/** Longer names of sub-assemblies make no title. In letters; our choice. */
const longestName = 24;

function groupName(makes: string, cover: Cover, { covers }: Work): string {
  const name = makes.length > longestName ? "joining the panels" : makes;
  return covers.length > 1 ? `Sewing: ${name} (${cover.solid})` : `Sewing: ${name}`;
}
