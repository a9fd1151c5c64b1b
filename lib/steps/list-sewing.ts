import type { Work } from "../estimate/types.ts";
import type { Cover, Seam, SewingPass } from "../seams/types.ts";
import { batchSeams } from "./batch-seams.ts";
import { fitClosing } from "./fit-closing.ts";
import { groupPasses } from "./group-passes.ts";
import { joinBoxing } from "./join-boxing.ts";
import { listWords } from "../units/list-words.ts";
import { attachAfter } from "./list-attaching.ts";
import { coverName, seamName } from "./name-parts.ts";
import { sewMethod } from "./sew-method.ts";
import { sewPass } from "./sew-pass.ts";
import { sewSeam } from "./sew-seam.ts";
import type { Step } from "./types.ts";

/**
 * How every seam is sewn, once; then each cover in the order its sewing was planned, the closing among
 * the seams where cloth still spreads flat.
 */
export function listSewing(work: Work): Step[] {
  const steps = work.covers.flatMap((cover) => sewCover(cover, work));
  const [first] = steps;
  return first === undefined ? [] : [sewMethod(first.group, work), ...steps];
}

function sewCover(cover: Cover, work: Work): Step[] {
  const steps = groupPasses(cover).flatMap(({ makes, passes }) => {
    const inGroup = { group: groupName(makes, cover, work), work };
    return batchPasses(passes, cover).flatMap(([first, ...more]): Step[] => {
      const onTop = attachAfter(
        [first, ...more].map(({ number }) => number),
        cover,
        inGroup,
      );
      if (first.state === "closing") return [...fitClosing(cover, first, inGroup), ...onTop];
      const seams = [first, ...more].map((pass) => seamOf(pass, cover)) as [Seam, ...Seam[]];
      if (more.length > 0) return [joinBoxing(seams, cover, inGroup), ...onTop];
      return [
        first.seams.length > 1 ? sewPass(first, cover, inGroup) : sewSeam(seams[0], cover, inGroup),
        ...onTop,
      ];
    });
  });
  return finish(steps, cover, work);
}

/** Passes in one step: short joins together, every other pass alone. */
function batchPasses(passes: readonly SewingPass[], cover: Cover): [SewingPass, ...SewingPass[]][] {
  const isSingle = (pass: SewingPass) => pass.seams.length === 1 && pass.state === "sewn";
  const batches: [SewingPass, ...SewingPass[]][] = [];
  for (const pass of passes) {
    const last = batches.at(-1);
    const together = last === undefined ? [] : [...last, pass];
    const isOne =
      together.length > 0 &&
      together.every(isSingle) &&
      batchSeams(
        together.map((one) => seamOf(one, cover)),
        cover,
      ).length === 1;
    if (isOne) last!.push(pass);
    else batches.push([pass]);
  }
  return batches;
}

const seamOf = ({ seams }: SewingPass, cover: Cover): Seam =>
  cover.seams.find(({ id }) => id === seams[0])!;

/** The last step leaves a whole cover, and open what is closed by hand. */
function finish(steps: readonly Step[], cover: Cover, work: Work): Step[] {
  const open = cover.seams.filter(({ state }) => state === "open");
  const isOpen = open.length > 0 && cover.opening !== null;
  const isZipped = cover.closing?.kind === "zip" && cover.passes.at(-1)?.state === "sewn";
  const leave = isOpen
    ? [
        `Leave ${listWords(open.map(({ id }) => seamName(cover, id, work)))} open for the foam, ${work.format.length(cover.opening.run)} in all.`,
      ]
    : isZipped
      ? ["Leave the slider half way: the cover is turned through it."]
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

function groupName(makes: string, cover: Cover, { covers }: Work): string {
  return covers.length > 1 ? `Sewing: ${makes} (${cover.solid})` : `Sewing: ${makes}`;
}
