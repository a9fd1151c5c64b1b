import type { Work } from "../estimate/types.ts";
import type { BlockSpec, PrismBlock } from "../project/types.ts";
import { makeStep } from "./make-step.ts";
import { blankOf } from "./list-foam-cutting.ts";
import { blockName, partName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** What is to be shaped: a blank, or the blank of every layer, and what each becomes. */
export interface Blanks {
  readonly solid: string;
  readonly spec: BlockSpec;
  readonly blanks: readonly string[];
  readonly shaped: readonly string[];
}

/** Draw the outline of a block on its blanks and cut it out. */
export function shapeBlock({ solid, spec, blanks, shaped }: Blanks, work: Work): Step {
  const own = blockName(solid, spec.id, work);
  const isRound = spec.kind === "cylinder" || spec.kind === "frustum";
  const isLayered = blanks.length > 1;
  const twin = blankOf(`${solid}/${spec.id}`, work)?.twin ?? null;
  const isPair = twin !== null && partName(twin, work) === own;
  const name =
    twin === null ? own : isPair ? `two of ${own}` : `${own} and ${partName(twin, work)}`;
  return makeStep({
    id: `shape-${solid}-${spec.id}`,
    group: "Foam",
    title: isLayered ? `Shape the layers of ${name}` : `Shape ${name}`,
    actions: [
      ...(isLayered ? ["Work on one blank after the other."] : []),
      ...shapeLines(spec, work),
      "Cut from line to line with the electric knife.",
      "Hold the blade on both lines at once.",
    ],
    uses: [
      ...blanks,
      "marker",
      "straightedge",
      "tape measure",
      "electric knife",
      ...(isRound ? ["string", "pins"] : []),
    ],
    makes: shaped,
    check: tapers(spec)
      ? "The cut should run straight from line to line."
      : "Both faces should show the same outline, and the cut should stand square to them.",
    remedy: "Trim the fuller side until the two agree.",
    figure: `block/${solid}/${spec.id}`,
    notes:
      twin === null
        ? []
        : [
            `One slanting cut gives both wedges from one blank. Turn one end for end: the two are alike.`,
            ...(isPair && work.project.copies % 2 === 1
              ? ["The last blank gives one to spare."]
              : []),
          ],
  });
}

function tapers({ kind }: BlockSpec): boolean {
  return kind === "wedge" || kind === "frustum";
}

/**
 * How the outline gets on the blank. The corners of a prism are in the figure.
 *
 * @source a circle with string and pin, two equal wedges by one cut: common practice, no source
 */
function shapeLines(spec: BlockSpec, work: Work): string[] {
  const { length } = work.format;
  const both = "Draw the same outline on the opposite face.";
  const middle = "Draw both diagonals of the blank to find its middle.";
  const circle = (radius: number, where: string) =>
    `Draw a circle of ${length(radius)} radius ${where}, with a pin, string and the marker.`;
  switch (spec.kind) {
    case "box":
      return [];
    case "wedge":
      return [
        "Draw a slanting line from corner to corner on one end with the marker.",
        "Draw the same line on the opposite end.",
      ];
    case "prism":
      return [
        ...cornerLines(spec, work),
        "Draw straight lines between the corners with the marker.",
        both,
      ];
    case "cylinder":
      return [middle, circle(spec.diameter / 2, "round it"), both];
    case "rounded":
      return [
        `Mark ${length(spec.radius)} from each corner to be rounded, along both its edges.`,
        `Draw the round between the marks, with a radius of ${length(spec.radius)}.`,
        both,
      ];
    case "frustum":
      return [
        middle,
        circle(spec.base / 2, "on the underside"),
        ...(spec.top > 0 ? [circle(spec.top / 2, "on the top")] : ["Mark the middle of the top."]),
      ];
  }
}

/** Beyond this many corners the figure serves better than a list. Our choice. */
const mostCorners = 8;

/** Corners of a prism, from the lower left corner of the box round its outline. */
function cornerLines({ outline }: PrismBlock, { format: { length } }: Work): string[] {
  if (outline.length > mostCorners)
    return ["Mark the corners of the outline on one face as the figure shows."];
  const left = Math.min(...outline.map(([x]) => x));
  const low = Math.min(...outline.map(([, y]) => y));
  return [
    "Measure across and up from the lower left corner of one face.",
    ...outline.map(
      ([x, y], index) =>
        `Mark corner ${index + 1}: ${length(x - left)} across, ${length(y - low)} up.`,
    ),
  ];
}
