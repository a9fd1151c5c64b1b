import { loopBounds } from "../plane/loop-bounds.ts";
import { shapeArea } from "../plane/loop-area.ts";
import { rectangleLoop } from "../plane/rectangle.ts";
import { ringLoop } from "../plane/ring-loop.ts";
import { segmentLength } from "../plane/segments.ts";
import type { Count, Loop, Mm } from "../plane/types.ts";
import type { CoverSpec, FabricStock } from "../project/types.ts";
import { addAllowance } from "./add-allowance.ts";
import { placeUnderlap, radiusAlong, sidesAlong } from "./place-underlap.ts";
import type { Cover, Piece, SewingPass } from "./types.ts";

/**
 * How far the strip reaches under the other edge: twice a 20 mm tape, so that no foam shows between.
 *
 * @source our choice; tape 20 mm wide is common practice, no source
 */
export const underlapReach: Mm = 40;

/**
 * The strip behind an opening that is tied or taped shut: as long as the opening, folded lengthwise,
 * sewn to one edge and lying under the other. Behind an edge cut round it is a ring of two layers. One for
 * each run of the opening; none behind a zip.
 */
export function cutUnderlaps(
  cover: Pick<Cover, "passes" | "seams" | "panels">,
  { closing, seamAllowance }: Pick<CoverSpec, "closing" | "seamAllowance">,
  { cloth, prefix }: { readonly cloth: FabricStock; readonly prefix: string },
): Piece[] {
  if (closing.kind !== "hook-and-loop" && closing.kind !== "ties") return [];
  const runs = cover.passes.filter(({ state }) => state === "closing");
  return runs.map((pass, i): Piece => {
    const { finished, cut } = shapeUnderlap(pass, cover);
    const outline = addAllowance(
      [{ segments: finished, allowances: finished.map(() => seamAllowance) }],
      cloth.shrink,
    );
    const { min, max } = loopBounds(outline.outer);
    return {
      id: `${prefix}underlap${runs.length > 1 ? `-${i + 1}` : ""}`,
      label: runs.length > 1 ? `underlap strip ${i + 1}` : "underlap strip",
      panel: null,
      stock: cloth.id,
      cut,
      finished: { outer: finished, holes: [] },
      outline,
      area: shapeArea(outline),
      cutSize: [max[0] - min[0], max[1] - min[1]],
      edges: finished.map((segment) => ({
        seam: null,
        segments: [segment],
        length: segmentLength(segment),
        allowance: seamAllowance,
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

/** A strip to fold in half; or the ring that lies behind a round edge, which cannot be folded and is lined. */
function shapeUnderlap(
  pass: SewingPass,
  { seams, panels }: Pick<Cover, "seams" | "panels">,
): { readonly finished: Loop; readonly cut: Count } {
  const { behind, shape, freeEdge } = placeUnderlap(pass, { seams, panels });
  const met = seams.filter(({ id }) => pass.seams.includes(id));
  const sides = behind === null ? [] : sidesAlong(met, behind, panels);
  const radius = radiusAlong(sides);
  if (shape !== "ring" || radius === null)
    return { finished: rectangleLoop(pass.length, 2 * underlapReach), cut: 1 };
  const reach = freeEdge === "longer" ? underlapReach : -Math.min(underlapReach, radius / 2);
  return { finished: ringLoop(radius, radius + reach, pass.length / radius), cut: 2 };
}
