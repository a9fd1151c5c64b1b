import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import { makeStep } from "./make-step.ts";
import { coverName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** Close the filled cover, by its kind of closing. */
export function closeCover(cover: Cover, work: Work): Step[] {
  const { closing } = cover;
  if (closing === null) return [];
  const filled = `filled ${coverName(cover.solid)}`;
  const common = {
    id: `close-${cover.solid}`,
    group: "Fitting",
    title: "Close the cover",
    makes: [`closed ${coverName(cover.solid)}`],
    figure: `close/${cover.solid}`,
  };
  switch (closing.kind) {
    case "zip":
      return [
        makeStep({
          ...common,
          actions: [
            "Hold the two edges together ahead of the slider.",
            `Close the zip of the ${filled} a little at a time.`,
          ],
          uses: [filled, "zip"],
          check: "The zip should lie flat and close without force.",
          remedy: "Push the foam back from the opening before you pull.",
        }),
      ];
    case "hook-and-loop":
      return [
        makeStep({
          ...common,
          actions: [`Press the tapes of the ${filled} together from one end to the other.`],
          uses: [filled, "hook-and-loop tape"],
          check: "The edge should lie flat without a gape.",
          remedy: "Open it again and start from the other end.",
        }),
      ];
    case "ties":
      return [
        makeStep({
          ...common,
          actions: [`Tie the ties of the ${filled} in bows, from the middle outwards.`],
          uses: [filled, "ties"],
          check: "The edges should meet between the ties.",
          remedy: "Sew on a further pair where they gape.",
        }),
      ];
    case "hand-sewn":
      return [
        makeStep({
          ...common,
          actions: [
            `Turn in the allowances along the opening of the ${filled}.`,
            `Pin the edges together every ${work.format.length(work.project.units === "in" ? 50.8 : 50)}.`,
            "Knot a doubled thread.",
            `Sew the opening shut with ladder stitches, using the hand needle.`,
            "Hide the last knot inside.",
            "Count the pins.",
          ],
          uses: [filled, "pins", "hand needle", "thread"],
          check: `${work.format.length(closing.run)} should be closed, with no stitch showing and every pin back in its box.`,
          remedy: "Take a loose stitch up with the needle before you knot off.",
        }),
      ];
  }
}
