import type { Work } from "../estimate/types.ts";
import { evenRuns } from "../packing/even-runs.ts";
import { groupAlike, type AlikeStock } from "../packing/group-alike.ts";
import type { CutPlan } from "../packing/types.ts";
import { makeStep } from "./make-step.ts";
import { numberOf, stockName, stockNames } from "./name-parts.ts";
import { partLabel } from "./part-label.ts";
import type { Step } from "./types.ts";

/** Webbing, cord and zip chain: measure and cut each length. */
export function listLengths(work: Work): Step[] {
  return work.boards
    .filter(({ kind }) => kind === "length")
    .flatMap((plan) => groupAlike(plan).map((alike) => cutLength(plan, alike, work)));
}

function cutLength(plan: CutPlan, alike: AlikeStock, work: Work): Step {
  const [used] = alike;
  const names = alike.map((one) => stockName(plan, one, work.project));
  const isOne = alike.length === 1;
  const places = used.places.map(({ part, size }) => ({
    name: nameOf(part, work),
    length: work.format.length(size[0] ?? 0),
  }));
  const runs = evenRuns(places, { kind: JSON.stringify, at: () => 0, fewest: 2 });
  return makeStep({
    id: `cut-${plan.stock}-${numberOf(plan, used)}`,
    group: "Cutting",
    title: `Cut ${stockNames(plan, alike, work.project)}${isOne ? "" : " alike"}`,
    actions: [
      `Lay ${isOne ? (names[0] ?? "") : "each length"} straight along the tape measure, without pulling.`,
      ...runs.map(([{ name, length }, ...more]) =>
        more.length === 0
          ? `Measure ${length} for the ${name}.`
          : `Measure ${length} for the ${name}, ${more.length + 1} times.`,
      ),
      "Cut square across at each mark with the cloth scissors.",
      "Write its name on a strip of tape on each length.",
    ],
    uses: [...names, "tape measure", "tailor's chalk", "cloth scissors"],
    makes: [...new Set(places.map(({ name }) => name))],
    check: `These should now measure: ${[...new Set(places.map(({ name, length }) => `${name} ${length}`))].join(", ")}.`,
    remedy: "Trim one that is too long. Cut one that is too short again from what is left over.",
    figure: `board/${plan.stock}/${numberOf(plan, used)}`,
  });
}

/** "zip of seat", "cord of seat", or the label of a loose piece. */
function nameOf(part: string, work: Work): string {
  const [kind, solid] = part.split("/");
  return solid === undefined ? partLabel(part, work.project) : `${kind} of ${solid}`;
}
