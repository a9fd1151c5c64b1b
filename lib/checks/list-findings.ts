import type { Work } from "../estimate/types.ts";
import { checkAdhesive } from "./check-adhesive.ts";
import { checkBuriedBlocks } from "./check-buried-blocks.ts";
import { checkClothStock } from "./check-cloth-stock.ts";
import { checkCords } from "./check-cords.ts";
import { checkCutStock } from "./check-cut-stock.ts";
import { checkEasedSeams } from "./check-eased-seams.ts";
import { checkFingerGaps } from "./check-finger-gaps.ts";
import { checkFire } from "./check-fire.ts";
import { checkFoamDensity } from "./check-foam-density.ts";
import { checkFoamTolerance } from "./check-foam-tolerance.ts";
import { checkInwardEdges } from "./check-inward-edges.ts";
import { checkKerf } from "./check-kerf.ts";
import { checkMirroredPanels } from "./check-mirrored-panels.ts";
import { checkOpening } from "./check-opening.ts";
import { checkParts } from "./check-parts.ts";
import { checkPieceWidth } from "./check-piece-width.ts";
import { checkRefold } from "./check-refold.ts";
import { checkRepeat } from "./check-repeat.ts";
import { checkSeatDepth } from "./check-seat-depth.ts";
import { checkSeatHeight } from "./check-seat-height.ts";
import { checkSmallParts } from "./check-small-parts.ts";
import { checkTipping } from "./check-tipping.ts";
import { checkTurnedPrint } from "./check-turned-print.ts";
import { checkWeight } from "./check-weight.ts";
import { checkZip } from "./check-zip.ts";
import { checkZipForChildren } from "./check-zip-for-children.ts";
import type { Check, Finding, Severity } from "./types.ts";

/** All checks, in the order a maker meets the matter. */
export const checks: readonly (readonly [name: string, check: Check])[] = [
  ["parts that fall apart", checkParts],
  ["blocks inside others", checkBuriedBlocks],
  ["slabs, sheets and boards", checkCutStock],
  ["kerf", checkKerf],
  ["foam tolerance", checkFoamTolerance],
  ["foam density", checkFoamDensity],
  ["cloth on hand", checkClothStock],
  ["pieces wider than the cloth", checkPieceWidth],
  ["pattern repeat", checkRepeat],
  ["turned print", checkTurnedPrint],
  ["mirrored panels", checkMirroredPanels],
  ["re-fold proof", checkRefold],
  ["eased seams", checkEasedSeams],
  ["opening", checkOpening],
  ["zip", checkZip],
  ["inward edges", checkInwardEdges],
  ["seat height", checkSeatHeight],
  ["seat depth", checkSeatDepth],
  ["tipping", checkTipping],
  ["weight", checkWeight],
  ["cords", checkCords],
  ["small parts", checkSmallParts],
  ["zip within a child's reach", checkZipForChildren],
  ["finger gaps", checkFingerGaps],
  ["fire", checkFire],
  ["adhesive", checkAdhesive],
];

const rank: Readonly<Record<Severity, number>> = { danger: 0, warning: 1, caution: 2, note: 3 };

/** Run every check; the gravest findings come first, each kind in the order of the list. */
export function listFindings(work: Work): Finding[] {
  return checks
    .flatMap(([, check]) => check(work))
    .toSorted((one, other) => rank[one.severity] - rank[other.severity]);
}
