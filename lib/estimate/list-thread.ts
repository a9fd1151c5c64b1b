import type { Mm, Ratio } from "../plane/types.ts";
import type { FabricStock, Unit } from "../project/types.ts";
import { clothClass, heaviestCloth, layerThickness, stitchFor } from "./cloth-class.ts";
import { neatenRatio, neateningOf, rawEdges } from "./neaten-edges.ts";
import { looseLength, pipedLength, sewnLength } from "./seam-total.ts";
import { threadLength, threadWaste } from "./thread-length.ts";
import { bobbinShare, flatThreadRatio, threadRatio } from "./thread-ratio.ts";
import type { Material, Work } from "./types.ts";

/** Thread for every seam of the project, sewn by lockstitch. No line when nothing is sewn. */
export function listThread(work: Work): Material[] {
  const { project, format } = work;
  const seams = work.covers.reduce((sum, cover) => sum + sewnLength(cover), 0);
  const piped = work.covers.reduce((sum, cover) => sum + pipedLength(cover), 0);
  const closed = work.covers.reduce((sum, { closing }) => sum + closingRows(closing), 0);
  const loose = looseLength(work.pieces);
  const rows = seams + piped + closed + loose;
  if (rows <= 0) return [];

  const thickest = thickestCloth(work);
  // Two layers meet in a plain seam, four where piping lies between them.
  const layers = piped > 0 ? 4 : 2;
  const ratio = threadRatio("301", {
    thickness: thickest === null ? null : layers * thickest,
    stitch: stitchFor(work),
  });
  const neatened = (["zigzag", "overedge"] as const).map((how) => ({
    how,
    length: work.covers
      .filter((cover) => neateningOf(cover, work) === how)
      .reduce((sum, cover) => sum + rawEdges(cover), 0),
    ratio: neatenRatio(how, thickest),
  }));
  const perCopy =
    threadLength(rows, ratio) +
    neatened.reduce((sum, edge) => sum + threadLength(edge.length, edge.ratio), 0);
  const quantity = perCopy * project.copies;
  const runs = [
    [seams, "of seam"],
    [piped, "for basting the piping"],
    [closed, closedWords(work)],
    [loose, "round loose pieces"],
  ] as const;
  const sewn = runs
    .filter(([length]) => length > 0)
    .map(([length, why]) => `${format.length(roundUp(length, project.units))} ${why}`);
  const neatenedWords = neatened
    .filter(({ length }) => length > 0)
    .map(
      ({ how, length, ratio: times }) =>
        `; ${format.length(roundUp(length, project.units))} of edge neatened by ${how} takes ${Number(times.toFixed(1))} times its length`,
    );
  return [
    {
      id: "thread",
      item: threadName(work),
      quantity,
      perCopy,
      unit: "mm",
      unitWord: null,
      have: 0,
      buy: quantity,
      basis:
        `${sewn.join(", ")}. ${ratioWords(ratio, thickest === null ? null : layers * thickest)}` +
        `${neatenedWords.join("")}; ` +
        `${threadWaste * 100} % more is for ends and unpicking. ${bobbinShare * 100} % goes on bobbins.`,
      price: null,
      group: "thread",
    },
  ];
}

/** "sewing thread", and what kind where the weight of the cloth is known. */
function threadName(work: Work): string {
  const kind = clothClass(heaviestCloth(work)?.weight ?? 0);
  return heaviestCloth(work) === null || kind === null
    ? "sewing thread"
    : `sewing thread, ${kind.thread}`;
}

/** How much thread a length of seam takes, and why more than the usual where the seam is thick. */
function ratioWords(ratio: Ratio, thickness: Mm | null): string {
  const times = `takes ${Number(ratio.toFixed(2))} times the length it sews`;
  return thickness !== null && ratio > flatThreadRatio("301")
    ? `A lockstitch through ${Number(thickness.toFixed(1))} mm ${times}`
    : `A lockstitch ${times}`;
}

/** A zip and hook-and-loop tape are each sewn down twice; ties and hand sewing count once. */
function closingRows(closing: Work["covers"][number]["closing"]): Mm {
  if (closing === null) return 0;
  return closing.kind === "zip" || closing.kind === "hook-and-loop" ? 2 * closing.run : closing.run;
}

/** What the length for the closing stands for: a zip and tape are sewn down along both edges. */
function closedWords({ covers }: Work): string {
  const isTwice = covers.some(
    ({ closing }) => closing?.kind === "zip" || closing?.kind === "hook-and-loop",
  );
  return isTwice ? "along both edges of the opening" : "along the opening";
}

/** A whole number of the project's unit: nobody measures thread closer. */
function roundUp(length: Mm, unit: Unit): Mm {
  const step = { mm: 10, cm: 10, in: 25.4 }[unit];
  return Math.ceil(length / step - 1e-6) * step;
}

function thickestCloth({ project, covers, pieces }: Work): Mm | null {
  const used = new Set([
    ...covers.map((cover) => cover.fabric),
    ...pieces.map((piece) => piece.stock),
  ]);
  const known = project.stock
    .filter((stock): stock is FabricStock => stock.kind === "fabric" && used.has(stock.id))
    .flatMap((stock) => layerThickness(stock) ?? []);
  return known.length === 0 ? null : Math.max(...known);
}
