import type { Work } from "../estimate/types.ts";
import type { Attachment } from "../project/types.ts";
import type { Cover } from "../seams/types.ts";
import { hemPiece } from "./hem-piece.ts";
import { makeStep } from "./make-step.ts";
import { panelName } from "./name-parts.ts";
import { partLabel } from "./part-label.ts";
import type { Step } from "./types.ts";

/** Handles, loops and labels: made up and sewn on while the panel they sit on still lies flat. */
export function listAttaching(work: Work): Step[] {
  return work.covers.flatMap((cover) => {
    const attachments =
      work.project.solids.find(({ id }) => id === cover.solid)?.cover?.attach ?? [];
    const pieces = [...new Set(attachments.map(({ piece }) => piece))];
    return [
      ...pieces.map((piece) => hemPiece(piece, { group, work, allowance: cover.seamAllowance })),
      ...attachments.map((attachment) => sewOn(attachment, cover, work)),
    ];
  });
}

const group = "Attachments";

function sewOn({ id, piece, on, at }: Attachment, cover: Cover, work: Work): Step {
  const label = `finished ${partLabel(piece, work.project)}`;
  const solid = work.solids.find((one) => one.id === cover.solid);
  const face = solid?.faces.find((one) => one.id === on || one.names.includes(on));
  const panel = cover.panels.find((one) => one.faces.some((member) => member.face === face?.id));
  const name =
    panel === undefined ? `cloth of the ${cover.solid}` : panelName(cover, panel.id, work);
  const place = (value: number | "centre") =>
    value === "centre" ? "centred" : work.format.length(value);
  return makeStep({
    id: `attach-${cover.solid}-${id}`,
    group,
    title: `Sew the ${label} to ${name}`,
    actions: [
      `Measure on the ${face?.label ?? on} of ${name}: ${place(at[0])} across, ${place(at[1])} up from the lower edge.`,
      `Pin the ${label} there, right side up.`,
      "Sew each end down in a square with a cross, with the sewing machine.",
      "Backstitch at both ends.",
    ],
    uses: [label, name, "tape measure", "pins", "sewing machine", "thread"],
    check: "It should hold when you pull at it hard.",
    remedy: "Sew over the square once more.",
    figure: panel === undefined ? null : `panel/${pieceOf(cover, panel.id)}`,
  });
}

function pieceOf(cover: Cover, panel: string): string {
  return cover.pieces.find((one) => one.panel === panel)?.id ?? panel;
}
