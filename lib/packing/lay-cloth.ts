import type { Count, Mm, Point } from "../plane/types.ts";
import type { FabricStock, Unit } from "../project/types.ts";
import type { LayPiece } from "../seams/types.ts";
import { rectangleAt } from "../plane/rectangle.ts";
import { roundUpForShop } from "../units/shop-length.ts";
import { fitPieces, makeClothJob, usableWidth } from "./cloth-job.ts";
import { layBound } from "./lay-bound.ts";
import { packSets } from "./pack-sets.ts";
import { type Effort, packStrip } from "./pack-strip.ts";
import type { Strip, StripJob } from "./strip-types.ts";
import type { Lay, LayPlace, LaySection } from "./types.ts";

export interface LayOptions {
  /** Sets of all the pieces. */
  readonly copies?: Count;
  readonly effort?: Effort;
  /** Says how shops sell: by eighths of a yard for inches, by tenths of a metre otherwise. */
  readonly unit?: Unit;
  /** Other lengths of the full width on hand. */
  readonly lengths?: readonly Mm[];
  /** True to list the pieces of cloth even where there is only one. */
  readonly isSectioned?: boolean;
}

/**
 * Lay all pieces of one cloth on the shortest length found.
 *
 * Upright pieces start at a multiple of the print's repeat, along and across, so that each is cut
 * from the same place of the print; the length to buy then carries one repeat more, to choose the
 * start. Cloth on hand that is too short is used first: no piece lies across its end.
 * Pieces too wide for the cloth are named in `unplaced`; no pieces give a lay of length 0.
 *
 * @source check value R1: cut = ⌈L / V⌉ · V, and one V for each order
 */
export function layCloth(
  pieces: readonly LayPiece[],
  cloth: FabricStock,
  { copies = 1, effort = "quick", unit = "cm", lengths = [], isSectioned = false }: LayOptions = {},
): Lay {
  const { fitting, tooWide } = fitPieces(pieces, cloth);
  const single = packStrip(makeClothJob(fitting, cloth, 1), effort);
  const start = cloth.repeat?.along ?? 0;
  // On every length one repeat goes to choosing the start of the print.
  const onHand = [cloth.have, ...lengths].map((each) => each - start).filter((each) => each > 0);
  const whole = laySets(fitting, cloth, copies, [], single, effort);
  const enough = onHand
    .filter((each) => whole.strip.length <= each + 1e-6)
    .sort((a, b) => a - b)[0];
  const { job, strip, kept } =
    enough === undefined
      ? packOnHand(onHand, whole, (walls) => laySets(fitting, cloth, copies, walls, single, effort))
      : { ...whole, kept: [enough] };
  const given = kept.reduce((sum, each) => sum + each, 0);
  const isEnough = enough !== undefined || strip.length <= given + 1e-6;
  const short = isEnough || strip.length === 0 ? 0 : strip.length - given + start;
  const area = job.items.reduce((sum, item) => sum + item.area, 0);
  return {
    stock: cloth.id,
    width: cloth.width,
    selvedge: cloth.selvedge,
    length: strip.length,
    buy: roundUpForShop(short, unit),
    have: cloth.have + lengths.reduce((sum, each) => sum + each, 0),
    short,
    yield: strip.length === 0 ? 0 : area / (usableWidth(cloth) * strip.length),
    lowerBound: Math.min(strip.length, layBound(job)),
    copies,
    separately: copies === 1 ? strip.length : lengthApart(single.length, copies, cloth),
    places: listPlaces(fitting, copies, cloth, job, strip),
    unplaced: tooWide.map((piece) => piece.id),
    ...((onHand.length > 1 || isSectioned) && strip.length > 0
      ? { sections: listLengths(cloth, kept, strip.length) }
      : {}),
  };
}

/** Length of sets cut one after another: each starts at the next repeat of the print. */
function lengthApart(length: Mm, copies: Count, { repeat }: FabricStock): Mm {
  const step = repeat?.along ?? 0;
  const each = step > 0 ? Math.ceil(length / step - 1e-9) * step : length;
  return copies === 0 ? 0 : (copies - 1) * each + length;
}

/** The lengths on hand that are used, end to end, then what is bought. */
function listLengths(
  { width }: FabricStock,
  onHand: readonly Mm[],
  length: Mm,
): readonly LaySection[] {
  const sections: LaySection[] = [];
  let start: Mm = 0;
  const add = (kind: LaySection["kind"], own: Mm): void => {
    const outline = rectangleAt(0, start, width, own);
    sections.push({ kind, label: null, start, length: own, outline, flaws: [] });
    start += own;
  };
  for (const each of onHand) if (start < length - 1e-6) add("length", each);
  if (start < length - 1e-6) add("bought", length - start);
  return sections;
}

interface PackedSets {
  readonly job: StripJob;
  readonly strip: Strip;
}

/**
 * Lay on the lengths on hand end to end, none of which is long enough alone: no piece lies across an
 * end. Lengths that then hold nothing are left alone.
 */
function packOnHand(
  onHand: readonly Mm[],
  whole: PackedSets,
  pack: (walls: readonly Mm[]) => PackedSets,
): PackedSets & { readonly kept: readonly Mm[] } {
  if (onHand.length === 0) return { ...whole, kept: [] };
  const ends = endsOf(onHand);
  const packed = pack(ends);
  const kept = onHand.filter((each, i) =>
    packed.strip.places.some(({ y }) => y < ends[i]! - 1e-6 && y >= ends[i]! - each - 1e-6),
  );
  if (kept.length === onHand.length) return { ...packed, kept };
  return kept.length === 0 ? { ...whole, kept } : { ...pack(endsOf(kept)), kept };
}

const endsOf = (lengths: readonly Mm[]): readonly Mm[] =>
  lengths.map((_, i) => lengths.slice(0, i + 1).reduce((sum, each) => sum + each, 0));

/** All sets together, or block by block where that is shorter. */
function laySets(
  pieces: readonly LayPiece[],
  cloth: FabricStock,
  copies: Count,
  walls: readonly Mm[],
  single: Strip,
  effort: Effort,
): PackedSets {
  const job = makeClothJob(pieces, cloth, copies, walls);
  if (copies === 1 && walls.length === 0) return { job, strip: single };
  const strip = packSets(job, {
    counts: pieces.map((piece) => piece.copies),
    copies,
    step: cloth.repeat?.along ?? 0,
    single,
    pack: (sets) => packStrip(sets === copies ? job : makeClothJob(pieces, cloth, sets), effort),
  });
  return { job, strip };
}

function listPlaces(
  pieces: readonly LayPiece[],
  copies: Count,
  cloth: FabricStock,
  job: StripJob,
  strip: Strip,
): readonly LayPlace[] {
  const names = pieces.flatMap(({ id, copies: each }) =>
    Array.from({ length: each * copies }, (_, i) => ({ id, copy: i + 1 })),
  );
  return strip.places.map(({ form, x, y }, i): LayPlace => {
    const { polygon, turn, isFlipped } = job.forms[form]!;
    const left = cloth.selvedge + x;
    return {
      piece: names[i]!.id,
      copy: names[i]!.copy,
      x: left,
      y,
      turn,
      flipped: isFlipped,
      outline: polygon.map(([px, py]): Point => [px + left, py + y]),
    };
  });
}
