import { bastingWords } from "../estimate/cloth-class.ts";
import { shrinkOf } from "../project/shrink-of.ts";
import { type PipingRun, pipingOverlap, pipingRuns } from "../seams/piping-runs.ts";
import { pipingStripWidth } from "../seams/piping-strip-width.ts";
import { pipingPiece } from "../estimate/piping-piece.ts";
import { cordLength } from "../estimate/cord-length.ts";
import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import { listWords } from "../units/list-words.ts";
import { clipSpacing } from "./clip-spacing.ts";
import { makeStep } from "./make-step.ts";
import { panelName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** Cut and join the strips, cover the cord, baste it to the panels. */
export function listPiping(work: Work): Step[] {
  return work.covers.flatMap((cover) => {
    const spec = work.project.solids.find(({ id }) => id === cover.solid)?.cover;
    const piping = spec?.piping ?? null;
    const piped = cover.seams.filter((seam) => seam.isPiped);
    if (spec === undefined || spec === null || piping === null || piped.length === 0) return [];
    const shrink = shrinkOf(cover.fabric, work.project);
    const width = work.format.length(pipingStripWidth(piping.cord, spec.seamAllowance, shrink));
    const strip = pipingPiece(cover)?.label ?? null;
    return [
      makePiping(cover, { width, isBias: piping.cut === "bias", strip }, work),
      bastePiping(cover, work),
    ];
  });
}

function makePiping(
  cover: Cover,
  strip: {
    readonly width: string;
    readonly isBias: boolean;
    /** What the strips are called where they are cut with the other pieces. */
    readonly strip: string | null;
  },
  work: Work,
): Step {
  const fabric = work.project.stock.find(({ id }) => id === cover.fabric)?.label ?? cover.fabric;
  const length = work.format.length(cordLength(cover));
  return makeStep({
    id: `piping-${cover.solid}`,
    group: "Piping",
    title: "Make the piping",
    actions: [
      ...(strip.isBias && strip.strip === null
        ? [
            `Fold a corner of the ${fabric} so that warp lies on weft.`,
            "Mark the fold: it is the bias.",
          ]
        : []),
      ...(strip.strip === null
        ? [
            `Draw strips ${strip.width} wide ${strip.isBias ? "along the bias" : "straight across the cloth"} with tailor's chalk.`,
            "Cut the strips with the cloth scissors.",
          ]
        : []),
      "Join the strips end to end with slanting seams, using the sewing machine.",
      "Press the joins open with the iron.",
      "Fold the strip round the piping cord, right side out.",
      "Sew close to the cord with the zip foot.",
    ],
    uses: [
      ...(strip.strip === null
        ? [fabric, "tape measure", "straightedge", "tailor's chalk", "cloth scissors"]
        : [strip.strip]),
      "piping cord",
      "sewing machine",
      "zip foot",
      "iron",
      "thread",
    ],
    makes: ["piping"],
    check: `The piping should be at least ${length} long.`,
    remedy: "Join on another strip.",
    figure: `piping/${cover.solid}`,
  });
}

function bastePiping(cover: Cover, work: Work): Step {
  const runs = pipingRuns(cover);
  const nameOf = ({ panel }: PipingRun) => panelName(cover, panel, work);
  const panels = [...new Set(runs.map(nameOf))];
  const isOne = runs.length === 1;
  const turns = runs.map((run) => turnsOf(run, cover));
  const seams = runs.flatMap((run) => run.seams).toSorted();
  return makeStep({
    id: `pipe-${cover.solid}`,
    group: "Piping",
    title: `Baste the piping to ${listWords(panels)}`,
    actions: [
      ...(isOne ? [] : [cutApart(runs, work)]),
      ...runs.map(
        (run) =>
          `Pin ${isOne ? "the piping" : "one length"} to the right side of ${nameOf(run)}, cord inwards, raw edges together.`,
      ),
      `Leave the ends free for ${work.format.length(pipingOverlap)} where they meet.`,
      ...(turns.some(({ hasCorners }) => hasCorners)
        ? ["Snip the allowance of the piping at each corner with the cloth scissors."]
        : []),
      ...(turns.some(({ hasCurves }) => hasCurves)
        ? [
            `Snip the allowance of the piping every ${clipSpacing(work)} round curves with the cloth scissors.`,
          ]
        : []),
      `Baste close to the cord with the zip foot and ${bastingWords}.`,
      "Join the ends so that the cord butts and the strip overlaps.",
    ],
    uses: [
      ...panels,
      "piping",
      "tape measure",
      "pins",
      "cloth scissors",
      "sewing machine",
      "zip foot",
      "thread",
    ],
    makes: [],
    check: `The piping should lie along ${seams.length === 1 ? "seam" : "seams"} ${listWords(seams)}.`,
    remedy: "Unpick the basting where it pulls, and pin it again without stretching.",
    figure: `piped/${cover.solid}`,
  });
}

/** Lengths of piping that do not meet are cut apart before they are pinned. */
function cutApart(runs: readonly PipingRun[], work: Work): string {
  const lengths = runs.map(({ length }) => work.format.length(length + pipingOverlap));
  const [first = ""] = lengths;
  return lengths.every((length) => length === first)
    ? `Cut the piping into ${runs.length} lengths of ${first}.`
    : `Cut the piping into ${runs.length} lengths: ${listWords(lengths)}.`;
}

/** Whether a run turns at corners, along curves, or both. */
function turnsOf(
  { seams, panel }: PipingRun,
  cover: Cover,
): { readonly hasCorners: boolean; readonly hasCurves: boolean } {
  const edges = new Set(
    cover.seams.filter(({ id }) => seams.includes(id)).flatMap((seam) => seam.edges),
  );
  const sides = (cover.panels.find(({ id }) => id === panel)?.loops ?? [])
    .flat()
    .filter(({ edge }) => edges.has(edge));
  const isCurve = ({ segments }: (typeof sides)[number]): boolean =>
    segments.length > 1 || segments.some(({ kind }) => kind === "arc");
  return { hasCorners: !sides.every(isCurve), hasCurves: sides.some(isCurve) };
}
