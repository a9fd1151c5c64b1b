import type { Count, Mm, Radians } from "../plane/types.ts";
import type { Banks } from "./cloth-banks.ts";
import { lengthOf, rawLoops, type Sewn, type Stretch, type Unordered } from "./list-stretches.ts";

/**
 * What makes a stretch of sewing hard, where 1 is a pivot on work that stands up.
 *
 * @source our choice, after common practice: few starts and stops, short joins before long ones,
 *   strips into frames before plates, inward corners set in while little hangs on the cloth, nothing
 *   sewn into a slot between two fixed ends, closings while the cloth still spreads flat
 */
export const effort = {
  start: 0.35,
  /** A pivot of a single panel on work that lies flat; of other work; where both sides stand up. */
  pivots: [0.15, 0.6, 1],
  /** At an inward corner, and once more for each further panel that hangs on the work, up to four. */
  setIn: 0.5,
  setInBulk: 0.25,
  /** For each panel on the work, by the share of the longest seam. */
  bulk: 0.03,
  /** Ends of strips that are not joined by themselves, but on the way round a corner. */
  lateJoin: 0.6,
  /** Work that stands up, sewn to itself. */
  closingUp: 0.6,
  slot: 1.5,
  corner: 0.1,
  /** A ring sewn while its strip is not joined end to end. */
  openRing: 3,
  closingBulk: 0.3,
  /** A closing put in piece by piece, though it runs on round a corner. */
  partClosing: 6,
  /** A closing that no longer spreads flat, or work closed up too soon: only where nothing else goes. */
  outOfReach: 20,
} as const;

/** A turn smaller than this is steered round. @source our choice, as in `find-seams.ts` */
export const pivotTurn: Radians = (3 * Math.PI) / 180;
/** An edge that turns inward by more than this has to be set in, with a clip and a pivot. */
const setInTurn: Radians = -0.25;
const mostHanging: Count = 4;
/** Share of a closing that the mouth beside it must have, and what is always enough. @source our choice */
const mouthShare = 0.75;
const widestMouth: Mm = 500;

export interface Hanging {
  /** Panels on the work that one side, and the other, belong to. */
  readonly panels: readonly [Count, Count];
  readonly joins: boolean;
  /** How many of the two sides have been sewn round a corner before. */
  readonly standing: 0 | 1 | 2;
  readonly isLast: boolean;
  readonly longest: Mm;
}

/** How hard a stretch is to sew on the work as it lies now. */
export function priceStretch(
  stretch: Stretch,
  seams: readonly Unordered[],
  banks: Banks,
  { panels: [own, other], joins, standing, isLast, longest }: Hanging,
): number {
  const members = stretch.banks.map((bank) => seams[bank >> 1]!);
  const turns = turnsOf(stretch, seams);
  const pivots = turns.filter((turn) => Math.abs(turn) > pivotTurn).length;
  const inward = turns.filter((turn) => turn < setInTurn).length;
  const panels = joins ? own + other : own;
  const hanging = Math.min(mostHanging, Math.max(0, panels - 2));
  const lateJoins = stretch.banks.filter((bank) => banks.isJoin[bank >> 1]).length;
  const share = lengthOf(stretch.banks, banks) / longest;
  const isPlate = standing === 0 && joins && Math.min(own, other) === 1;
  // The last seam closes the work, whichever it is.
  const isSlot = stretch.boundEnds === 2 && !isLast;
  const isOpenRing = !stretch.isRing && members.some(({ isRing }) => isRing);
  const isClosing = members[0]!.state === "closing";
  return (
    effort.start +
    effort.pivots[isPlate ? 0 : standing === 2 ? 2 : 1] * pivots +
    inward * (effort.setIn + effort.setInBulk * hanging) +
    (!joins && standing > 0 ? effort.closingUp : 0) +
    // A straight run over several ends is one join.
    effort.lateJoin * (stretch.banks.length === 1 || pivots === 0 ? 0 : lateJoins) +
    effort.bulk * (panels - 1) * (0.3 + share) +
    (isSlot ? effort.slot : effort.corner * stretch.boundEnds) +
    (isOpenRing ? effort.openRing : 0) +
    (isClosing ? effort.closingBulk * panels : 0)
  );
}

/** The sharpest turn of either side at each corner on the way. */
function turnsOf({ banks, joints }: Stretch, seams: readonly Unordered[]): Radians[] {
  const sharper = (a: Radians, b: Radians) => (Math.abs(a) > Math.abs(b) ? a : b);
  return [
    ...banks.flatMap((bank) => seams[bank >> 1]!.corners.map(({ turn }) => turn)),
    ...joints.map(([a, b]) => sharper(Math.PI - a, Math.PI - b)),
  ];
}

/** Does the work stand up once this is sewn, so that it no longer lies flat? */
export const standsUp = (stretch: Stretch, seams: readonly Unordered[]): boolean =>
  stretch.boundEnds > 0 || turnsOf(stretch, seams).some((turn) => Math.abs(turn) > pivotTurn);

/**
 * Whether cloth still spreads flat on both sides of a closing while it is put in: the work it sits on
 * keeps, beside the slot of the closing itself, a mouth as long as the closing or as wide as a machine needs.
 */
export function spreadsFlat(
  stretch: Stretch,
  banks: Banks,
  { sewn, groupOf }: { readonly sewn: Sewn; readonly groupOf: (bank: number) => Count },
): boolean {
  const run = lengthOf(stretch.banks, banks);
  const inside = new Set(stretch.banks.flatMap((bank) => [bank, bank ^ 1]));
  const after = Uint8Array.from(sewn);
  stretch.banks.forEach((bank) => (after[bank >> 1] = 1));
  const loops = rawLoops(banks, after);
  const groups = new Set([...inside].map(groupOf));
  const mouths = loops.filter((loop) => groups.has(groupOf(loop[0]!)));
  return mouths.some((loop) => lengthOf(loop, banks) >= Math.min(run * mouthShare, widestMouth));
}
