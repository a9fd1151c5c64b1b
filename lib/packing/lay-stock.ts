import { pointBounds } from "../plane/loop-bounds.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import type { Count, Mm, Point, Polygon } from "../plane/types.ts";
import type { FabricStock } from "../project/types.ts";
import type { LayPiece } from "../seams/types.ts";
import { fitPieces, usableWidth } from "./cloth-job.ts";
import type { Remnant } from "./fill-ground.ts";
import { fillRemnant } from "./fill-remnant.ts";
import { rectangleAt } from "../plane/rectangle.ts";
import { type LayOptions, layCloth } from "./lay-cloth.ts";
import { layFolded } from "./lay-folded.ts";
import { numberCopies } from "./number-copies.ts";
import { splitPiece } from "./split-piece.ts";
import type { Lay, LayPlace, LaySection } from "./types.ts";

/**
 * Lay all pieces on everything there is of one cloth: remnants and spoiled lengths first, then whole
 * lengths on hand, then what must be bought. A piece wider than the cloth is laid in parts.
 */
export function layStock(
  pieces: readonly LayPiece[],
  cloth: FabricStock,
  options: LayOptions = {},
): Lay {
  const { copies = 1 } = options;
  const { fitting, tooWide } = fitPieces(pieces, cloth);
  const split = tooWide.map((piece) => ({ piece, made: splitPiece(piece, cloth) }));
  const made = split.flatMap((each) => (each.made === null ? [] : [each.made]));
  const all = [...fitting, ...made.flatMap(({ parts }) => parts)];
  const laid = layRemnants(all, cloth, copies);
  const lengths = (cloth.also ?? [])
    .filter(({ isFullWidth, flaws }) => isFullWidth && flaws.length === 0)
    .map(({ outline }) => pointBounds(outline).max[1]);
  const isSpoiled = (cloth.flaws ?? []).length > 0;
  const rest = isSpoiled ? { ...cloth, have: 0 } : cloth;
  const lay = cloth.isFolded === true ? layFolded : layCloth;
  const flat =
    laid.places.length === 0
      ? lay(all, rest, { ...options, lengths })
      : lay(laid.rest, rest, { ...options, copies: 1, lengths, isSectioned: true });
  const unplaced = split.filter((each) => each.made === null).map(({ piece }) => piece.id);
  const joined = laid.places.length === 0 ? flat : join(flat, laid, { all, cloth, options, lay });
  return {
    ...joined,
    places: numberCopies(joined.places),
    have: joined.have + (isSpoiled ? cloth.have : 0),
    copies,
    unplaced,
    ...(made.length > 0 ? { splits: made.map((each) => each.split) } : {}),
  };
}

interface LaidRemnants {
  /** On the remnants, each from its own origin, with the remnant's number. */
  readonly places: readonly (LayPlace & { readonly remnant: Count })[];
  readonly remnants: readonly (Remnant & { readonly label: string | null })[];
  /** What is still to be laid, its copies counted for all sets. */
  readonly rest: readonly LayPiece[];
}

/** Fill remnants and spoiled lengths one after another, the smallest first. */
function layRemnants(pieces: readonly LayPiece[], cloth: FabricStock, copies: Count): LaidRemnants {
  const remnants = listRemnants(cloth);
  const counts = pieces.map((piece) => piece.copies * copies);
  const done = pieces.map(() => 0);
  const places = remnants.flatMap((remnant, number) => {
    const left = pieces.map((piece, i) => ({ ...piece, copies: counts[i]! - done[i]! }));
    return fillRemnant(remnant, left, cloth).map(({ piece, form, x, y }) => {
      done[piece]! += 1;
      return {
        piece: pieces[piece]!.id,
        copy: done[piece]!,
        x,
        y,
        turn: form.turn,
        flipped: form.isFlipped,
        outline: moved(form.polygon, x, y),
        remnant: number,
      };
    });
  });
  const rest = pieces
    .map((piece, i) => ({ ...piece, copies: counts[i]! - done[i]! }))
    .filter((piece) => piece.copies > 0);
  return { places, remnants, rest };
}

function listRemnants(cloth: FabricStock): LaidRemnants["remnants"] {
  const box = ({ at: [x, y], size: [w, l] }: NonNullable<FabricStock["flaws"]>[number]): Polygon =>
    rectangleAt(x, y, w, l);
  const between = (length: Mm): Polygon =>
    rectangleAt(cloth.selvedge, 0, usableWidth(cloth), length);
  const spoiled =
    (cloth.flaws ?? []).length > 0 && cloth.have > 0
      ? [{ label: null, outline: between(cloth.have), flaws: cloth.flaws!.map(box) }]
      : [];
  const others = (cloth.also ?? [])
    .filter(({ isFullWidth, flaws }) => !isFullWidth || flaws.length > 0)
    .map(({ label, outline, isFullWidth, flaws }) => ({
      label,
      outline: isFullWidth ? between(pointBounds(outline).max[1]) : outline,
      flaws: flaws.map(box),
    }));
  const areaOf = ({ outline }: Remnant): number => Math.abs(polygonArea(outline));
  return [...others, ...spoiled].toSorted((a, b) => areaOf(a) - areaOf(b));
}

/** Room between the lay and the remnants drawn beyond it. @source our choice */
const gap: Mm = 80;

/** The lay on whole cloth with the remnants beyond its end. */
function join(
  flat: Lay,
  { places, remnants }: LaidRemnants,
  {
    all,
    cloth,
    options,
    lay,
  }: {
    readonly all: readonly LayPiece[];
    readonly cloth: FabricStock;
    readonly options: LayOptions;
    readonly lay: typeof layCloth;
  },
): Lay {
  const { copies = 1 } = options;
  const used = remnants.map((_, number) => places.filter(({ remnant }) => remnant === number));
  const done = (piece: string): Count => places.filter((each) => each.piece === piece).length;
  const sections: LaySection[] = [...(flat.sections ?? [])];
  const beyond: LayPlace[] = [];
  let start = flat.length === 0 ? 0 : flat.length + gap;
  used.forEach((own, number) => {
    const { label, outline, flaws } = remnants[number]!;
    if (own.length === 0) return;
    const length = pointBounds(outline).max[1];
    sections.push({
      kind: "remnant",
      label,
      start,
      length,
      outline: moved(outline, 0, start),
      flaws: flaws.map((flaw) => moved(flaw, 0, start)),
    });
    for (const { remnant: _, ...place } of own) {
      beyond.push({ ...place, y: place.y + start, outline: moved(place.outline, 0, start) });
    }
    start += length + gap;
  });
  const areaOf = (outline: Polygon): number => Math.abs(polygonArea(outline));
  const whole = all.reduce((sum, { outline, copies: each }) => sum + areaOf(outline) * each, 0);
  const spare = remnants.reduce((sum, { outline }) => sum + areaOf(outline), 0);
  return {
    ...flat,
    // Which pieces go on remnants is open, so only the area left over bounds the length.
    lowerBound: Math.max(0, (whole * copies - spare) / usableWidth(cloth)),
    separately:
      copies === 1 ? flat.length : copies * lay(all, cloth, { ...options, copies: 1 }).length,
    places: [
      ...flat.places.map((place) => ({ ...place, copy: place.copy + done(place.piece) })),
      ...beyond,
    ],
    sections,
  };
}

const moved = (polygon: Polygon, x: Mm, y: Mm): Polygon =>
  polygon.map(([px, py]): Point => [px + x, py + y]);
