import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import { anchoredEdges } from "../solids/anchored-edges.ts";
import type { Solid } from "../solids/types.ts";
import { makeStep } from "./make-step.ts";
import { coverName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** Hold the cloth down in inward corners, the way the author chose; a loose pad where none was chosen. */
export function anchorCorners(solid: Solid, cover: Cover, work: Work): Step[] {
  const inward = anchoredEdges(solid);
  if (inward.length === 0) return [];
  const closed = `${cover.closing === null ? "filled" : "closed"} ${coverName(cover.solid)}`;
  const lengths = inward.map(({ length }) => work.format.length(length)).join(", ");
  const anchor = work.project.solids.find(({ id }) => id === solid.id)?.cover?.anchor ?? "pad";
  const common = { id: `anchor-${solid.id}`, group: "Fitting", figure: `anchor/${solid.id}` };
  const made = work.project.solids.find(({ padOf }) => padOf === solid.id);
  switch (anchor) {
    case "pad":
      if (made !== undefined) return [layPad(made.id, { closed, common, work })];
      return [
        makeStep({
          ...common,
          title: "Lay a loose pad in the inward corner",
          actions: [
            `Measure the inward edges of the ${closed}: ${lengths}.`,
            "Cut a pad that long from an offcut with the electric knife.",
            "Push the pad into the corner, on top of the cloth.",
          ],
          uses: [closed, "foam offcut", "tape measure", "electric knife"],
          makes: ["loose pad"],
          check: "The cloth should stay down when you slide a hand over it.",
          remedy: "Use a thicker pad, or tack the corner by hand.",
        }),
      ];
    case "tacks":
      return [
        makeStep({
          ...common,
          title: "Tack the inward corner by hand",
          actions: [
            `Push the cloth of the ${closed} into the corner.`,
            "Sew a small tack into the foam every hand's breadth, with the hand needle.",
            "Hide each knot under the cloth.",
          ],
          uses: [closed, "hand needle", "thread"],
          check: `The tacks should run along ${lengths}, and the cloth should stay down.`,
          remedy: "Set the tacks closer together.",
        }),
      ];
    case "seam":
      return [
        makeStep({
          ...common,
          title: "Catch the seam down in the inward corner",
          actions: [
            `Push the seam of the ${closed} into the corner.`,
            "Sew through the seam into the foam with long stitches, using the hand needle.",
            "Knot the thread inside the seam.",
          ],
          uses: [closed, "hand needle", "thread"],
          check: `The seam should lie in the corner along ${lengths}.`,
          remedy: "Add a stitch where the cloth lifts.",
        }),
      ];
  }
}

/** The pad has a foam and a cover of its own: it only has to be laid in. */
function layPad(
  pad: string,
  {
    closed,
    common,
    work,
  }: {
    readonly closed: string;
    readonly common: Pick<Step, "id" | "group" | "figure">;
    readonly work: Work;
  },
): Step {
  const cover = work.covers.find((one) => one.solid === pad);
  const filled = `${cover?.closing ? "closed" : "filled"} ${coverName(pad)}`;
  return makeStep({
    ...common,
    title: "Lay the loose pad on the seat",
    actions: [
      `Push the cloth of the ${closed} into the inward corners.`,
      `Lay the ${filled} on it.`,
      "Press the pad down into the corners.",
    ],
    uses: [closed, filled],
    check: "The cloth should stay down when you slide a hand over it.",
    remedy: "Turn the pad over: the other side may fit more closely.",
  });
}
