import type { Count, Degrees, Mm, Point, Polygon } from "../plane/types.ts";
import type { FabricStock } from "../project/types.ts";
import type { LayPiece } from "../seams/types.ts";
import { roundUpForShop } from "../units/shop-length.ts";
import { fitPieces } from "./cloth-job.ts";
import { type LayOptions, layCloth } from "./lay-cloth.ts";
import { makeForm } from "./place-forms.ts";
import type { Lay, LayPlace } from "./types.ts";

/** Two pieces cut at once: two copies of one, or one and its mirror image. */
interface Pair {
  readonly first: LayPiece;
  readonly second: LayPiece;
  readonly count: Count;
}

/**
 * Lay the cloth double, folded along its length with the right sides together, selvedge to selvedge,
 * and cut two at a time. What is under the fold comes out as the mirror image, so pairs are pieces
 * and their mirror images, and copies of pieces that look the same turned over. Whatever is left is
 * laid single beyond the fold. Places are given as they lie once the cloth is opened out, so that the
 * lay is the same from both sides of its middle line.
 */
export function layFolded(
  pieces: readonly LayPiece[],
  cloth: FabricStock,
  options: LayOptions = {},
): Lay {
  const { copies = 1 } = options;
  const half = { ...cloth, width: cloth.width / 2 + cloth.selvedge };
  const { pairs, single } = pairUp(pieces, copies, half);
  if (pairs.length === 0) return layCloth(pieces, cloth, options);
  const onFold = pairs.map(({ first, count }): LayPiece => ({ ...first, copies: count }));
  // Only one edge of the half is a selvedge: the fold takes the place of the other.
  const folded = layCloth(onFold, half, { ...options, copies: 1 });
  const flat = layCloth(
    single,
    { ...cloth, have: Math.max(0, cloth.have - folded.length) },
    { ...options, copies: 1 },
  );
  const start = onStep(folded.length, flat.length === 0 ? 0 : (cloth.repeat?.along ?? 0));
  const next = new Map<string, Count>();
  const count = (piece: string): Count => {
    const copy = (next.get(piece) ?? 0) + 1;
    next.set(piece, copy);
    return copy;
  };
  const double = folded.places.flatMap((place): readonly LayPlace[] => {
    const { second } = pairs.find(({ first }) => first.id === place.piece)!;
    return [
      { ...place, copy: count(place.piece) },
      { ...mirrored(place, second.id, cloth.width), copy: count(second.id) },
    ];
  });
  const beyond = flat.places.map((place): LayPlace => ({
    ...place,
    copy: count(place.piece),
    y: place.y + start,
    outline: place.outline.map(([x, y]): Point => [x, y + start]),
  }));
  const length = flat.length === 0 ? folded.length : start + flat.length;
  const open = layCloth(pieces, cloth, options);
  const short = folded.short > 0 ? folded.short + flat.length : flat.short;
  return {
    ...open,
    length,
    short,
    buy: roundUpForShop(short, options.unit ?? "cm"),
    yield: open.length === 0 ? 0 : (open.yield * open.length) / length,
    separately:
      copies === 1 ? length : copies * layFolded(pieces, cloth, { ...options, copies: 1 }).length,
    places: [...double, ...beyond],
    folded: folded.length,
  };
}

function pairUp(
  pieces: readonly LayPiece[],
  copies: Count,
  half: FabricStock,
): { readonly pairs: readonly Pair[]; readonly single: readonly LayPiece[] } {
  const left = new Map(pieces.map((piece) => [piece.id, piece.copies * copies]));
  const narrow = new Set(fitPieces(pieces, half).fitting.map(({ id }) => id));
  const pairs: Pair[] = [];
  const take = (first: LayPiece, second: LayPiece, count: Count): void => {
    if (count < 1) return;
    pairs.push({ first, second, count });
    left.set(first.id, left.get(first.id)! - count);
    left.set(second.id, left.get(second.id)! - count);
  };
  for (const piece of pieces.filter(({ id }) => narrow.has(id))) {
    const twin = pieces.find(({ id }) => id === piece.mirrorOf);
    if (twin !== undefined && looksLike(piece, twin))
      take(twin, piece, Math.min(left.get(piece.id)!, left.get(twin.id)!));
    if (looksLike(piece, piece)) take(piece, piece, Math.floor(left.get(piece.id)! / 2));
  }
  const single = pieces
    .map((piece) => ({ ...piece, copies: left.get(piece.id)! }))
    .filter((piece) => piece.copies > 0);
  return { pairs, single };
}

/** Whether one piece turned over from side to side looks like another. */
function looksLike(one: LayPiece, other: LayPiece): boolean {
  const over = makeForm(one.outline, 0, true).polygon;
  const own = makeForm(other.outline, 0, false).polygon;
  return (
    over.length === own.length &&
    over.every(([x, y]) => own.some(([ox, oy]) => Math.hypot(x - ox, y - oy) < 0.01))
  );
}

/** The lower layer of the fold, as it lies once the cloth is opened out. */
function mirrored(place: LayPlace, piece: string, width: Mm): Omit<LayPlace, "copy"> {
  const outline: Polygon = place.outline.map(([x, y]): Point => [width - x, y]).toReversed();
  const x = Math.min(...outline.map(([at]) => at));
  const turn: Degrees = (360 - place.turn) % 360;
  return { ...place, piece, x, turn, outline };
}

const onStep = (at: Mm, step: Mm): Mm => (step > 0 ? Math.ceil(at / step - 1e-9) * step : at);
