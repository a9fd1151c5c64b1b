import { describe, expect, test } from "vitest";
import { planCuts } from "../../lib/booklet/plan-cuts.ts";
import { makeFormat } from "../../lib/units/make-format.ts";
import type { Project, SlabStock } from "../../lib/project/types.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { blockSeat, inch, inches } from "../fixtures/blocks.ts";
import { cutInches, listPanels, makeCover } from "../fixtures/make-cover.ts";
import { smallProject } from "../fixtures/small-project.ts";

// Common practice, no source: how a seat of foam blocks, 24 wide, 18 deep and 18 high in inches (back
// 6 thick, arms 5 wide and 12 high, seat 6 high), is drafted by hand.
const byHand = listPanels(
  ["back/top", "back/front"],
  ["arm-left/front"],
  ["back/left"],
  ["back/right"],
  ["arm-left/top", "arm-left/right", "seat/top", "arm-right/left", "arm-right/top"],
  ["back/back"],
  ["back/underside"],
);

const inInches = (sizes: readonly number[]) =>
  sizes.map((size) => Math.round((size / inch) * 1e6) / 1e6);
const square = inch ** 2;

describe("the block seat as a solid", () => {
  const seat = buildSolid({ id: "seat", foam: null, blocks: blockSeat });

  test("has 12 outside faces", () => {
    expect(seat.faces.length).toBe(12);
  });

  test("holds 5040 cubic inches", () => {
    expect(seat.volume / inch ** 3).toBeCloseTo(5040, 6);
  });

  test("is glued over 60, 60, 72, 72 and 84 square inches", () => {
    const areas = seat.joints.map(({ area }) => Math.round((area / square) * 1e4) / 1e4);
    expect(areas.toSorted((a, b) => a - b)).toEqual([60, 60, 72, 72, 84]);
  });

  test("holds together as one", () => {
    expect(seat.parts.length).toBe(1);
  });
});

describe("the block seat by the list a practitioner drafts", () => {
  const { cover } = makeCover(blockSeat, { panels: byHand });
  const panel = (name: string) => cover.panels.find(({ label }) => label === name)!;

  test("has seven panels and no others", () => {
    expect(cover.panels.map(({ label }) => label)).toEqual(byHand.map(({ name }) => name));
  });

  test.each([
    { name: "back/top", what: "a T", size: [24, 18], corners: 8, area: 24 * 6 + 24 * 6 + 14 * 6 },
    { name: "arm-left/front", what: "a U", size: [24, 12], corners: 8, area: 2 * 5 * 12 + 14 * 6 },
    { name: "back/left", what: "an L", size: [18, 18], corners: 6, area: 6 * 18 + 12 * 12 },
    { name: "back/right", what: "an L", size: [18, 18], corners: 6, area: 6 * 18 + 12 * 12 },
    { name: "arm-left/top", what: "a strip", size: [36, 12], corners: 4, area: 36 * 12 },
    { name: "back/back", what: "a plate", size: [24, 18], corners: 4, area: 24 * 18 },
    { name: "back/underside", what: "a plate", size: [24, 18], corners: 4, area: 24 * 18 },
  ])("has $name as $what of $size in with $corners corners", ({ name, size, corners, area }) => {
    expect(inInches(panel(name).size).toSorted((a, b) => b - a)).toEqual(size);
    expect(panel(name).shape.outer.length).toBe(corners);
    expect(panel(name).area / square).toBeCloseTo(area, 6);
  });

  test("has its two L panels mirror images of one another", () => {
    expect(panel("back/right").mirrorOf).toBe(panel("back/left").id);
    expect(panel("back/right").sameAs).toBeNull();
  });

  test("folds back exactly", () => {
    expect(cover.refolds.ok).toBe(true);
    expect(cover.refolds.worst).toBeLessThan(1e-6);
  });

  test("is cut half an inch outside the seam line all round", () => {
    const back = cover.pieces.find(({ label }) => label === "back/back")!;
    expect(cutInches(back)[0]).toBeCloseTo(19, 9);
    expect(cutInches(back)[1]).toBeCloseTo(25, 9);
  });
});

describe("the block seat in a one-way print", () => {
  const { cover } = makeCover(blockSeat, {}, { direction: "one-way" });

  test("turns the print on no face that is seen", () => {
    expect(cover.ways[0]!.turnedFaces).toEqual([]);
  });

  test("takes the strip over arms and seat apart and says why", () => {
    const strip = ["arm-left/top", "arm-left/right", "seat/top", "arm-right/left", "arm-right/top"];
    const longest = cover.panels.map(
      ({ faces }) => faces.filter(({ face }) => strip.includes(face)).length,
    );
    expect(Math.max(...longest)).toBeLessThan(strip.length);
    expect(cover.ways[0]!.reasons.join(" ")).toMatch(/turn the print/);
  });

  test("keeps every visible piece upright on the cloth", () => {
    const under = cover.panels.filter(({ faces }) =>
      faces.some(({ face }) => face.endsWith("underside")),
    );
    cover.pieces.forEach(({ id, isUpright }) => {
      if (!under.some((panel) => panel.id === id && panel.faces.length === 1))
        expect(isUpright).toBe(true);
    });
  });
});

describe("the block seat from slabs", () => {
  test("takes two slabs of 36 × 22 × 6 in", () => {
    const slab: SlabStock = {
      kind: "slab",
      id: "slab",
      label: "slab",
      size: inches(36, 22, 6),
      have: 2,
      density: null,
      hardness: null,
      kerf: 0,
      price: null,
    } as SlabStock;
    const project: Project = { ...smallProject, copies: 1, stock: [slab], pieces: [] };
    const seat = buildSolid({ id: "seat", foam: "slab", blocks: blockSeat });
    const { slabs } = planCuts(project, [seat], makeFormat(project));
    expect(slabs.length).toBe(1);
    expect(slabs[0]!.used.length).toBe(2);
    expect(slabs[0]!.short).toEqual([]);
  });
});
