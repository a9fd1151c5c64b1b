import { bastingWords } from "../estimate/cloth-class.ts";
import { pipingStripWidth } from "../seams/piping-strip-width.ts";
import { pipingPiece } from "../estimate/piping-piece.ts";
import { pipedLength } from "../estimate/seam-total.ts";
import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import { listWords } from "../units/list-words.ts";
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
    const fabric = work.project.stock.find(({ id }) => id === cover.fabric);
    const shrink = fabric?.kind === "fabric" ? fabric.shrink : 0;
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
  const length = work.format.length(pipedLength(cover));
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
  const seams = cover.seams.filter((seam) => seam.isPiped);
  const [common] = panelsOf(cover);
  const panels = common === undefined ? [] : [panelName(cover, common, work)];
  const where = panels[0] ?? "the panel";
  return makeStep({
    id: `pipe-${cover.solid}`,
    group: "Piping",
    title: `Baste the piping to ${where}`,
    actions: [
      `Pin the piping to the right side of ${where}, cord inwards, raw edges together.`,
      `Leave the ends free for ${work.format.length(50)} where they meet.`,
      "Snip the allowance of the piping at each corner with the cloth scissors.",
      `Baste close to the cord with the zip foot and ${bastingWords}.`,
      "Join the ends so that the cord butts and the strip overlaps.",
    ],
    uses: [...panels, "piping", "pins", "cloth scissors", "sewing machine", "zip foot", "thread"],
    makes: [],
    check: `The piping should lie along ${seams.length === 1 ? "seam" : "seams"} ${listWords(seams.map(({ id }) => id).toSorted())}.`,
    remedy: "Unpick the basting where it pulls, and pin it again without stretching.",
    figure: `piped/${cover.solid}`,
  });
}

/** Panels of the piped seams, the one that most of them share first. */
function panelsOf(cover: Cover): string[] {
  const sides = cover.seams.filter((seam) => seam.isPiped).flatMap((seam) => seam.panels);
  const count = (panel: string) => sides.filter((one) => one === panel).length;
  return [...new Set(sides)].toSorted((one, other) => count(other) - count(one));
}
