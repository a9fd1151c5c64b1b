import type { Work } from "../estimate/types.ts";
import { checkAdhesive } from "./check-adhesive.ts";
import { checkArmHeight } from "./check-arm-height.ts";
import { checkBottoming } from "./check-bottoming.ts";
import { checkBuriedBlocks } from "./check-buried-blocks.ts";
import { checkCheaper } from "./check-cheaper.ts";
import { checkChoices } from "./check-choices.ts";
import { checkClimbing } from "./check-climbing.ts";
import { checkClothStock } from "./check-cloth-stock.ts";
import { checkCords } from "./check-cords.ts";
import { checkCoverFit } from "./check-cover-fit.ts";
import { checkCrossings } from "./check-crossings.ts";
import { checkCutStock } from "./check-cut-stock.ts";
import { checkEasedSeams } from "./check-eased-seams.ts";
import { checkEdgeLoad } from "./check-edge-load.ts";
import { checkFingerGaps } from "./check-finger-gaps.ts";
import { checkFire } from "./check-fire.ts";
import { checkFitsAges } from "./check-fits-ages.ts";
import { checkFoamDensity } from "./check-foam-density.ts";
import { checkFoamHardness } from "./check-foam-hardness.ts";
import { checkFoamTolerance } from "./check-foam-tolerance.ts";
import { checkGlueLines } from "./check-glue-lines.ts";
import { checkHandles } from "./check-handles.ts";
import { checkInwardEdges } from "./check-inward-edges.ts";
import { checkKerf } from "./check-kerf.ts";
import { checkLamination } from "./check-lamination.ts";
import { checkLeaning } from "./check-leaning.ts";
import { checkMirroredPanels } from "./check-mirrored-panels.ts";
import { checkOilyRags } from "./check-oily-rags.ts";
import { checkOpening } from "./check-opening.ts";
import { checkParts } from "./check-parts.ts";
import { checkPieceWidth } from "./check-piece-width.ts";
import { checkPrintExtra } from "./check-print-extra.ts";
import { checkReclaimedFoam } from "./check-reclaimed-foam.ts";
import { checkRefold } from "./check-refold.ts";
import { checkRepeat } from "./check-repeat.ts";
import { checkScrews } from "./check-screws.ts";
import { checkSeatDepth } from "./check-seat-depth.ts";
import { checkSeatHeight } from "./check-seat-height.ts";
import { checkSeatWidth } from "./check-seat-width.ts";
import { checkSewing } from "./check-sewing.ts";
import { checkSewingOrder } from "./check-sewing-order.ts";
import { checkSmallParts } from "./check-small-parts.ts";
import { checkTipping } from "./check-tipping.ts";
import { checkTurnedPrint } from "./check-turned-print.ts";
import { checkWashing } from "./check-washing.ts";
import { checkWeight } from "./check-weight.ts";
import { checkZipForChildren } from "./check-zip-for-children.ts";
import { checkZip } from "./check-zip.ts";
import type { Check, Finding, Severity } from "./types.ts";

/** All checks, in the order a maker meets the matter. */
export const checks: readonly (readonly [name: string, check: Check])[] = [
  ["parts that fall apart", checkParts],
  ["blocks inside others", checkBuriedBlocks],
  ["slabs, sheets and boards", checkCutStock],
  ["cheaper split", checkCheaper],
  ["kerf", checkKerf],
  ["foam tolerance", checkFoamTolerance],
  ["foam density", checkFoamDensity],
  ["foam hardness", checkFoamHardness],
  ["bottoming out", checkBottoming],
  ["lamination order", checkLamination],
  ["glue lines", checkGlueLines],
  ["reclaimed foam", checkReclaimedFoam],
  ["cloth on hand", checkClothStock],
  ["pieces wider than the cloth", checkPieceWidth],
  ["pattern repeat", checkRepeat],
  ["centred and matched print", checkPrintExtra],
  ["turned print", checkTurnedPrint],
  ["mirrored panels", checkMirroredPanels],
  ["re-fold proof", checkRefold],
  ["order of sewing", checkSewingOrder],
  ["eased seams", checkEasedSeams],
  ["stitch, needle and thread", checkSewing],
  ["thick crossings", checkCrossings],
  ["handles", checkHandles],
  ["choices that come to nothing", checkChoices],
  ["opening", checkOpening],
  ["cover fit", checkCoverFit],
  ["zip", checkZip],
  ["washing", checkWashing],
  ["inward edges", checkInwardEdges],
  ["seat height", checkSeatHeight],
  ["size for the sitter", checkFitsAges],
  ["seat depth", checkSeatDepth],
  ["seat width", checkSeatWidth],
  ["arm height", checkArmHeight],
  ["tipping", checkTipping],
  ["load at an edge", checkEdgeLoad],
  ["climbing on an arm", checkClimbing],
  ["leaning back", checkLeaning],
  ["weight", checkWeight],
  ["cords", checkCords],
  ["small parts", checkSmallParts],
  ["zip within a child's reach", checkZipForChildren],
  ["finger gaps", checkFingerGaps],
  ["screws", checkScrews],
  ["fire", checkFire],
  ["adhesive", checkAdhesive],
  ["finish", checkOilyRags],
];

const rank: Readonly<Record<Severity, number>> = { danger: 0, warning: 1, caution: 2, note: 3 };

/** Run every check; the gravest findings come first, each kind in the order of the list. */
export function listFindings(work: Work): Finding[] {
  return checks
    .flatMap(([, check]) => check(work))
    .map((finding) => ({ ...finding, message: startSentence(finding.message) }))
    .toSorted((one, other) => rank[one.severity] - rank[other.severity]);
}

/** A message may begin with the name of a stock, which an author writes small. */
const startSentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
