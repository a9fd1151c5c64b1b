import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { readProject } from "../../lib/project/read-project.ts";
import { padPlay } from "../../lib/solids/design-pad.ts";

const file = "tests/fixtures/projects/padded-corner.md";
const [project] = readProject({ file, text: readFileSync(file, "utf8") }).projects;

describe("a loose pad in an inward corner", () => {
  const made = computePlan(project!);
  const pad = made.solids.find(({ id }) => id === "seat-pad")!;
  const cover = made.covers.find(({ solid }) => solid === "seat-pad")!;

  test("is a solid of its own, as large as the seat less its play, with the greatest free thickness", () => {
    expect(pad.size[0]).toBeCloseTo(1100 - 2 * padPlay, 6);
    expect(pad.size[1]).toBeCloseTo(500 - 120 - 2 * padPlay, 6);
    expect([30, 40, 50]).toContain(pad.size[2]);
  });

  test("comes out of the slabs that are cut anyway", () => {
    const [slab] = made.slabs;
    expect(slab!.short).toEqual([]);
    expect(
      slab!.used.flatMap(({ places }) => places).some(({ part }) => part === "seat-pad/pad"),
    ).toBe(true);
    expect(slab!.needed).toBeLessThanOrEqual(slab!.have);
  });

  test("has a cover that folds back and can be sewn, laid with the rest, and its own steps", () => {
    expect(cover.refolds.ok).toBe(true);
    expect(cover.sewable.ok).toBe(true);
    const laid = new Set(made.lays.flatMap(({ places }) => places.map(({ piece }) => piece)));
    cover.pieces.forEach(({ id }) => expect(laid.has(id)).toBe(true));
    const ids = made.steps.map(({ id }) => id);
    expect(ids.indexOf("insert-seat-pad")).toBeGreaterThan(0);
    expect(ids.indexOf("anchor-seat")).toBeGreaterThan(ids.indexOf("close-seat-pad"));
    expect(made.findings.some(({ id }) => id.startsWith("cloth-lifts"))).toBe(false);
  });

  test("leaves the author's own panels their names", () => {
    const own = made.covers.find(({ solid }) => solid === "seat")!;
    expect(own.panels[0]!.id).toBe("P1");
    expect(cover.panels[0]!.id).toBe("seat-pad-P1");
  });
});
