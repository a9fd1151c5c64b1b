import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findWays } from "../../lib/panels/find-ways.ts";
import { refoldPanels } from "../../lib/panels/refold-panel.ts";
import { graphSolid } from "../../lib/panels/unfold-panel.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { anyBlocks } from "../fixtures/random-blocks.ts";

const options = {
  cloth: { usableWidth: 1400, direction: "any", allowance: 10 },
  seamed: new Set<string>(),
  field: "panels",
} as const;

describe("panels of any solid", () => {
  test("keep its area and fold back to it", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        const solid = buildSolid({ id: "any", foam: null, blocks });
        const { ways } = findWays(solid, "plain", options);
        const area = ways[0]!.panels.reduce((sum, panel) => sum + panel.area, 0);
        // Flattened free curves lose at most a few parts in ten thousand of a face.
        expect(Math.abs(area - solid.area) / solid.area).toBeLessThan(1e-6);
        const { worst } = refoldPanels(ways[0]!.panels, graphSolid(solid));
        expect(worst).toBeLessThan(1e-6);
      }),
      { numRuns: 100, seed: 20261125 },
    );
  }, 120_000);
});
