import { stitchFor } from "../estimate/cloth-class.ts";
import { stitchesPerInch } from "../estimate/stitches-per-inch.ts";
import type { Work } from "../estimate/types.ts";
import { makeStep } from "./make-step.ts";
import type { Step } from "./types.ts";

/**
 * What every seam has in common, said once before the first of them, with its cautions in full.
 *
 * @source common practice, no source; the stitch length as in `estimate/cloth-class.ts`
 */
export function sewMethod(group: string, work: Work): Step {
  const seams = work.covers.flatMap((cover) => cover.seams.filter(({ state }) => state === "sewn"));
  const hasCorners = seams.some(({ corners }) => corners.length > 0);
  const ends = endWords(work);
  const stitch = stitchFor(work);
  return makeStep({
    id: "sew-method",
    group,
    title: "How every seam is sewn",
    isMethod: true,
    actions: [
      `Set the sewing machine to a stitch of ${stitch} mm, ${Math.round(stitchesPerInch(stitch))} to the inch.`,
      "Lay the panels right sides together, with the edges level.",
      "Match the ends, the letters and the numbers of the notches.",
      "Pin from the ends to the middle.",
      `Start ${ends} from the end, where the seam lines cross.`,
      "Sew on the seam line.",
      ...(hasCorners
        ? [
            "Stop at a corner with the needle down.",
            "Lift the foot.",
            "Turn the cloth round the needle until the next edges meet.",
          ]
        : []),
      `Stop ${ends} from the other end.`,
      "Backstitch at both ends.",
      "Press the allowances to one side with the iron.",
    ],
    uses: ["pins", "sewing machine", "iron", "thread"],
    check: "Sew two scraps this way first. They should lie flat, with even stitches on both sides.",
    remedy:
      "Where a seam puckers or has another length than its step says, unpick that stretch, match the notches again and sew it afresh. Do not stretch the cloth.",
    figure: "method/seam",
  });
}

/** The allowance in figures where all covers have one, or else in words. */
function endWords({ covers, format }: Work): string {
  const allowances = new Set(covers.map(({ seamAllowance }) => seamAllowance));
  const [only] = allowances;
  return allowances.size === 1 && only !== undefined ? format.length(only) : "one seam allowance";
}
