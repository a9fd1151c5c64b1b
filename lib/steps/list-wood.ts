import type { Work } from "../estimate/types.ts";
import { groupAlike, type AlikeStock } from "../packing/group-alike.ts";
import type { CutPlan } from "../packing/types.ts";
import { isDrying } from "../estimate/drying-finish.ts";
import { cutLines } from "./cut-lines.ts";
import { makeStep } from "./make-step.ts";
import { numberOf, stockName, stockNames } from "./name-parts.ts";
import { partLabel } from "./part-label.ts";
import type { Step } from "./types.ts";

const group = "Wood";

/** Sheets and boards: saw each, sand all, put them together. */
export function listWood(work: Work): Step[] {
  const plans = [...work.sheets, ...work.boards.filter(({ kind }) => kind === "board")];
  const sawn = plans.flatMap((plan) =>
    groupAlike(plan).map((alike) => sawStock(plan, alike, work)),
  );
  if (sawn.length === 0) return [];
  const parts = [...new Set(sawn.flatMap(({ makes }) => makes))];
  return [...sawn, sandParts(parts), assembleParts(parts, work), ...finishWood(work)];
}

function sawStock(plan: CutPlan, alike: AlikeStock, work: Work): Step {
  const [used] = alike;
  const stock = work.project.stock.find((one) => one.id === plan.stock);
  const names = alike.map((one) => stockName(plan, one, work.project));
  const isOne = alike.length === 1;
  const name = isOne ? (names[0] ?? "") : `each ${plan.kind}`;
  const kerf = stock !== undefined && "kerf" in stock ? stock.kerf : 0;
  const sizes = used.places.map(
    ({ part, size }) => `${partLabel(part, work.project)} ${work.format.sizes(size)}`,
  );
  const isFree = used.cuts.some(({ kind }) => kind === "free");
  return makeStep({
    id: `cut-${plan.stock}-${numberOf(plan, used)}`,
    group,
    title: `Saw ${stockNames(plan, alike, work.project)}${isOne ? "" : " alike"}`,
    actions: [
      `Lay ${name} as the figure shows.`,
      ...cutLines(used.cuts, "marker", work.format),
      `Clamp ${name} to the bench.`,
      "Saw on the far side of each line, in the order of the numbers.",
      ...(used.places.some(({ inHoleOf }) => inHoleOf !== undefined)
        ? ["Saw out the parts inside a hole before the hole itself."]
        : []),
      ...(kerf > 0
        ? [
            `Measure each part before the next cut: the lines allow ${work.format.length(kerf)} for the saw.`,
          ]
        : []),
      ...(isFree ? ["Saw outside a curved line, for sanding back to it."] : []),
      "Write its name on each part with the marker.",
    ],
    uses: [...names, "tape measure", "try square", "marker", "clamps", "saw", "eye protection"],
    makes: [...new Set(used.places.map(({ part }) => partLabel(part, work.project)))],
    check: `These should now measure: ${[...new Set(sizes)].join(", ")}.`,
    remedy:
      "Plane or sand a part that is too large. Saw one that is too small again from an offcut.",
    figure: `${plan.kind}/${plan.stock}/${numberOf(plan, used)}`,
  });
}

function sandParts(parts: readonly string[]): Step {
  return makeStep({
    id: "sand",
    group,
    title: "Sand the parts",
    actions: [
      "Sand every face along the grain with the sandpaper.",
      "Sand every edge and corner round.",
      "Wipe off the dust with a damp cloth.",
    ],
    uses: [...parts, "sandpaper"],
    check: "No edge should catch on a woollen thread drawn over it.",
    remedy: "Go over that edge again with finer paper.",
    figure: "parts/sand",
  });
}

function assembleParts(parts: readonly string[], { project }: Work): Step {
  const hasScrews = project.buy.some(({ item }) => /\bscrews?\b/i.test(item));
  return makeStep({
    id: "assemble",
    group,
    title: "Put the parts together",
    actions: [
      "Dry-fit all parts without glue.",
      "Check the corners with the try square.",
      "Mark where the parts meet with the marker.",
      ...(hasScrews
        ? ["Drill a thin hole for each screw.", "Fit the screws with the screwdriver."]
        : ["Join the parts the way the author describes."]),
      "Measure both diagonals with the tape measure.",
    ],
    uses: [
      ...parts,
      "try square",
      "marker",
      "tape measure",
      ...(hasScrews ? ["drill", "screwdriver", "eye protection"] : []),
    ],
    makes: ["assembled parts"],
    check: "The two diagonals of every rectangle should be equal.",
    remedy: "Push the longer diagonal together before you tighten or clamp.",
    figure: isPlaced(project) ? "pieces/all" : "parts/join",
  });
}

/** Does the author say where some board or sheet part stands in the whole? */
function isPlaced({ pieces, stock }: Work["project"]): boolean {
  const isWood = (id: string) =>
    stock.some((one) => one.id === id && (one.kind === "sheet" || one.kind === "board"));
  return pieces.some(({ at, stock: own }) => at !== null && isWood(own));
}

/** Oil, varnish or paint, where the author lists it for the wood. */
function finishWood({ project }: Work): Step[] {
  const line = project.buy.find(({ use }) => use === "finish");
  if (line === undefined) return [];
  return [
    makeStep({
      id: "finish",
      group,
      title: `Finish the wood with ${line.item}`,
      actions: [
        "Wipe off all dust.",
        `Read the instructions on the ${line.item}.`,
        `Spread the ${line.item} thinly along the grain with a lint-free cloth.`,
        "Wipe off what has not sunk in.",
        "Leave the wood to dry as long as the instructions say.",
      ],
      uses: ["assembled parts", line.item],
      makes: ["finished wood"],
      processes: isDrying(line) ? ["oily-rags"] : [],
      check: "The wood should feel dry and smooth, with no runs.",
      remedy: "Sand a run flat once it is hard, then go over the place again.",
      figure: "parts/finish",
    }),
  ];
}
