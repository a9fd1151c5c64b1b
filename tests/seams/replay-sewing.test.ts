import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { proveSewing } from "../../lib/seams/build-cover.ts";
import type { SewingPass } from "../../lib/seams/types.ts";
import { blockSeat, box, cylinder } from "../fixtures/blocks.ts";
import { makeCover } from "../fixtures/make-cover.ts";
import { anyBlocks } from "../fixtures/random-blocks.ts";
import { sewPanels } from "../fixtures/sew-panels.ts";

const runs = { numRuns: 25, seed: 23, endOnFailure: true };

describe("the order of sewing", () => {
  test.each(["open", "closing"] as const)(
    "of any form, its opening %s, leaves every seam in reach of the machine",
    (openState) => {
      fc.assert(
        fc.property(anyBlocks(4), (blocks) => {
          const { solid, panels, seams, passes } = sewPanels(blocks, { openState });
          // A form in two parts has two covers.
          fc.pre(solid.parts.length === 1);
          expect(proveSewing(panels, seams, passes)).toEqual({ ok: true, faults: [] });
        }),
        runs,
      );
    },
  );

  test("of a cushion with a plate to each side joins the boxing first, then goes round in one", () => {
    // Common practice, no source: short joins first, then the plates.
    const plates = ["b/top", "b/underside", "b/front", "b/right", "b/back", "b/left"];
    const { cover } = makeCover([box("b", [500, 400, 80])], {
      panels: plates.map((face) => ({ name: face, faces: [face] })),
    });
    const [first, second] = cover.passes;
    expect([first!.length, second!.length]).toEqual([80, 80]);
    // Eleven seams, each sewn by itself, would be eleven starts.
    expect(cover.passes.length).toBeLessThan(7);
    expect(Math.max(...cover.passes.map(({ seams }) => seams.length))).toBeGreaterThan(2);
  });

  test("is refused where a seam is sewn twice, left out, out of turn, or shuts the work up", () => {
    const { panels, seams, passes } = sewPanels(blockSeat, { openState: "closing" });
    const [first, ...rest] = passes as [SewingPass, ...SewingPass[]];
    const closing = passes.filter(({ state }) => state === "closing");
    const others = passes.filter(({ state }) => state !== "closing");
    const prove = (order: readonly SewingPass[]) => proveSewing(panels, seams, order).faults.join();
    expect(prove([first, first, ...rest])).toMatch(/sewn already/);
    expect(prove(rest)).toMatch(/never sewn|unbroken/);
    expect(prove([...others, ...closing])).toMatch(/no longer spreads flat/);
    const bent = passes.map((pass) => ({ ...pass, corners: [] }));
    expect(prove(bent)).toMatch(/corner that is not listed/);
    const tight = passes.map((pass) => ({
      ...pass,
      corners: pass.corners.map((corner) => ({ ...corner, clip: null })),
    }));
    expect(prove(tight)).toMatch(/cannot open/);
    const backwards = passes.toReversed();
    expect(prove(backwards)).toMatch(/unbroken/);
  });

  test("of a drum closes the strip before the rings, and sews what the opening leaves of one last", () => {
    const { cover } = makeCover([cylinder("drum", 300, 200)]);
    expect(cover.passes.map(({ isRing }) => isRing)).toEqual([false, true, false]);
  });
});
