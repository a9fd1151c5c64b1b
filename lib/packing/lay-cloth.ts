import type { Count, Mm, Point } from "../plane/types.ts";
import type { FabricStock, Unit } from "../project/types.ts";
import type { LayPiece } from "../seams/types.ts";
import { rectangleAt } from "../plane/rectangle.ts";
import { roundUpForShop } from "../units/shop-length.ts";
import { fitPieces, makeClothJob, usableWidth } from "./cloth-job.ts";
import { layBound } from "./lay-bound.ts";
import { type Effort, packStrip } from "./pack-strip.ts";
import { stackStrips } from "./stack-strips.ts";
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
  const whole = packSets(fitting, cloth, copies, [], single, effort);
  const enough = onHand
    .filter((each) => whole.strip.length <= each + 1e-6)
    .sort((a, b) => a - b)[0];
  const { job, strip, kept } =
    enough === undefined
      ? packOnHand(onHand, whole, (walls) =>
          packSets(fitting, cloth, copies, walls, single, effort),
        )
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
    lowerBound: layBound(job),
    copies,
    separately: copies * single.length,
    places: listPlaces(fitting, copies, cloth, job, strip),
    unplaced: tooWide.map((piece) => piece.id),
    ...((onHand.length > 1 || isSectioned) && strip.length > 0
      ? { sections: listLengths(cloth, kept, strip.length) }
      : {}),
  };
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

/** Beyond this many pieces a class set is laid in blocks of some sets each. @source our choice */
const mostTogether: Count = 60;

/**
 * All sets together, or one set after another where that is no longer. Many sets are laid in equal
 * blocks: a search over hundreds of pieces finds less in the same time than one over a few dozen.
 */
function packSets(
  pieces: readonly LayPiece[],
  cloth: FabricStock,
  copies: Count,
  walls: readonly Mm[],
  single: Strip,
  effort: Effort,
): PackedSets {
  const job = makeClothJob(pieces, cloth, copies, walls);
  if (copies === 1 && walls.length === 0) return { job, strip: single };
  const rules = {
    counts: pieces.map((piece) => piece.copies),
    step: cloth.repeat?.along ?? 0,
    walls,
  };
  const packed = (sets: Count): Strip =>
    sets === 1 ? single : packStrip(makeClothJob(pieces, cloth, sets), effort);
  const inBlocksOf = (sets: Count): Strip => {
    const whole = { strip: packed(sets), sets };
    const rest = copies % sets;
    const blocks = Array.from({ length: Math.floor(copies / sets) }, () => whole);
    return stackStrips(
      rest === 0 ? blocks : [...blocks, { strip: packed(rest), sets: rest }],
      rules,
    );
  };
  const perSet = job.items.length / copies;
  const most = Math.max(1, Math.floor(mostTogether / perSet));
  const tried =
    most >= copies ? [packStrip(job, effort), inBlocksOf(1)] : [inBlocksOf(most), inBlocksOf(1)];
  return { job, strip: tried.reduce((best, one) => (one.length < best.length ? one : best)) };
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
