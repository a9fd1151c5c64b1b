import type { Count, Mm } from "../plane/types.ts";
import type { CoverSpec, FabricStock } from "../project/types.ts";
import type { Cover } from "../seams/types.ts";
import { clothForBias, widthAlongSelvedge } from "./bias-strips.ts";
import { pipingOverlap, pipingRuns } from "../seams/piping-runs.ts";
import { countOf } from "./count-of.ts";
import { pipingStripWidth } from "../seams/piping-strip-width.ts";
import { pipingPiece } from "./piping-piece.ts";
import { cordLength } from "./cord-length.ts";
import { straightStrips } from "./straight-strips.ts";
import type { Material, Work } from "./types.ts";

/** Bias pieces shorter than this are not worth a join. */
const shortestBias: Mm = 200;

/**
 * Cord and covering strips for each piped cover.
 *
 * @source our choice: 50 mm of overlap a run, no bias piece under 200 mm; common practice, no source
 */
export function listPiping(work: Work): Material[] {
  return work.covers.flatMap((cover) => {
    const spec = work.project.solids.find((solid) => solid.id === cover.solid)?.cover ?? null;
    const fabric = work.project.stock.find((one) => one.id === cover.fabric);
    const run = cordLength(cover);
    if (spec === null || spec.piping === null || fabric?.kind !== "fabric" || run <= 0) return [];
    return linesFor({ cover, spec, piping: spec.piping, fabric, run }, work);
  });
}

interface Piped {
  readonly cover: Cover;
  readonly spec: CoverSpec;
  readonly piping: NonNullable<CoverSpec["piping"]>;
  readonly fabric: FabricStock;
  readonly run: Mm;
}

function linesFor(piped: Piped, { project, format }: Work): Material[] {
  const { cover, spec, piping, fabric, run } = piped;
  const width = pipingStripWidth(piping.cord, spec.seamAllowance, fabric.shrink);
  const cord = run * project.copies;
  const overlap = pipingRuns(cover).length * pipingOverlap;
  const piece = pipingPiece(cover);
  const strips = piece === null ? stripsFor(piped, width) : stripsInLay(piped, piece.cut);
  const { length } = format;
  const common = { unit: "mm", unitWord: null, have: 0, price: null, group: "other" } as const;
  return [
    ...(piping.stock === undefined
      ? [
          {
            ...common,
            id: `cord/${cover.solid}`,
            item: `piping cord, ${length(piping.cord)} thick`,
            quantity: cord,
            perCopy: run,
            buy: cord,
            basis: `${length(run - overlap)} of piped seam and ${length(overlap)} where the ends overlap.`,
          },
        ]
      : []),
    {
      ...common,
      id: `piping-strips/${cover.solid}`,
      item: `strips for piping, ${length(width)} wide, cut ${strips.how}`,
      quantity: cord,
      perCopy: run,
      buy: 0,
      basis:
        `Once round the ${length(piping.cord)} cord and two seam allowances of ` +
        `${length(spec.seamAllowance)}` +
        (fabric.shrink > 0 ? `, larger by ${format.percent(fabric.shrink)} to shrink. ` : ". ") +
        strips.basis(format.length),
    },
  ];
}

interface Strips {
  readonly how: string;
  readonly basis: (length: (mm: Mm) => string) => string;
}

/** Strips that lie among the pieces: their cloth is in the lay and is not counted here. */
function stripsInLay({ piping }: Piped, cut: Count): Strips {
  return {
    how: piping.cut === "bias" ? "on the bias" : "straight across the cloth",
    basis: () => `${countOf(cut, "strip")} to be cut with the other pieces: see the lay.`,
  };
}

function stripsFor({ piping, fabric, spec, run: wanted }: Piped, width: Mm): Strips {
  const run = wanted / (1 - fabric.shrink);
  const usable = fabric.width - 2 * fabric.selvedge;
  if (piping.cut === "straight") {
    const { strips, joins, clothLength } = straightStrips(run, width, {
      width: usable,
      join: 2 * spec.seamAllowance,
    });
    return {
      how: "straight across the cloth",
      basis: (length) =>
        `${countOf(strips, "strip")} across the cloth with ${countOf(joins, "join")} take ${length(clothLength)} of it.`,
    };
  }
  const cloth = clothForBias(run, width, { width: usable, shortest: shortestBias });
  return {
    how: "on the bias",
    basis: (length) =>
      `Marked every ${length(widthAlongSelvedge(width))} along the selvedge, they take about ` +
      `${length(cloth)} of cloth, or the triangles left over from the lay.`,
  };
}
