import type { Work } from "../estimate/types.ts";
import type { Lay, LayPlace } from "../packing/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { shortEnough } from "./count-words.ts";
import { makeStep } from "./make-step.ts";
import { coverName, panelName, panelWithLabel, pieceName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** Spread each cloth, cut each piece from it, then mark the pieces of each cover. */
export function listCutting(work: Work): Step[] {
  return [
    ...work.lays.flatMap((lay) => [
      spreadCloth(lay, work),
      ...piecesOn(lay, work).map((one) => cutPiece(one, lay, work)),
    ]),
    ...work.covers.map((cover) => markPieces(cover, work)),
  ];
}

interface Owned {
  readonly piece: Piece;
  readonly cover: Cover | null;
}

function piecesOn(lay: Lay, work: Work): Owned[] {
  const placed = new Set(lay.places.map(({ piece }) => piece));
  const all: Owned[] = [
    ...work.covers.flatMap((cover) => cover.pieces.map((piece) => ({ piece, cover }))),
    ...work.pieces.map((piece) => ({ piece, cover: null })),
  ];
  return all.filter(({ piece }) => piece.stock === lay.stock && placed.has(piece.id));
}

function labelOf(stock: string, { project }: Work): string {
  return project.stock.find((one) => one.id === stock)?.label ?? stock;
}

function spreadCloth(lay: Lay, work: Work): Step {
  const label = labelOf(lay.stock, work);
  const fabric = work.project.stock.find((one) => one.id === lay.stock);
  const hasWay = fabric?.kind === "fabric" && fabric.direction !== "any";
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
    check: `The lay should be ${work.format.length(lay.length)} long and ${work.format.length(lay.width - 2 * lay.selvedge)} wide between the selvedges.`,
    remedy: "Stop if the cloth is too short, and look at the findings at the front.",
    figure: `lay/${lay.stock}`,
  });
}

function cutPiece({ piece, cover }: Owned, lay: Lay, work: Work): Step {
  const name = pieceName(piece, cover, work);
  const places = lay.places.filter((one) => one.piece === piece.id);
  const twin =
    cover === null || piece.mirrorOf === null
      ? null
      : panelName(cover, twinPanel(cover, piece.mirrorOf), work);
  const withLabel =
    cover === null || piece.panel === null ? name : panelWithLabel(cover, piece.panel, work);
  const size = piece.cutSize.map(work.format.length).join(" × ");
  const count = places.length > 1 ? `, ${places.length} times` : "";
  return makeStep({
    id:
      piece.panel === null || cover === null
        ? `cut-${piece.id}`
        : `cut-${cover.solid}-${piece.panel}`,
    group: "Cutting",
    title: `Cut ${withLabel}${count}`,
    actions: [
      ...(twin === null
        ? []
        : [`Compare the figure of ${name} with ${twin}: the two are mirror images.`]),
      ...placeLines(places, name, work),
      `Draw the cut line of ${name} with tailor's chalk, by the walk round the figure.`,
      shortEnough(
        `Write the name of ${withLabel} beside an arrow to its top.`,
        `Write the name of ${name} beside an arrow to its top.`,
      ),
      "Cut along the chalk line with the cloth scissors.",
    ],
    uses: [
      labelOf(lay.stock, work),
      "tape measure",
      "straightedge",
      "tailor's chalk",
      "cloth scissors",
      ...(twin === null ? [] : [twin]),
    ],
    makes: [name],
    processes: twin === null ? [] : ["mirrored"],
    check: `As cut, ${name} should measure ${size}${twin === null ? "" : `, and lie on ${twin} right side to right side`}.`,
    remedy:
      "Trim a piece that is too large. Cut one that is too small again where the lay leaves room.",
    figure: `panel/${piece.id}`,
  });
}

/** The panel of the piece or panel that a mirrored piece names. */
function twinPanel(cover: Cover, mirrorOf: string): string {
  return cover.pieces.find(({ id }) => id === mirrorOf)?.panel ?? mirrorOf;
}

const turns: Readonly<Record<number, string>> = {
  90: "a quarter turn to the left",
  180: "a half turn",
  270: "a quarter turn to the right",
};

function placeLines(
  places: readonly LayPlace[],
  name: string,
  { format: { length } }: Work,
): string[] {
  const [first, ...others] = places;
  if (first === undefined) return [];
  const turn = turns[((Math.round(first.turn) % 360) + 360) % 360];
  return [
    `Measure ${length(first.x)} across from the left edge and ${length(first.y)} along for ${name}.`,
    "Mark that corner with tailor's chalk.",
    ...(turn === undefined ? [] : [`Turn the outline ${turn}, as in the lay.`]),
    ...(others.length === 0
      ? []
      : ["Mark the corners of the other copies from the table of the lay."]),
  ];
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
      "Every seam letter should stand on two edges, and every notch should have a twin with its number.",
    remedy: "Compare the pieces with their figures, one edge after the other.",
    figure: null,
  });
}
