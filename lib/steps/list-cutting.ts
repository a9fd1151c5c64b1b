import type { Work } from "../estimate/types.ts";
import type { Lay } from "../packing/types.ts";
import { cutPieces, type Owned, type OwnedGroup } from "./cut-pieces.ts";
import { makeStep } from "./make-step.ts";
import { coverName, pieceName } from "./name-parts.ts";
import type { Cover } from "../seams/types.ts";
import type { Step } from "./types.ts";

/** Spread each cloth, cut each piece from it, then mark the pieces of each cover. */
export function listCutting(work: Work): Step[] {
  return [
    ...work.lays.flatMap((lay) => [
      spreadCloth(lay, work),
      ...groupsOn(lay, work).map((group) => cutPieces(group, lay, work)),
    ]),
    ...work.covers
      .filter((cover) => cover.pieces.length > 0)
      .map((cover) => markPieces(cover, work)),
  ];
}

/** The pieces of a lay, those of one shape and one way up together. */
function groupsOn(lay: Lay, work: Work): OwnedGroup[] {
  const placed = new Set(lay.places.map(({ piece }) => piece));
  const all: Owned[] = [
    ...work.covers.flatMap((cover) => cover.pieces.map((piece) => ({ piece, cover }))),
    ...work.pieces.map((piece) => ({ piece, cover: null })),
  ];
  const groups = new Map<string, OwnedGroup>();
  for (const one of all) {
    if (one.piece.stock !== lay.stock || !placed.has(one.piece.id)) continue;
    const key = shapeKey(one);
    const group = groups.get(key);
    groups.set(key, group === undefined ? [one] : [...group, one]);
  }
  return [...groups.values()];
}

/** Panels that are the same share the key of the first of them. */
function shapeKey({ piece, cover }: Owned): string {
  if (cover === null || piece.panel === null) return piece.id;
  const panel = cover.panels.find(({ id }) => id === piece.panel);
  const first = piece.mirrorOf === null ? (panel?.sameAs ?? piece.panel) : piece.panel;
  return `${cover.solid}/${first}`;
}

function spreadCloth(lay: Lay, work: Work): Step {
  const fabric = work.project.stock.find((one) => one.id === lay.stock);
  const label = fabric?.label ?? lay.stock;
  const hasWay = fabric?.kind === "fabric" && fabric.direction !== "any";
  const wide = work.format.length(lay.width - 2 * lay.selvedge);
  return makeStep({
    id: `spread-${lay.stock}`,
    group: "Cutting",
    title: `Spread the ${label}`,
    actions: [
      `Press the creases out of the ${label} with the iron.`,
      `Lay the ${label} flat in one layer, right side up.`,
      ...(hasWay ? ["Turn the cloth until the print runs up the table, away from you."] : []),
      "Line up one selvedge with the edge of the table.",
      "Mark the length of the lay with tailor's chalk.",
    ],
    uses: [label, "iron", "tape measure", "tailor's chalk"],
    check: `The lay should be ${work.format.length(lay.length)} long and ${wide} wide between the selvedges.`,
    remedy: "Stop if the cloth is too short, and look at the findings at the front.",
    figure: `lay/${lay.stock}`,
  });
}

function markPieces(cover: Cover, work: Work): Step {
  const names = cover.pieces.map((piece) => pieceName(piece, cover, work));
  const hasClips = cover.pieces.some((piece) => piece.clips.length > 0);
  const hasNotches = cover.pieces.some((piece) => piece.notches.length > 0);
  const half = work.format.length(cover.seamAllowance / 2);
  return makeStep({
    id: `mark-${cover.solid}`,
    group: "Cutting",
    title: `Mark the pieces of the ${coverName(cover.solid)}`,
    actions: [
      "Draw the seam line on the wrong side of every piece with tailor's chalk.",
      "Write the seam letters along the edges inside the allowance.",
      ...(hasNotches ? [`Snip each notch with the cloth scissors, no deeper than ${half}.`] : []),
      ...(hasClips
        ? ["Mark each clip line with tailor's chalk.", "Leave the clips uncut for now."]
        : []),
    ],
    uses: [...names, "tailor's chalk", "straightedge", ...(hasNotches ? ["cloth scissors"] : [])],
    check:
      "Every seam letter should stand on two edges" +
      (hasNotches ? ", and every notch should have a twin with its number." : "."),
    remedy: "Compare the pieces with their figures, one edge after the other.",
  });
}
