import { describe, expect, test } from "vitest";
import { meetingBlocks } from "../../lib/seams/meeting-blocks.ts";
import { box, cylinder, wedge } from "../fixtures/blocks.ts";
import { makeCover } from "../fixtures/make-cover.ts";

// A surface that can be sewn has two faces at every edge (Weisstein, "Manifold", MathWorld).
describe("blocks that meet in a line or a point", () => {
  const slab = box("slab", [400, 400, 50]);
  const near = box("near", [200, 200, 100], [0, 0, 50]);

  // On a slab that holds both, cloth runs round each: every edge has its own two sides.
  test.each([
    { name: "corner to corner", height: 100 },
    { name: "in part of an edge", height: 60 },
  ])("$name on a slab that holds both are named, and can be covered", ({ height }) => {
    const far = box("far", [200, 200, height], [200, 200, 50]);
    const { cover, fitted } = makeCover([slab, near, far]);
    expect(cover.sewable.faults).toEqual([]);
    expect(cover.refolds.ok).toBe(true);
    expect(meetingBlocks(fitted)).toEqual(["near", "far"]);
  });

  test.each([
    {
      name: "meet in an edge",
      blocks: [box("a", [200, 200, 100]), box("b", [200, 200, 100], [200, 200, 0])],
    },
    {
      name: "meet in a point",
      blocks: [box("a", [200, 200, 100]), box("b", [200, 200, 100], [200, 200, 100])],
    },
    {
      name: "are two wedges, thin end to thin end",
      blocks: [
        wedge("l", [300, 300, 100], "left"),
        wedge("r", [300, 300, 100], "right", [300, 0, 0]),
      ],
    },
    {
      name: "are a drum that touches a wall",
      blocks: [box("a", [100, 300, 300]), cylinder("b", 200, 300, "z", [100, 0, 0])],
    },
    {
      name: "stand apart",
      blocks: [box("a", [200, 200, 100]), box("b", [200, 200, 100], [300, 0, 0])],
    },
  ])("that $name and hold together nowhere else are bags that fold back", ({ blocks }) => {
    const { cover, fitted } = makeCover(blocks);
    expect(fitted.parts).toHaveLength(2);
    expect(cover.refolds.ok).toBe(true);
  });

  test("are none where blocks share a face, or only corners lie in line", () => {
    const shared = [slab, near];
    const steps = [slab, near, box("far", [150, 150, 100], [250, 250, 50])];
    // Edges of two blocks on one line, end to end.
    const row = [slab, near, box("next", [100, 200, 100], [300, 0, 50])];
    for (const blocks of [shared, steps, row]) {
      const { cover, fitted } = makeCover(blocks);
      expect(meetingBlocks(fitted)).toBeNull();
      expect(cover.sewable.faults).toEqual([]);
    }
  });
});
