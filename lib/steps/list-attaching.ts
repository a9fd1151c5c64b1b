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
      ...attachments
        .filter(({ id }) => afterPass(id, cover) === 0)
        .map((attachment) => sewOn(attachment, cover, { group, work })),
    ];
  });
}

const group = "Attachments";

/** Steps for what is sewn on across a seam, once that pass is done. */
export function attachAfter(
  passes: readonly number[],
  cover: Cover,
  inGroup: { readonly group: string; readonly work: Work },
): Step[] {
  const spec = inGroup.work.project.solids.find(({ id }) => id === cover.solid)?.cover;
  return (spec?.attach ?? [])
    .filter(({ id }) => passes.includes(afterPass(id, cover)))
    .map((attachment) => sewOn(attachment, cover, inGroup));
}

const afterPass = (id: string, { attached }: Cover): number =>
  attached.find((one) => one.id === id)?.after ?? 0;

function sewOn(
  { id, piece, on, at }: Attachment,
  cover: Cover,
  { group: inGroup, work }: { readonly group: string; readonly work: Work },
): Step {
  const label = `finished ${partLabel(piece, work.project)}`;
  const solid = work.solids.find((one) => one.id === cover.solid);
  const face = solid?.faces.find((one) => one.id === on || one.names.includes(on));
  const panel = cover.panels.find((one) => one.faces.some((member) => member.face === face?.id));
  const name =
    panel === undefined ? `cloth of the ${cover.solid}` : panelName(cover, panel.id, work);
  const [across, up] = at.map((value) =>
    value === "centre" ? "half way" : work.format.length(value),
  );
  // Is the face the whole panel, so that the panel's name says where?
  const where =
    panel === undefined || panel.faces.length === 1 ? name : `the ${face?.label ?? on} of ${name}`;
  return makeStep({
    id: `attach-${cover.solid}-${id}`,
    group: inGroup,
    title: `Sew the ${label} to ${name}`,
    actions: [
      `Measure on ${where} from the seam lines at its left and lower edges.`,
      `Mark a point ${across} across, ${up} up, with tailor's chalk.`,
      ...markEnds(piece, id, cover, work),
      `Pin the middle of the ${label} on the mark, right side up.`,
      "Sew each end down in a square with a cross, with the sewing machine.",
      "Backstitch at both ends.",
    ],
    uses: [label, name, "tape measure", "tailor's chalk", "pins", "sewing machine", "thread"],
    check: "It should hold when you pull at it hard.",
    remedy: `Sew over the square once more.${afterPass(id, cover) > 0 ? "" : before(panel?.id ?? null, cover)}`,
    figure: `attach/${cover.solid}/${id}`,
  });
}

/** Both ends from the middle, where they have marks; over the seam where they lie on two panels. */
function markEnds(piece: string, id: string, cover: Cover, { project, format }: Work): string[] {
  const size = project.pieces.find((one) => one.id === piece)?.size;
  const isMarked = cover.pieces.some(({ marks }) =>
    marks.some(({ kind, label }) => kind === "end" && label === `end of the ${openName(id)}`),
  );
  if (size === undefined || !isMarked) return [];
  const ways = size[0] > size[1] ? "to its left and right" : "above and below it";
  const over = (cover.attached.find((one) => one.id === id)?.panels.length ?? 1) > 1;
  return [
    `Mark both ends ${format.length(Math.max(...size) / 2)} ${ways}${over ? ", on over the seam" : ""}.`,
  ];
}

const openName = (id: string): string => id.replaceAll("-", " ");

/** Which seam comes too soon: after it the panel no longer lies flat by itself. */
function before(panel: string | null, { passes }: Cover): string {
  const first = passes.find(({ panels }) => panel !== null && panels.includes(panel));
  return first === undefined
    ? ""
    : ` Do so before seam ${first.seams[0]}: after it the panel no longer lies flat by itself.`;
}
