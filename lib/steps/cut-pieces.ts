import type { Work } from "../estimate/types.ts";
import type { Lay, LayPlace } from "../packing/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { shortEnough } from "./count-words.ts";
import { makeStep } from "./make-step.ts";
import { panelName, panelWithLabel, pieceName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** A piece of cloth and the cover it belongs to, null for a loose piece. */
export interface Owned {
  readonly piece: Piece;
  readonly cover: Cover | null;
}

/** Pieces of one shape and one way up, at least one. */
export type OwnedGroup = readonly [Owned, ...Owned[]];

/** Cut pieces of one shape from the lay: find the corner, chalk, name, cut. */
export function cutPieces(group: OwnedGroup, lay: Lay, work: Work): Step {
  const [first] = group;
  const { piece, cover } = first;
  const names = group.map((one) => pieceName(one.piece, one.cover, work));
  const labels = group.map((one) => labelled(one, work));
  const fabric = work.project.stock.find((one) => one.id === lay.stock)?.label ?? lay.stock;
  const twin =
    cover === null || piece.mirrorOf === null
      ? null
      : panelName(cover, panelOf(cover, piece.mirrorOf), work);
  const copies = lay.places.filter((one) => one.piece === piece.id).length;
  return makeStep({
    id:
      piece.panel === null || cover === null
        ? `cut-${piece.id}`
        : `cut-${cover.solid}-${piece.panel}`,
    group: "Cutting",
    title: `Cut ${labels.join(" and ")}${copies > 1 ? `, ${copies} times` : ""}`,
    actions: [
      ...(twin === null
        ? []
        : [`Compare the figure of ${names[0] ?? ""} with ${twin}: the two are mirror images.`]),
      ...group.flatMap((one) => chalkLines(one, lay, work)),
      ...(copies > 1 ? ["Draw the other copies at the places in the table of the lay."] : []),
      "Cut along the chalk lines with the cloth scissors.",
    ],
    uses: [
      fabric,
      "tape measure",
      "straightedge",
      "tailor's chalk",
      "cloth scissors",
      ...(twin === null ? [] : [twin]),
    ],
    makes: names,
    processes: twin === null ? [] : ["mirrored"],
    check: checkOf(piece, twin, { pronoun: group.length > 1 ? "each" : "it", work }),
    remedy:
      "Trim a piece that is too large. Cut one that is too small again where the lay leaves room.",
    figure: `panel/${piece.id}`,
  });
}

function labelled({ piece, cover }: Owned, work: Work): string {
  return cover === null || piece.panel === null
    ? `the ${piece.label}`
    : panelWithLabel(cover, piece.panel, work);
}

/** The panel of the piece or panel that a mirrored piece names. */
function panelOf(cover: Cover, mirrorOf: string): string {
  return cover.pieces.find(({ id }) => id === mirrorOf)?.panel ?? mirrorOf;
}

const turns: Readonly<Record<number, string>> = {
  90: "a quarter turn to the left",
  180: "a half turn",
  270: "a quarter turn to the right",
};

function chalkLines(one: Owned, lay: Lay, work: Work): string[] {
  const { length } = work.format;
  const name =
    one.cover === null ? `the ${one.piece.label}` : pieceName(one.piece, one.cover, work);
  const place = lay.places.find(({ piece }) => piece === one.piece.id);
  if (place === undefined) return [];
  const turn = turnOf(place);
  const corner = isRectangle(one.piece)
    ? "the lower left corner of"
    : "the lower left corner of the box round";
  return [
    `Measure ${length(place.x)} across from the left edge of the cloth.`,
    `Measure ${length(place.y)} along from its lower end.`,
    `Mark ${corner} ${name} there with tailor's chalk.`,
    ...(turn === null ? [] : [`Turn the outline ${turn}, as in the lay.`]),
    `Draw the cut line of ${name} by the walk round its figure.`,
    shortEnough(
      `Write the name of ${labelled(one, work)} beside an arrow to its top.`,
      `Write the name of ${name} beside an arrow to its top.`,
    ),
  ];
}

function turnOf({ turn }: LayPlace): string | null {
  return turns[((Math.round(turn) % 360) + 360) % 360] ?? null;
}

function checkOf(
  piece: Piece,
  twin: string | null,
  { pronoun, work }: { readonly pronoun: string; readonly work: Work },
): string {
  const { length } = work.format;
  const [width, height] = piece.cutSize;
  const diagonal = isRectangle(piece)
    ? `, ${length(Math.hypot(width, height))} from corner to corner`
    : "";
  const mirrored =
    twin === null ? "" : ` Right sides together, it should lie on ${twin} edge to edge.`;
  return `As cut, ${pronoun} should measure ${work.format.sizes([width, height])}${diagonal}.${mirrored}`;
}

/** Four straight edges along the axes, so that the diagonals say whether it is square. */
function isRectangle({ outline: { outer, holes } }: Piece): boolean {
  const isAlong = ([x1, y1]: readonly number[], [x2, y2]: readonly number[]) =>
    Math.min(Math.abs((x1 ?? 0) - (x2 ?? 0)), Math.abs((y1 ?? 0) - (y2 ?? 0))) < 0.01;
  return (
    holes.length === 0 &&
    outer.length === 4 &&
    outer.every((segment) => segment.kind === "line" && isAlong(segment.from, segment.to))
  );
}
