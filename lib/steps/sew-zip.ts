import { bastingWords } from "../estimate/cloth-class.ts";
import { listWords } from "../units/list-words.ts";
import type { Work } from "../estimate/types.ts";
import type { Cover, Seam, SewingPass } from "../seams/types.ts";
import { clipSpacing } from "./clip-spacing.ts";
import { notchNumbers, notchWords } from "./seam-edges.ts";
import { placeUnderlap } from "../seams/place-underlap.ts";
import { panelName } from "./name-parts.ts";

/** What a zip needs done and fetched, in the order of the work. */
interface ZipWork {
  readonly actions: readonly string[];
  readonly uses: readonly string[];
}

/**
 * Sew a zip into the open run of one pass. In a straight run the seam is basted first; round a corner or
 * along a curve it cannot be pressed open, so there each tape is sewn to its own side.
 *
 * @source common practice, no source
 */
export function sewZip(pass: SewingPass, open: readonly Seam[], shown: Shown): ZipWork {
  if (pass.corners.length > 0) return sewRound(pass, open, shown);
  const { isRound, on, behind } = placeUnderlap(pass, shown.cover);
  return isRound ? sewCurved(open, [behind, on], shown) : sewStraight(open, shown);
}

interface Shown {
  readonly cover: Cover;
  readonly work: Work;
  /** The open edges in words, "the edges of seam A". */
  readonly edges: string;
}

const endIt = "Sew across each end of the zip three times.";
const openIt = "Open the zip by half.";

/** What it takes to sew each tape by itself, where it is snipped to turn. */
const tapeTools = [
  "zip",
  "zip foot",
  "cloth scissors",
  "tailor's chalk",
  "pins",
  "sewing machine",
] as const;

function sewStraight(open: readonly Seam[], { cover, work, edges }: Shown): ZipWork {
  return {
    actions: [
      `Pin ${edges} together, right sides facing.`,
      `Baste along the seam line with ${bastingWords} on the sewing machine.`,
      "Press the allowances open with the iron.",
      "Lay the zip face down along the seam, its teeth on the stitches.",
      "Sew down both sides of the zip with the zip foot.",
      endIt,
      "Unpick the basting.",
      openIt,
    ],
    uses: [...panelsOf(open, cover, work), "zip", "zip foot", "pins", "sewing machine", "iron"],
  };
}

/** Along a curve: the tape bends where it is snipped, and goes first to the side that is cut straight. */
function sewCurved(
  open: readonly Seam[],
  [straight, round]: readonly [string | null, string | null],
  { cover, work }: Shown,
): ZipWork {
  const name = (panel: string | null, otherwise: string) =>
    panel === null ? otherwise : panelName(cover, panel, work);
  const numbers = open.flatMap((seam) => notchNumbers(seam, cover));
  const ends = numbers.length < 2 ? "end to end" : `notch ${numbers[0]} to notch ${numbers.at(-1)}`;
  return {
    actions: [
      `Snip the outer edges of both tapes every ${clipSpacing(work)}, well short of the teeth.`,
      "Open the zip right to its end.",
      `Pin one tape to ${name(straight, "one side")} from ${ends}, face down, teeth on the seam line.`,
      "Sew this tape down with the zip foot.",
      "Close the zip.",
      ...(numbers.length === 0
        ? []
        : [`Mark ${notchWords(numbers)} across on the other tape with tailor's chalk.`]),
      "Open the zip again.",
      `Pin the other tape to ${name(round, "the other side")} in the same way, mark to notch.`,
      "Sew it down like the first.",
      endIt,
      openIt,
    ],
    uses: [...panelsOf(open, cover, work), ...tapeTools],
  };
}

function sewRound(pass: SewingPass, open: readonly Seam[], { cover, work }: Shown): ZipWork {
  const name = (panel: string) => panelName(cover, panel, work);
  const clipped = [...new Set(pass.corners.flatMap(({ clip }) => clip ?? []))].map(name);
  const shared = open[0]!.panels.find((panel) =>
    open.every(({ panels }) => panels.includes(panel)),
  );
  const others = [...new Set(open.flatMap(({ panels }) => panels))].filter((id) => id !== shared);
  const [first, second] =
    shared === undefined
      ? ["one side of the opening", "the other side of the opening"]
      : [name(shared), listWords(others.map(name))];
  return {
    actions: [
      ...clipped.map(
        (panel) =>
          `Clip each inward corner of ${panel} to just short of the seam line with the cloth scissors.`,
      ),
      "Open the zip right to its end.",
      `Pin one tape to ${first}, face down, its teeth on the seam line.`,
      "Snip the tape at each corner with the cloth scissors, well short of the teeth.",
      "Sew this tape down with the zip foot.",
      "Pivot at each corner.",
      "Close the zip.",
      "Mark each corner across on the other tape with tailor's chalk.",
      "Open the zip again.",
      `Pin the other tape to ${second} in the same way, marks at the corners.`,
      "Sew it down like the first.",
      endIt,
      openIt,
    ],
    uses: [...panelsOf(open, cover, work), ...tapeTools],
  };
}

const panelsOf = (open: readonly Seam[], cover: Cover, work: Work): string[] =>
  [...new Set(open.flatMap(({ panels }) => panels))].map((panel) => panelName(cover, panel, work));
