import { describe, expect, test } from "vitest";
import { slabParts } from "../../lib/packing/list-parts.ts";
import { readProjects } from "../../lib/project/read-projects.ts";
import { computePlan } from "../../lib/booklet/compute-plan.ts";

const ramp = (copies: number, height: number, kerf: number) => {
  const text = `---
title: Ramp
units: cm
summary: A ramp.
copies: ${copies}
stock: {foam: {kind: slab, size: [120, 60, 10], kerf: ${kerf}}}
solids: {ramp: {foam: foam, blocks: {slope: {wedge: {size: [40, 30, ${height}], rises: back}}}}}
---
A ramp.
`;
  const { projects, faults } = readProjects([{ file: "content/ramp.md", text }]);
  expect(faults).toEqual([]);
  return slabParts(projects[0]!, computePlan(projects[0]!).solids, "foam");
};

describe("a wedge in a class set", () => {
  // By hand: a cut of 0.3 cm along a slant of √(30² + 8²) over a run of 30 takes 0.3 · 31.05 / 30 more.
  test.each([
    { copies: 1, blanks: 1, height: 8 },
    { copies: 2, blanks: 1, height: 8 + (0.3 * Math.hypot(30, 8)) / 30 },
    { copies: 5, blanks: 3, height: 8 + (0.3 * Math.hypot(30, 8)) / 30 },
  ])("$copies of them come from $blanks blanks", ({ copies, blanks, height }) => {
    const [part, ...others] = ramp(copies, 8, 0.3);
    expect(others).toEqual([]);
    expect(part!.copies).toBe(blanks);
    expect(part!.size[2]).toBeCloseTo(10 * height, 9);
    expect(part!.twin).toBe(copies > 1 ? "ramp/slope" : undefined);
  });

  test("as high as the slab keeps a blank of its own: the kerf would take a layer more", () => {
    const [part] = ramp(4, 10, 0.3);
    expect(part!.copies).toBe(4);
    expect(part!.twin).toBeUndefined();
    expect(ramp(4, 10, 0)[0]!.copies).toBe(2);
  });
});
