import type { Work } from "../estimate/types.ts";
import { sectionAt } from "../packing/section-at.ts";
import type { Lay, PieceSplit } from "../packing/types.ts";
import { makeStep } from "./make-step.ts";
import { pieceName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** Cut a piece wider than the cloth in parts, and join them before anything else is sewn. */
export function joinParts({ piece, parts, at, allowance }: PieceSplit, lay: Lay, work: Work): Step {
  const { length } = work.format;
  const owner = work.covers.find((cover) => cover.pieces.some(({ id }) => id === piece)) ?? null;
  const own = [...(owner?.pieces ?? []), ...work.pieces].find(({ id }) => id === piece);
  const name = own === undefined ? piece : pieceName(own, owner, work);
  const fabric = work.project.stock.find((one) => one.id === lay.stock)?.label ?? lay.stock;
  const places = parts.flatMap((part, i) => {
    const place = lay.places.find((one) => one.piece === part);
    if (place === undefined) return [];
    return [
      `Mark the lower left corner of part ${i + 1}: ${length(place.x)} across, ${length(sectionAt(lay, place).up)} up.`,
    ];
  });
  return makeStep({
    id: `join-${owner?.solid ?? "loose"}-${piece}`,
    group: "Cutting",
    title: `Cut ${name} in ${parts.length} parts and join them`,
    actions: [
      ...places,
      `Draw the outline of ${name} in parts that meet ${at.map((each) => length(each)).join(" and ")} from its left edge.`,
      `Add ${length(allowance)} along both sides of each join.`,
      "Cut the parts with the cloth scissors.",
      "Lay neighbouring parts right sides together, edge to edge.",
      `Sew each join ${length(allowance)} from the edge.`,
      "Press the joins open with the iron.",
    ],
    uses: [fabric, "tape measure", "straightedge", "tailor's chalk", "cloth scissors", "iron"],
    makes: [name],
    check: `Joined, it should be as large as its figure says.`,
    remedy: "Unpick the join and sew it again, nearer to the edge or farther from it.",
    figure: `spread/${lay.stock}`,
  });
}
