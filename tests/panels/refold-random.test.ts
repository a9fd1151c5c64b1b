import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { refoldPanels } from "../../lib/panels/refold-panel.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { panelsBy } from "../fixtures/plain-panels.ts";
import { anyBlocks } from "../fixtures/random-blocks.ts";

describe("panels of any solid", () => {
  test.each(["plain", "auto"] as const)(
    "keep its area and fold back to it by the rule %s",
    (rule) => {
      fc.assert(
        fc.property(anyBlocks(3), (blocks) => {
          const solid = buildSolid({ id: "any", foam: null, blocks });
          const { panels, graph } = panelsBy(rule, solid);
          const area = panels.reduce((sum, panel) => sum + panel.area, 0);
          expect(Math.abs(area - solid.area) / solid.area).toBeLessThan(1e-6);
          expect(refoldPanels(panels, graph).worst).toBeLessThan(1e-6);
        }),
        { numRuns: 60, seed: 20261125, endOnFailure: process.env["SHRINK"] !== "1" },
      );
    },
  );
});
