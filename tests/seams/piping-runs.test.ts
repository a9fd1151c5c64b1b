import { describe, expect, test } from "vitest";
import { pipingRuns } from "../../lib/seams/piping-runs.ts";
import { pipedPad } from "../fixtures/piped-pad.ts";

const box = "{box: [60, 40, 5]}";
const drum = "{cylinder: {diameter: 40, length: 10, along: z}}";

describe("lengths of piping", () => {
  // Worked by hand: round the pad 2 × (600 + 400), round the drum 400 π.
  test.each([
    { block: box, along: "slab/top", rings: [2000] },
    { block: box, along: "slab/top, slab/underside", rings: [2000, 2000] },
    { block: drum, along: "slab/top, slab/underside", rings: [400 * Math.PI, 400 * Math.PI] },
    { block: drum, along: "slab/around", rings: [400 * Math.PI, 400 * Math.PI] },
    // Two sides of a box share an upright edge, so that their piping hangs together.
    { block: box, along: "slab/top, slab/front", rings: [2000 + 600 + 2 * 50] },
  ])("along $along of $block are $rings", ({ block, along, rings }) => {
    const plan = pipedPad({ block, along });
    const [cover] = plan.covers;
    const runs = pipingRuns(cover!);
    expect(runs).toHaveLength(rings.length);
    runs.forEach(({ length }, i) => expect(length).toBeCloseTo(rings[i]!, 6));
    // The ends of each length overlap by 50.
    const total = rings.reduce((sum, ring) => sum + ring + 50, 0);
    expect(plan.materials.find(({ id }) => id === "cord/pad")!.quantity).toBeCloseTo(total, 6);
    const strip = cover!.pieces.find(({ id }) => id === "pad-piping")!;
    const joined = strip.cut * strip.cutSize[0] - (strip.cut - 1) * 2 * 15;
    expect(joined).toBeGreaterThanOrEqual(total - 1e-6);
    // Each length goes on to a panel that has its seams.
    for (const { panel, seams } of runs) {
      const own = cover!.seams.filter(({ id }) => seams.includes(id));
      expect(own.some(({ panels }) => panels.includes(panel))).toBe(true);
    }
  });

  test("of two rings are told and drawn as two", () => {
    const plan = pipedPad({ block: drum, along: "slab/top, slab/underside" });
    const step = plan.steps.find(({ id }) => id === "pipe-pad")!;
    expect(step.actions[0]).toBe("Cut the piping into 2 lengths of 130.7 cm.");
    expect(step.actions.filter((action) => action.startsWith("Pin one length"))).toHaveLength(2);
    expect(step.actions.some((action) => action.includes("round curves"))).toBe(true);
    expect(step.actions.some((action) => action.includes("each corner"))).toBe(false);
  });
});
