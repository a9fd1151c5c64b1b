import type { FabricStock } from "../project/types.ts";
import type { Mm } from "../plane/types.ts";
import table from "../../shared/tables/cloth-sewing.json" with { type: "json" };
import type { Work } from "./types.ts";

/** How a cloth is sewn by its weight: a row of `shared/tables/cloth-sewing.json`. */
export type ClothClass = (typeof table.rows)[number];

/** The class of a weight in grams per square metre. */
export function clothClass(weight: number): ClothClass | null {
  return table.rows.find(({ upTo }) => weight <= upTo) ?? table.rows.at(-1) ?? null;
}

/** Grams per square metre and millimetre of thickness of woven cloth. Our choice: half solid fibre, half air. */
const packed = 500;

/** Thickness of one layer: as given, or from the weight; null where neither is known. */
export function layerThickness({ thickness, weight }: FabricStock): Mm | null {
  return thickness ?? (weight === undefined || weight === null ? null : weight / packed);
}

/** Stitch for furnishing cloth of unknown weight. @source the same table, medium to heavy cloth */
export const usualStitch: Mm = 3;

/**
 * Stitches to baste with, shortest and longest.
 *
 * @source Nease's Needlework, neasesneedlework.com, and Melgee Crafts, melgeecrafts.com: 4 to 5 mm
 */
export const bastingStitch: readonly [Mm, Mm] = [4, 5];

/** How to baste, in words. */
export const bastingWords = `stitches of ${bastingStitch.join(" to ")} mm`;

/**
 * Stitch length for the heaviest cloth that is sewn, to half a millimetre: the middle of its range,
 * rounded up. The usual stitch where no weight is known.
 *
 * @source Nancy's Notions, in `shared/tables/cloth-sewing.json`
 */
export function stitchFor(work: Pick<Work, "project" | "covers" | "pieces">): Mm {
  const heaviest = heaviestCloth(work);
  const range = heaviest === null ? null : (clothClass(heaviest.weight ?? 0)?.stitch ?? null);
  if (range === null) return usualStitch;
  const [least = usualStitch, most = usualStitch] = range;
  return Math.ceil(least + most) / 2;
}

/** The heaviest cloth that is sewn, null where no weight is known. */
export function heaviestCloth({
  project,
  covers,
  pieces,
}: Pick<Work, "project" | "covers" | "pieces">): FabricStock | null {
  const used = new Set([
    ...covers.map(({ fabric }) => fabric),
    ...pieces.map(({ stock }) => stock),
  ]);
  const known = project.stock.filter(
    (stock): stock is FabricStock =>
      stock.kind === "fabric" && used.has(stock.id) && (stock.weight ?? null) !== null,
  );
  return known.toSorted((one, other) => (other.weight ?? 0) - (one.weight ?? 0))[0] ?? null;
}
