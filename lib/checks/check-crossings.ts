import { layerThickness } from "../estimate/cloth-class.ts";
import type { Cover } from "../seams/types.ts";
import { inMillimetres } from "./in-millimetres.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const rule = rules["thick-crossing"];

/**
 * Layers where it is thickest.
 *
 * @source our own count: two panels and the two allowances of a seam that is crossed; piping adds its
 * strip, doubled, on either side of the join; a hemmed strip sewn on has two layers, four at its corners
 */
const layers = { plain: 4, piped: 8, attached: 5 } as const;

/** Seams that cross so thickly that a home machine may not sew them. */
export const checkCrossings: Check = ({ covers, project }) =>
  covers.flatMap((cover) => {
    const fabric = project.stock.find(({ id }) => id === cover.fabric);
    const thickness = fabric?.kind === "fabric" ? layerThickness(fabric) : null;
    if (fabric === undefined || thickness === null || cover.seams.length === 0) return [];
    const attached = project.solids.find(({ id }) => id === cover.solid)?.cover?.attach ?? [];
    const [count, where] = thickest(cover, attached.length > 0);
    const thick = count * thickness;
    if (thick <= rule.most) return [];
    return [
      {
        id: `thick-crossing/${cover.solid}`,
        severity: "note",
        about: `solid/${cover.solid}`,
        message:
          `${count} layers of ${fabric.label} lie on each other ${where}: ${inMillimetres(thick)}. ` +
          `The foot of a home machine lifts about ${rule.lift} mm, and sews half of that well.`,
        remedy:
          "Trim the allowances there to different widths, turn the wheel by hand across the lump, or use a heavy machine. Try it on scraps first.",
        source: rule.source,
      },
    ];
  });

function thickest({ seams }: Cover, isAttached: boolean): readonly [number, string] {
  if (seams.some(({ isPiped }) => isPiped)) return [layers.piped, "where piped seams cross"];
  if (isAttached) return [layers.attached, "at the corners of what is sewn on"];
  return [layers.plain, "where seams cross"];
}
