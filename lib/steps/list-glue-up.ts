import { blockSpec, foamLayers, isCutInLayers } from "../estimate/foam-layers.ts";
import type { Work } from "../estimate/types.ts";
import type { Solid, SolidBlock } from "../solids/types.ts";
import { blankOf, slabPlaceName } from "./list-foam-cutting.ts";
import { makeStep } from "./make-step.ts";
import { blockName, foamName, partName } from "./name-parts.ts";
import { shapeBlock } from "./shape-block.ts";
import type { Step } from "./types.ts";

const glue = ["foam adhesive", "eye protection"] as const;
const gluing = [
  "Read the instructions on the can of foam adhesive.",
  "Put on the eye protection.",
] as const;
const pressing = ["Wait as long as the can says, until the glue is tacky."] as const;

/** Layers into blocks, blanks into shapes, blocks into the whole foam. */
export function listGlueUp(work: Work): Step[] {
  return work.solids.flatMap((solid) => [
    ...solid.blocks.flatMap((block) => makeBlock(solid, block, work)),
    ...glueBlocks(solid, work),
  ]);
}

/** A block of one outline all through is cut in its layers; any other is glued up first, then shaped. */
function makeBlock(solid: Solid, block: SolidBlock, work: Work): Step[] {
  const part = `${solid.id}/${block.id}`;
  const spec = blockSpec(solid.id, block.id, work.project);
  const layers = foamLayers(part, work.slabs);
  const isShaped = spec !== undefined && spec.kind !== "box" && block.foam !== null;
  const blank = blankOf(part, work);
  // Does another wedge bring this one along? Then it is shaped with that one.
  if (blank?.twin === part && blank.part !== part) return [];
  const twin = blank?.twin === undefined ? {} : { twin: blank.twin };
  const name = blockName(solid.id, block.id, work);
  const blanks = [...new Set(layers.map((layer) => slabPlaceName(layer, work)))];
  if (isShaped && isCutInLayers(spec, block, layers)) {
    const shaped = [...new Set(layers.map(({ layer: [number] }) => `layer ${number} of ${name}`))];
    return [
      shapeBlock({ solid: solid.id, spec, blanks, shaped }, work),
      joinLayers(solid, block, { from: shaped, to: name, work }),
    ];
  }
  const whole = slabPlaceName({ part, layer: [1, 1], ...twin }, work);
  const shaped = [...new Set([name, ...(blank?.twin ? [partName(blank.twin, work)] : [])])];
  return [
    ...(blanks.length > 0 ? [joinLayers(solid, block, { from: blanks, to: whole, work })] : []),
    ...(isShaped ? [shapeBlock({ solid: solid.id, spec, blanks: [whole], shaped }, work)] : []),
  ];
}

function joinLayers(
  solid: Solid,
  block: SolidBlock,
  {
    from,
    to,
    work,
  }: { readonly from: readonly string[]; readonly to: string; readonly work: Work },
): Step {
  return makeStep({
    id: `layer-${solid.id}-${block.id}`,
    group: "Foam",
    title: `Glue the layers of ${blockName(solid.id, block.id, work)}`,
    actions: [
      "Dry-fit the layers edge to edge.",
      "Draw a line across all layers on two sides, to line them up by.",
      ...gluing,
      "Spray both faces of each joint with foam adhesive.",
      ...pressing,
      "Press the layers together from one end to the other, line to line.",
    ],
    uses: [...from, "marker", ...glue],
    makes: [to],
    check: `The block should now measure ${work.format.sizes(block.size)}.`,
    remedy: "Trim a face that stands out once the glue is dry, as carefully as in the cutting.",
    figure: `layers/${solid.id}/${block.id}`,
  });
}

function glueBlocks(solid: Solid, work: Work): Step[] {
  if (solid.joints.length === 0) return [];
  const names = solid.blocks.map((block) => blockName(solid.id, block.id, work));
  const joints = solid.joints.map(
    ({ blocks: [one, other], area }) =>
      `Mark the joint between ${blockName(solid.id, one, work)} and ${blockName(solid.id, other, work)}, ${work.format.area(area)}.`,
  );
  return [
    makeStep({
      id: `glue-${solid.id}`,
      group: "Foam",
      title: `Glue up the ${foamName(solid.id)}`,
      actions: [
        "Dry-fit the blocks as the figure shows.",
        ...joints,
        ...gluing,
        "Spray both faces of each joint with foam adhesive.",
        ...pressing,
        "Line up one edge of the joint.",
        "Press the blocks together from that edge.",
        "Leave the foam to dry as long as the can says.",
      ],
      uses: [...names, "marker", ...glue],
      makes: [foamName(solid.id)],
      check: `The foam should now measure ${work.format.sizes(solid.size)}.`,
      remedy: "Trim a step at a joint once the glue is dry, as carefully as in the cutting.",
      figure: `glue/${solid.id}`,
    }),
  ];
}
