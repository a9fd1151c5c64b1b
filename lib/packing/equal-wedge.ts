import type { Mm } from "../plane/types.ts";
import type { BlockSpec, Place, Project, WedgeBlock } from "../project/types.ts";

/**
 * The later wedge of the same solid and foam that is as large as this one; in a class set a wedge that
 * is left without another goes with its own next copy. Null for any other. Both come from one blank by
 * one slanting cut.
 *
 * @source common practice, no source
 */
export function equalWedge(
  solid: string,
  spec: BlockSpec,
  { solids, copies }: Pick<Project, "solids" | "copies">,
): string | null {
  const own = solids.find(({ id }) => id === solid);
  if (own === undefined || spec.kind !== "wedge") return null;
  const wedges = own.blocks.filter(
    (one): one is WedgeBlock =>
      one.kind === "wedge" &&
      (one.foam ?? own.foam) === (spec.foam ?? own.foam) &&
      isAlike(one, spec),
  );
  // Wedges go in pairs: the first takes the second, the third the fourth.
  const index = wedges.findIndex(({ id }) => id === spec.id);
  if (index % 2 === 1) return null;
  return wedges[index + 1]?.id ?? (copies > 1 ? spec.id : null);
}

function isAlike(one: WedgeBlock, other: WedgeBlock): boolean {
  return profile(one).every((size, index) => Math.abs(size - (profile(other)[index] ?? 0)) < 0.5);
}

/** Run, height and width, whichever way the wedge faces. */
function profile({ size: [x, y, z], rises }: WedgeBlock): Place {
  return rises === "left" || rises === "right" ? [x, z, y] : [y, z, x];
}

/**
 * The blank that a wedge and its twin come from by one cut from corner to corner: as large as the
 * wedge, and higher by what the blade takes along the slant.
 *
 * @source our own sum: a cut of width k along a slant of length √(run² + height²) parts the two
 * triangles by k across it, which is k · slant ÷ run upwards
 */
export function twinBlank({ size, rises }: WedgeBlock, kerf: Mm): Place {
  const [x, y, z] = size;
  const run = rises === "left" || rises === "right" ? x : y;
  return [x, y, z + (kerf * Math.hypot(run, z)) / run];
}
