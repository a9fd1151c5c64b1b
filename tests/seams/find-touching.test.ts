import { describe, expect, test } from "vitest";
import { box, cylinder, wedge } from "../fixtures/blocks.ts";
import { meetingBlocks } from "../../lib/seams/meeting-blocks.ts";
import { makeCover, tryCover } from "../fixtures/make-cover.ts";

// A surface that can be sewn has two faces at every edge (Weisstein, "Manifold", MathWorld).
describe("blocks that no one cover can hold", () => {
  const slab = box("slab", [400, 400, 50]);
  const near = box("near", [200, 200, 100], [0, 0, 50]);
  test.each([
    {
      name: "meet in an edge",
      blocks: [box("a", [200, 200, 100]), box("b", [200, 200, 100], [200, 200, 0])],
      at: "b",
      other: "a",
    },
    {
      name: "meet in a point",
      blocks: [box("a", [200, 200, 100]), box("b", [200, 200, 100], [200, 200, 100])],
      at: "b",
      other: "a",
    },
    {
      name: "are two wedges, thin end to thin end",
      blocks: [
        wedge("l", [300, 300, 100], "left"),
        wedge("r", [300, 300, 100], "right", [300, 0, 0]),
      ],
      at: "r",
      other: "l",
    },
    {
      name: "are a drum that touches a wall",
      blocks: [box("a", [100, 300, 300]), cylinder("b", 200, 300, "z", [100, 0, 0])],
      at: "b",
      other: "a",
    },
    {
      name: "stand apart",
      blocks: [box("a", [200, 200, 100]), box("b", [200, 200, 100], [300, 0, 0])],
      at: "b",
      other: "a",
    },
  ])("are one fault that names both where they $name", ({ blocks, at, other }) => {
    const { cover, faults } = tryCover(blocks);
    expect(cover).toBeNull();
    expect(faults.map(({ field }) => field)).toEqual([`solids.form.blocks.${at}`]);
    expect(faults[0]!.fault).toContain(other);
  });

  // On a slab that holds both, cloth runs round each: every edge has its own two sides.
  test.each([
    { name: "corner to corner", height: 100 },
    { name: "in part of an edge", height: 60 },
  ])("are none where two meet $name on a slab that holds both, which can be sewn", ({ height }) => {
    const far = box("far", [200, 200, height], [200, 200, 50]);
    const { cover, fitted } = makeCover([slab, near, far]);
    expect(cover.sewable.faults).toEqual([]);
    expect(cover.refolds.ok).toBe(true);
    expect(meetingBlocks(fitted)).toEqual(["near", "far"]);
  });

  test("are none where they share a face, or only corners lie in line", () => {
    expect(makeCover([slab, near]).cover.sewable.faults).toEqual([]);
    const steps = [slab, near, box("far", [150, 150, 100], [250, 250, 50])];
    expect(makeCover(steps).cover.sewable.faults).toEqual([]);
    // Edges of two blocks on one line, end to end.
    const row = [slab, near, box("next", [100, 200, 100], [300, 0, 50])];
    expect(makeCover(row).cover.sewable.faults).toEqual([]);
  });
});
