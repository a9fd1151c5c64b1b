import type { Work } from "../estimate/types.ts";
import { sectionAt } from "../packing/section-at.ts";
import type { Lay, LayPlace, LaySection } from "../packing/types.ts";
import { isRectangle, panelOf, type Owned, type OwnedGroup } from "./group-pieces.ts";
import { listWords } from "../units/list-words.ts";
import { makeStep } from "./make-step.ts";
import { panelName, panelWithLabel, pieceName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/**
 * Cut some pieces from the lay: find their corners, draw, name, cut. The figure of each stands on its
 * own page.
 */
export function cutPieces(group: OwnedGroup, lay: Lay, work: Work): Step {
  const names = group.map((one) => pieceName(one.piece, one.cover, work));
  const ids = group.map(stepId);
  const pairs = group.flatMap((one) => mirrorPair(one, work));
  const copies = lay.places.filter((one) => one.piece === group[0].piece.id).length;
  const fabric = work.project.stock.find((one) => one.id === lay.stock)?.label ?? lay.stock;
  const isOne = group.length === 1;
  return makeStep({
    id: ids[0] ?? "cut",
    alsoNamed: ids.slice(1),
    group: "Cutting",
    title: `Cut ${listWords(group.map((one) => labelled(one, work)))}${copies > 1 ? `, ${copies} times` : ""}`,
    actions: [
      ...pairs.map(
        ([one, other]) => `Compare the figure of ${one} with ${other}: the two are mirror images.`,
      ),
      "Measure across from the left edge of the cloth, up from its lower end.",
      ...group.flatMap((one) => placeLines(one, lay, work)),
      ...(copies > 1 ? ["Mark the other copies at the places in the table of the lay."] : []),
      isOne
        ? "Draw the cut line by the walk round its figure."
        : "Draw each cut line by the walk round its figure.",
      isOne
        ? "Write the name beside an arrow to the top."
        : "Write the name of each beside an arrow to its top.",
      "Cut along the chalk lines with the cloth scissors.",
    ],
    uses: [fabric, "tape measure", "straightedge", "tailor's chalk", "cloth scissors"],
    makes: names,
    processes: pairs.length === 0 ? [] : ["mirrored"],
    check: checkOf(group, work) + pairs.map(mirrorCheck).join(""),
    remedy:
      "Trim a piece that is too large. Cut one that is too small again where the lay leaves room.",
    figure: `cut-out/${lay.stock}/${group.map(({ piece }) => piece.id).join("+")}`,
  });
}

function stepId({ piece, cover }: Owned): string {
  return piece.panel === null || cover === null
    ? `cut-${piece.id}`
    : `cut-${cover.solid}-${piece.panel}`;
}

function labelled({ piece, cover }: Owned, work: Work): string {
  return cover === null || piece.panel === null
    ? `the ${piece.label}`
    : panelWithLabel(cover, piece.panel, work);
}

/** The piece and its twin, where it is a mirror image. */
function mirrorPair({ piece, cover }: Owned, work: Work): [string, string][] {
  const twin = cover === null ? null : panelOf(cover, piece.mirrorOf);
  if (cover === null || twin === null) return [];
  return [[pieceName(piece, cover, work), panelName(cover, twin, work)]];
}

const mirrorCheck = ([one, other]: readonly [string, string]) =>
  ` Right sides together, ${one} should lie on ${other} edge to edge.`;

const turns: Readonly<Record<number, string>> = {
  90: "a quarter turn to the left",
  180: "a half turn",
  270: "a quarter turn to the right",
};

/** Where the piece lies: from the left edge of the cloth and from its lower end, as the lay shows it. */
function placeLines(one: Owned, lay: Lay, work: Work): string[] {
  const { length } = work.format;
  const place = lay.places.find(({ piece }) => piece === one.piece.id);
  if (place === undefined) return [];
  const name =
    one.cover === null || one.piece.panel === null
      ? `the ${one.piece.label}`
      : pieceName(one.piece, one.cover, work);
  const turn = turnOf(place);
  const box = isRectangle(one.piece) ? "" : "the box round ";
  const { section, up } = sectionAt(lay, place);
  const on = section === null || section.start === 0 ? "" : onWords(section);
  return [
    `Mark the lower left corner of ${box}${name}${on}: ${length(place.x)} across, ${length(up)} up.`,
    ...(turn === null ? [] : [`Turn the outline of ${name} ${turn}, as in the lay.`]),
  ];
}

/** Which of several pieces of cloth, where it is not the first. */
function onWords({ kind, label }: LaySection): string {
  if (label !== null) return ` on the ${label}`;
  return kind === "remnant"
    ? " on the remnant"
    : kind === "bought"
      ? " on the new cloth"
      : " on the next length";
}

function turnOf({ turn }: LayPlace): string | null {
  return turns[((Math.round(turn) % 360) + 360) % 360] ?? null;
}

function checkOf(group: OwnedGroup, work: Work): string {
  const sizes = group.map(({ piece }) => sizeWords(piece, work));
  const isSame = sizes.every((one) => one === sizes[0]);
  if (isSame) return `As cut, ${group.length > 1 ? "each" : "it"} should measure ${sizes[0]}.`;
  const each = group.map(
    ({ piece, cover }, index) => `${pieceName(piece, cover, work)} ${sizes[index]}`,
  );
  return `As cut, they should measure: ${each.join("; ")}.`;
}

/** Width and height, and the diagonal where it says whether the piece is square. */
function sizeWords(piece: Owned["piece"], { format }: Work): string {
  const [width, height] = piece.cutSize;
  const diagonal = isRectangle(piece)
    ? `, ${format.length(Math.hypot(width, height))} from corner to corner`
    : "";
  return `${format.sizes([width, height])}${diagonal}`;
}
