import type { CutPlace, CutPlan } from "../packing/types.ts";
import type { Mm, Mm2 } from "../plane/types.ts";
import type { Axis, BlockSpec, Project } from "../project/types.ts";
import type { SolidBlock } from "../solids/types.ts";

/** Sizes nearer than this are the same, in mm. */
const same: Mm = 0.5;
const axisOf: Readonly<Record<Axis, 0 | 1 | 2>> = { x: 0, y: 1, z: 2 };

/** The pieces of foam that one block is glued up from; empty for a block cut whole. */
export function foamLayers(part: string, slabs: readonly CutPlan[]): readonly CutPlace[] {
  return slabs
    .flatMap((plan) => plan.used.flatMap((used) => used.places))
    .filter((place) => place.part === part && place.layer[1] > 1)
    .filter(({ copy }, _, all) => copy === all[0]?.copy)
    .toSorted((one, other) => one.layer[0] - other.layer[0]);
}

/**
 * Area to coat between the layers of a block, both faces of every joint: what the pieces have in
 * surface beyond the block they make. Layers cut to the outline before gluing have so much less.
 *
 * @source our own sum: cutting a box in two adds the cut face twice to its surface
 */
export function coatedLayers(
  block: SolidBlock,
  layers: readonly CutPlace[],
  { isCutFirst }: { readonly isCutFirst: boolean },
): Mm2 {
  if (layers.length === 0) return 0;
  const pieces = layers.reduce((sum, { size }) => sum + boxSurface(size), 0);
  const [length, width, height] = block.size;
  const share = isCutFirst ? block.volume / (length * width * height) : 1;
  return share * Math.max(0, pieces - boxSurface(block.size));
}

/**
 * Whether every layer shows the whole outline of a block that has the same outline all through, so
 * that it is cut to shape before the layers are glued.
 */
export function isCutInLayers(
  spec: BlockSpec | undefined,
  { size }: SolidBlock,
  layers: readonly CutPlace[],
): boolean {
  const along = spec === undefined ? null : throughAxis(spec);
  if (along === null || layers.length === 0) return false;
  const face = size.filter((_, axis) => axis !== along).toSorted((one, other) => one - other);
  const heights = layers.map((layer) => restOf(layer.size, face));
  const sum = heights.reduce<Mm>((total, height) => total + (height ?? Infinity), 0);
  return Math.abs(sum - (size[along] ?? 0)) <= same;
}

/** The block of the project file that a slab part, `<solid>/<block>`, stands for. */
export function blockSpec(solid: string, block: string, project: Project): BlockSpec | undefined {
  return project.solids.find(({ id }) => id === solid)?.blocks.find(({ id }) => id === block);
}

/** The axis along which the outline stays the same, null for a box or a shape that tapers. */
function throughAxis(spec: BlockSpec): 0 | 1 | 2 | null {
  switch (spec.kind) {
    case "cylinder":
    case "prism":
      return axisOf[spec.along];
    case "rounded":
      return 2;
    case "box":
    case "wedge":
    case "frustum":
      return null;
  }
}

/** The third size of a piece whose other two are those of the face, null when they are not. */
function restOf(sizes: readonly Mm[], face: readonly Mm[]): Mm | null {
  const left = [...sizes];
  for (const side of face) {
    const index = left.findIndex((one) => Math.abs(one - side) <= same);
    if (index < 0) return null;
    left.splice(index, 1);
  }
  return left[0] ?? null;
}

function boxSurface([a = 0, b = 0, c = 0]: readonly Mm[]): Mm2 {
  return 2 * (a * b + b * c + c * a);
}
