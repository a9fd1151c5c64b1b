import type { Work } from "../estimate/types.ts";
import type { BlockSpec, Place, WedgeBlock } from "../project/types.ts";

/**
 * The later wedge of the same solid and foam that is as large as this one, or null. Both come from one
 * blank by one slanting cut.
 *
 * @source common practice, no source
 */
export function equalWedge(solid: string, spec: BlockSpec, { project }: Work): string | null {
  const own = project.solids.find(({ id }) => id === solid);
  if (own === undefined || spec.kind !== "wedge") return null;
  const wedges = own.blocks.filter(
    (one): one is WedgeBlock =>
      one.kind === "wedge" &&
      (one.foam ?? own.foam) === (spec.foam ?? own.foam) &&
      isAlike(one, spec),
  );
  // Wedges go in pairs: the first takes the second, the third the fourth.
  const index = wedges.findIndex(({ id }) => id === spec.id);
  return index % 2 === 0 ? (wedges[index + 1]?.id ?? null) : null;
}

function isAlike(one: WedgeBlock, other: WedgeBlock): boolean {
  return profile(one).every((size, index) => Math.abs(size - (profile(other)[index] ?? 0)) < 0.5);
}

/** Run, height and width, whichever way the wedge faces. */
function profile({ size: [x, y, z], rises }: WedgeBlock): Place {
  return rises === "left" || rises === "right" ? [x, z, y] : [y, z, x];
}
