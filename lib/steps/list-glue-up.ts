import type { Work } from "../estimate/types.ts";
import type { BlockSpec } from "../project/types.ts";
import type { Solid, SolidBlock } from "../solids/types.ts";
import { slabPartName } from "./list-foam-cutting.ts";
import { makeStep } from "./make-step.ts";
import { blockName, foamName } from "./name-parts.ts";
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
    ...solid.blocks.flatMap((block) => [
      ...joinLayers(solid, block, work),
      ...shapeBlock(solid, block, work),
    ]),
    ...glueBlocks(solid, work),
  ]);
}

function joinLayers(solid: Solid, block: SolidBlock, work: Work): Step[] {
  const part = `${solid.id}/${block.id}`;
  const places = work.slabs
    .flatMap((plan) => plan.used.flatMap((used) => used.places))
    .filter((one) => one.part === part);
  const layered = places.filter(({ layer }) => layer[1] > 1);
  if (layered.length === 0) return [];
  const layers = [...new Set(layered.map((place) => slabPartName(part, place.layer, work)))];
  const whole = slabPartName(part, [1, 1], work);
  return [
    makeStep({
      id: `layer-${solid.id}-${block.id}`,
      group: "Foam",
      title: `Glue the layers of ${blockName(solid.id, block.id, work)}`,
      actions: [
        "Dry-fit the layers edge to edge.",
        ...gluing,
        "Spray both faces of each joint with foam adhesive.",
        ...pressing,
        "Press the layers together from one end to the other.",
      ],
      uses: [...layers, ...glue],
      makes: [whole],
      check: `The block should now measure ${work.format.sizes(block.size)}.`,
      remedy: "Trim a face that stands out once the glue is dry, as carefully as in the cutting.",
      figure: `solid/${solid.id}`,
    }),
  ];
}

function shapeBlock(solid: Solid, block: SolidBlock, work: Work): Step[] {
  const spec = work.project.solids
    .find(({ id }) => id === solid.id)
    ?.blocks.find(({ id }) => id === block.id);
  if (spec === undefined || spec.kind === "box" || block.foam === null) return [];
  const name = blockName(solid.id, block.id, work);
  return [
    makeStep({
      id: `shape-${solid.id}-${block.id}`,
      group: "Foam",
      title: `Shape ${name}`,
      actions: [
        ...shapeLines(spec, work),
        "Cut from line to line with the electric knife.",
        "Hold the blade level with both lines.",
      ],
      uses: [`blank for ${name}`, "marker", "straightedge", "tape measure", "electric knife"],
      makes: [name],
      check: "Both ends should show the same outline.",
      remedy: "Trim the fuller end until the two agree.",
      figure: `solid/${solid.id}`,
    }),
  ];
}

/** How the outline gets on the blank. The corners of a prism are in the figure. */
function shapeLines(spec: BlockSpec, { format: { length } }: Work): string[] {
  const both = "Draw the same line on the opposite face with the marker.";
  switch (spec.kind) {
    case "box":
      return [];
    case "wedge":
      return ["Draw a slanting line from corner to corner on one end with the marker.", both];
    case "prism":
      return [
        "Mark the corners of the outline on one face as the figure shows.",
        "Draw straight lines between the corners with the marker.",
        both,
      ];
    case "cylinder":
      return [
        `Draw a circle of ${length(spec.diameter / 2)} radius on one end with the marker.`,
        both,
      ];
    case "rounded":
      return [`Draw each round corner with a radius of ${length(spec.radius)} on the top.`, both];
    case "frustum":
      return [
        `Draw a circle of ${length(spec.base / 2)} radius on the underside with the marker.`,
        `Draw a circle of ${length(spec.top / 2)} radius in the middle of the top.`,
      ];
  }
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
