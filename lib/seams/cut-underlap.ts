import { rectangleLoop } from "../plane/rectangle.ts";
import type { Mm } from "../plane/types.ts";
import type { CoverSpec, FabricStock } from "../project/types.ts";
import { addAllowance } from "./add-allowance.ts";
import { shapeArea } from "../plane/loop-area.ts";
import type { Piece, SewingPass } from "./types.ts";

/**
 * How far the strip reaches under the other edge: twice a 20 mm tape, so that no foam shows between.
 *
 * @source our choice; tape 20 mm wide is common practice, no source
 */
export const underlapReach: Mm = 40;

/**
 * The strip behind an opening that is tied or taped shut: as long as the opening, folded lengthwise,
 * sewn to one edge and lying under the other. One for each run of the opening; none behind a zip.
 */
export function cutUnderlaps(
  passes: readonly SewingPass[],
  cover: Pick<CoverSpec, "closing" | "seamAllowance">,
  { cloth, prefix }: { readonly cloth: FabricStock; readonly prefix: string },
): Piece[] {
  const { kind } = cover.closing;
  if (kind !== "hook-and-loop" && kind !== "ties") return [];
  const runs = passes.filter(({ state }) => state === "closing");
  return runs.map((pass, i) => {
    const finished = rectangleLoop(pass.length, 2 * underlapReach);
    const allowance = cover.seamAllowance;
    const outline = addAllowance(
      [{ segments: finished, allowances: finished.map(() => allowance) }],
      cloth.shrink,
    );
    const grown = (size: Mm): Mm => (size + 2 * allowance) / (1 - cloth.shrink);
    return {
      id: `${prefix}underlap${runs.length > 1 ? `-${i + 1}` : ""}`,
      label: runs.length > 1 ? `underlap strip ${i + 1}` : "underlap strip",
      panel: null,
      stock: cloth.id,
      cut: 1,
      finished: { outer: finished, holes: [] },
      outline,
      area: shapeArea(outline),
      cutSize: [grown(pass.length), grown(2 * underlapReach)],
      edges: finished.map((segment, side) => ({
        seam: null,
        segments: [segment],
        length: side % 2 === 0 ? pass.length : 2 * underlapReach,
        allowance,
        kind: "hem",
      })),
      notches: [],
      clips: [],
      marks: [],
      mirrorOf: null,
      isUpright: false,
    };
  });
}
