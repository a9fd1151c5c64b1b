import type { Work } from "../estimate/types.ts";
import type { Lay } from "../packing/types.ts";
import { cutPieces } from "./cut-pieces.ts";
import { groupPieces } from "./group-pieces.ts";
import { joinParts } from "./join-parts.ts";
import { makeStep } from "./make-step.ts";
import { coverName, pieceName } from "./name-parts.ts";
import type { Cover, Piece } from "../seams/types.ts";
import type { Step } from "./types.ts";

/** Spread each cloth, cut each piece from it, then mark the pieces of each cover. */
export function listCutting(work: Work): Step[] {
  return [
    ...work.lays.flatMap((lay) => [
      spreadCloth(lay, work),
      ...groupPieces(lay, work).map((group) => cutPieces(group, lay, work)),
      ...(lay.splits ?? []).map((split) => joinParts(split, lay, work)),
    ]),
    ...work.covers
      .filter((cover) => cover.pieces.length > 0)
      .map((cover) => markPieces(cover, work)),
  ];
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
      ...spreadLines(lay, label, work),
      ...(hasWay ? ["Turn the cloth until the print runs up the table, away from you."] : []),
      "Line up its left selvedge with the edge of the table.",
      ...meetPrint(lay, work),
      "Mark the length of the lay with tailor's chalk.",
    ],
    uses: [label, "iron", "tape measure", "tailor's chalk"],
    check: `The lay should be ${work.format.length(lay.length)} long and ${wide} wide between the selvedges.`,
    remedy: "Stop if the cloth is too short, and look at the findings at the front.",
    figure: `spread/${lay.stock}`,
  });
}

/** The panel with the most kinds of marks, then with the most marks: it shows what marking is. */
function mostMarked({ pieces }: Cover): string {
  const panels = pieces.filter(({ panel }) => panel !== null);
  const rank = ({ clips, notches }: Piece) =>
    (clips.length > 0 ? 1000 : 0) + (notches.length > 0 ? 1000 : 0) + clips.length + notches.length;
  const [best] = panels.toSorted((one, other) => rank(other) - rank(one));
  return best?.id ?? pieces[0]?.id ?? "";
}

/** One layer, or folded first; and what else there is of the cloth. */
function spreadLines({ folded, length, sections = [] }: Lay, label: string, work: Work): string[] {
  const lines =
    folded === undefined
      ? [`Lay the ${label} flat in one layer, right side up.`]
      : [
          `Fold ${work.format.length(folded)} of the ${label} along its length, right sides together.`,
          "Lay one selvedge on the other and smooth the cloth to the fold.",
          ...(length > folded + 1 ? ["Lay the rest flat in one layer, right side up."] : []),
        ];
  const hasMore = sections.length > 1 || sections.some(({ kind }) => kind === "remnant");
  return hasMore
    ? [...lines, "Spread each other piece of it on its own, as the lay shows."]
    : lines;
}

/** Where the lay begins in the print, once something is centred or matched on it. */
function meetPrint({ stock, printExtra }: Lay, { project, format }: Work): string[] {
  const fabric = project.stock.find(({ id }) => id === stock);
  if (printExtra === undefined || fabric?.kind !== "fabric" || fabric.repeat === null) return [];
  const { along, across } = fabric.repeat;
  const half = (repeat: number) => format.length(repeat / 2);
  return [
    "Find the middle of a motif near the lower left corner.",
    `Mark the start of the lay ${half(across)} to the left of it and ${half(along)} below it.`,
  ];
}

function markPieces(cover: Cover, work: Work): Step {
  const names = cover.pieces
    .filter(({ panel }) => panel !== null)
    .map((piece) => pieceName(piece, cover, work));
  const hasClips = cover.pieces.some((piece) => piece.clips.length > 0);
  const hasNotches = cover.pieces.some((piece) => piece.notches.length > 0);
  const hasCrosses = cover.pieces.some((piece) => piece.marks.length > 0);
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
      ...(hasCrosses
        ? ["Push a pin through each cross.", "Mark the place of the pin on the right side too."]
        : []),
    ],
    uses: [
      ...names,
      "tailor's chalk",
      "straightedge",
      ...(hasNotches ? ["cloth scissors"] : []),
      ...(hasCrosses ? ["pins"] : []),
    ],
    check:
      "Every seam letter should stand on two edges" +
      (hasNotches ? ", and every notch should have a twin with its number." : "."),
    remedy: "Compare the pieces with their figures, one edge after the other.",
    figure: `mark/${mostMarked(cover)}`,
  });
}
