import type { SlabStock } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";
import { thinnestSeat } from "./check-seat-height.ts";
import { findSeat, hasBack, seatBlocks, type Seat } from "./find-seat.ts";
import { hardnessTolerance } from "./hardness-tolerance.ts";
import { rules } from "./rules.ts";
import type { Check, Finding } from "./types.ts";

/** Foam too soft or too hard for a seat, too hard for a back, or of unknown hardness. */
export const checkFoamHardness: Check = ({ project, solids }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    if (seat === null) return [];
    const under = seatBlocks(seat);
    const slabs = project.stock.filter((stock): stock is SlabStock => stock.kind === "slab");
    const slabOf = (ids: readonly string[]) =>
      slabs.filter(({ id }) =>
        solid.blocks.some((block) => ids.includes(block.id) && block.foam === id),
      );
    return [
      ...slabOf(under).flatMap((slab) => [
        ...judge(slab, solid, "seat"),
        ...(slab.hardness === null && project.audience !== null && seat.height >= thinnestSeat
          ? [unknown(slab, solid)]
          : []),
      ]),
      ...slabOf(backBlocks(seat, solid))
        .filter((slab) => !slabOf(under).includes(slab))
        .flatMap((slab) => judge(slab, solid, "back")),
    ];
  });

/** Blocks wholly above the seat, where there is a back at all. */
function backBlocks(seat: Seat, solid: Solid): string[] {
  if (!hasBack(seat, solid)) return [];
  const top = solid.min[2] + seat.height;
  return solid.blocks.filter(({ min }) => min[2] >= top - 1).map(({ id }) => id);
}

function judge(slab: SlabStock, solid: Solid, use: "seat" | "back"): Finding[] {
  const { hardness, label } = slab;
  if (hardness === null) return [];
  const [soft, hard] = [rules["foam-soft"], rules["foam-hard"]];
  const isSoft = use === "seat" && hardness < soft.least;
  if (!isSoft && hardness <= hard[use]) return [];
  const kind = isSoft ? "foam-soft" : "foam-hard";
  const limit = isSoft ? soft.least : hard[use];
  return [
    {
      id: `${kind}/${solid.id}/${slab.id}`,
      severity: "note",
      about: `stock/${slab.id}`,
      message:
        `${label} has a hardness of ${inBoth(hardness)}, ${isSoft ? "softer" : "harder"} than is usual for a ${use}: ` +
        `${isSoft ? "at least" : "at most"} ${inBoth(limit)}. Foam may be ${inBoth(hardnessTolerance(hardness))} off its figure.`,
      remedy: isSoft
        ? "Use it for backs, or lay a firmer slab below it."
        : `Sit or lean on a sample first. Batting or a thin soft layer on top helps a hard ${use}.`,
      source: rules[kind].source,
    },
  ];
}

function unknown(slab: SlabStock, solid: Solid): Finding {
  return {
    id: `hardness-unknown/${solid.id}/${slab.id}`,
    severity: "note",
    about: `stock/${slab.id}`,
    message: `No hardness was given for ${slab.label}, so how far the seat sinks under the sitter is not reckoned with.`,
    remedy: `Ask the seller and enter it as \`hardness\`. Seats take ${inBoth(rules["foam-soft"].least)} to ${inBoth(rules["foam-hard"].seat)}.`,
    source: rules["hardness-unknown"].source,
  };
}

/** Newtons, and pounds of force as foam is sold by in the United States. */
function inBoth(newtons: number): string {
  return `${Math.round(newtons)} N (${Math.round(newtons / 4.448)} lb)`;
}
