import type { Work } from "../estimate/types.ts";
import type { Lay } from "../packing/types.ts";
import type { Cover, Piece } from "../seams/types.ts";

/** A piece of cloth and the cover it belongs to, null for a loose piece. */
export interface Owned {
  readonly piece: Piece;
  readonly cover: Cover | null;
}

/** Pieces cut in one step, at least one. */
export type OwnedGroup = readonly [Owned, ...Owned[]];

/** The most plain pieces one step may hold. Our choice. */
const mostPlain = 4;

/**
 * The pieces of a lay in the order they lie on it, bottom to top. Pieces cut alike and mirrored pairs
 * stay together; plain pieces that follow one another share a step.
 */
export function groupPieces(lay: Lay, work: Work): OwnedGroup[] {
  const alike = new Map<string, OwnedGroup>();
  for (const one of ownedOn(lay, work)) {
    const key = shapeKey(one);
    const group = alike.get(key);
    alike.set(key, group === undefined ? [one] : [...group, one]);
  }
  const groups: OwnedGroup[] = [];
  for (const group of alike.values()) {
    const last = groups.at(-1);
    const isPlain =
      last !== undefined &&
      last.length + group.length <= mostPlain &&
      [...last, ...group].every((one) => isPlainPanel(one) && one.cover === group[0].cover);
    if (isPlain) groups[groups.length - 1] = [...last, ...group];
    else groups.push(group);
  }
  return groups;
}

function ownedOn(lay: Lay, work: Work): Owned[] {
  const order = new Map<string, number>();
  const upwards = lay.places.toSorted((one, other) => one.y - other.y || one.x - other.x);
  upwards.forEach(({ piece }, index) => {
    if (!order.has(piece)) order.set(piece, index);
  });
  const all: Owned[] = [
    ...work.covers.flatMap((cover) => cover.pieces.map((piece) => ({ piece, cover }))),
    ...work.pieces.map((piece) => ({ piece, cover: null })),
  ];
  return all
    .filter(({ piece }) => piece.stock === lay.stock && order.has(piece.id))
    .toSorted((one, other) => (order.get(one.piece.id) ?? 0) - (order.get(other.piece.id) ?? 0));
}

/** Panels that are the same, and a panel and its mirror image, share one key. */
function shapeKey({ piece, cover }: Owned): string {
  if (cover === null || piece.panel === null) return piece.id;
  const panel = cover.panels.find(({ id }) => id === piece.panel);
  const twin = panelOf(cover, piece.mirrorOf);
  const first = twin ?? panel?.sameAs ?? piece.panel;
  return `${cover.solid}/${cover.panels.find(({ id }) => id === first)?.sameAs ?? first}`;
}

/** The panel of the piece or panel that a mirrored piece names. */
export function panelOf(cover: Cover, mirrorOf: string | null): string | null {
  return mirrorOf === null
    ? null
    : (cover.pieces.find(({ id }) => id === mirrorOf)?.panel ?? mirrorOf);
}

function isPlainPanel({ piece, cover }: Owned): boolean {
  const isTwin = cover?.pieces.some(({ mirrorOf }) => mirrorOf === piece.id) ?? false;
  return piece.panel !== null && piece.mirrorOf === null && !isTwin && piece.cut === 1;
}

/** Four straight edges along the axes, so that the diagonals say whether it is square. */
export function isRectangle({ outline: { outer, holes } }: Piece): boolean {
  const isAlong = ([x1, y1]: readonly number[], [x2, y2]: readonly number[]) =>
    Math.min(Math.abs((x1 ?? 0) - (x2 ?? 0)), Math.abs((y1 ?? 0) - (y2 ?? 0))) < 0.01;
  return (
    holes.length === 0 &&
    outer.length === 4 &&
    outer.every((segment) => segment.kind === "line" && isAlong(segment.from, segment.to))
  );
}
