import type { Work } from "../estimate/types.ts";
import { groupAlike, type AlikeStock } from "../packing/group-alike.ts";
import type { CutPlace, CutPlan, UsedStock } from "../packing/types.ts";
import type { Step } from "./types.ts";
import { cutLines } from "./cut-lines.ts";
import { makeStep } from "./make-step.ts";
import { numberOf, partName, stockName, stockNames } from "./name-parts.ts";
import { isBox } from "./is-box.ts";

/** One step a slab: draw the numbered lines, cut in their order, name the blocks. */
export function listFoamCutting(work: Work): Step[] {
  return work.slabs.flatMap((plan) => groupAlike(plan).map((alike) => cutSlabs(plan, alike, work)));
}

/** What comes off a slab: a block, a layer of one, or a blank still to be shaped. */
export function slabPartName(
  part: string,
  [layer, layers]: readonly [number, number],
  work: Work,
): string {
  const name = partName(part, work);
  const whole = isBox(part, work) ? name : `blank for ${name}`;
  return layers > 1 ? `layer ${layer} of ${whole}` : whole;
}

/** The same, with the twin that a cut aslant parts it from. */
export function slabPlaceName({ part, layer, twin }: Named, work: Work): string {
  if (twin === undefined) return slabPartName(part, layer, work);
  const name = partName(part, work);
  const whole = `blank for ${twin === part ? `two of ${name}` : `${name} and ${partName(twin, work)}`}`;
  return layer[1] > 1 ? `layer ${layer[0]} of ${whole}` : whole;
}

type Named = Pick<CutPlace, "part" | "layer" | "twin">;

/** The place on the slabs of the blank that a block is cut from, its own or its twin's. */
export const blankOf = (part: string, { slabs }: Pick<Work, "slabs">): CutPlace | null =>
  slabs
    .flatMap(({ used }) => used.flatMap(({ places }) => places))
    .find((place) => place.part === part || place.twin === part) ?? null;

function cutSlabs(plan: CutPlan, alike: AlikeStock, work: Work): Step {
  const [used] = alike;
  const slabs = alike.map((one) => stockName(plan, one, work.project));
  const isOne = alike.length === 1;
  const slab = isOne ? (slabs[0] ?? "") : "each slab";
  const places = alike.flatMap((each) => each.places);
  const made = [...new Set(places.map((place) => slabPlaceName(place, work)))];
  const sizes = places.map(
    (place) => `${slabPlaceName(place, work)} ${work.format.sizes(place.size)}`,
  );
  return makeStep({
    id: `cut-${plan.stock}-${numberOf(plan, used)}`,
    group: "Foam",
    title: `Cut ${stockNames(plan, alike, work.project)}${isOne ? "" : " alike"}`,
    actions: [
      `Lay ${slab} flat on a bench, as the figure shows it.`,
      ...cutLines(used.cuts, "marker", work.format),
      ...knifeLines(used),
      "Write its name on each piece with the marker.",
    ],
    uses: [
      ...slabs,
      "tape measure",
      "straightedge",
      "marker",
      ...(used.cuts.length > 0 ? ["electric knife"] : []),
    ],
    makes: made,
    check: `These should now measure: ${[...new Set(sizes)].join("; ")}.`,
    remedy: "Trim a piece that is too large. Cut one that is too small again from an offcut.",
    figure: `slab/${plan.stock}/${numberOf(plan, used)}`,
  });
}

/** How the blade is held: upright through the slab, level where a piece is sliced to thickness. */
function knifeLines({ cuts }: UsedStock): string[] {
  if (cuts.length === 0) return [];
  const isSliced = cuts.some(({ kind }) => kind === "slice");
  const isUpright = cuts.some(({ kind }) => kind !== "slice");
  const along =
    cuts.length > 1 ? "along the lines in the order of their numbers" : "along the line";
  return [
    `Cut ${along} with the electric knife.`,
    ...(isUpright
      ? [`Hold the blade upright ${isSliced ? "for cuts across the slab" : "all the way"}.`]
      : []),
    ...(isSliced
      ? [
          "Hold the blade level to slice to thickness.",
          "Work in from each side to the middle, with the blade on the line.",
        ]
      : []),
  ];
}
