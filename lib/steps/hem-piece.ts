import type { Work } from "../estimate/types.ts";
import type { Mm } from "../plane/types.ts";
import { makeStep } from "./make-step.ts";
import { partLabel } from "./part-label.ts";
import type { Step } from "./types.ts";

/** What hemming needs to know; `allowance` stands in where the piece states none of its own. */
export interface Hem {
  readonly group: string;
  readonly work: Work;
  readonly allowance: Mm;
}

/** Turn in the edges of a loose piece and sew round it. */
export function hemPiece(id: string, { group, work, allowance }: Hem): Step {
  const label = partLabel(id, work.project);
  const spec = work.project.pieces.find((one) => one.id === id);
  const turned = spec === undefined || spec.seamAllowance === 0 ? allowance : spec.seamAllowance;
  return makeStep({
    id: `make-${id}`,
    group,
    title: `Make up the ${label}`,
    actions: [
      `Turn in ${work.format.length(turned)} along every edge of the ${label}, wrong sides together.`,
      "Press the folds with the iron.",
      "Sew round the edges with the sewing machine, a foot's width in.",
    ],
    uses: [label, "iron", "sewing machine", "thread"],
    makes: [`finished ${label}`],
    check:
      spec === undefined
        ? null
        : `The finished piece should measure ${work.format.sizes(spec.size)}.`,
    remedy: "Unpick one edge and turn it in again.",
    figure: `hem/${id}`,
  });
}
