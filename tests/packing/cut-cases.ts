import { expect } from "vitest";
import type { CutPlan, Part, UsedStock } from "../../lib/packing/types.ts";
import type { SheetStock, SlabStock } from "../../lib/project/types.ts";
import type { LengthStock } from "../../lib/packing/plan-boards.ts";

/** One inch in millimetres. */
export const inch = 25.4;

export const part = (id: string, size: readonly number[], copies = 1, canTurn = true): Part => ({
  id,
  label: id,
  copies,
  size,
  outline: null,
  canTurn,
});

export const slab = (
  size: readonly [number, number, number],
  have = 0,
  kerf = 0,
  id = "foam",
): SlabStock => ({
  kind: "slab",
  id,
  label: id,
  size,
  have,
  kerf,
  density: null,
  hardness: null,
  price: null,
});

export const sheet = (
  size: readonly [number, number],
  change: Partial<SheetStock> = {},
): SheetStock => ({
  kind: "sheet",
  id: "ply",
  label: "ply",
  size,
  thickness: 12,
  kerf: 0,
  grain: "none",
  have: 0,
  price: null,
  ...change,
});

export const board = (length: number, kerf = 0, have = 0, id = "batten"): LengthStock => ({
  id,
  label: id,
  length,
  kerf,
  have,
  price: null,
});

/** Slack for sums of decimal millimetres. */
const slack = 1e-6;

type Box = { readonly at: readonly number[]; readonly size: readonly number[] };

/** Whether two boxes keep at least a kerf apart along some axis. */
const areApart = (one: Box, two: Box, kerf: number): boolean =>
  one.at.some(
    (at, i) =>
      at + one.size[i]! + kerf <= two.at[i]! + slack ||
      two.at[i]! + two.size[i]! + kerf <= at + slack,
  );

const isInside = (inner: Box, outer: Box): boolean =>
  inner.at.every(
    (at, i) =>
      at >= outer.at[i]! - slack && at + inner.size[i]! <= outer.at[i]! + outer.size[i]! + slack,
  );

/** Nothing overlaps or hangs off, and a kerf lies between every two pieces. */
export function expectSoundStock(used: UsedStock, kerf: number): void {
  const whole: Box = { at: used.size.map(() => 0), size: used.size };
  const boxes: readonly Box[] = [...used.places, ...used.offcuts];
  for (const box of boxes) expect(isInside(box, whole)).toBe(true);
  boxes.forEach((one, i) => {
    for (const two of boxes.slice(i + 1)) expect(areApart(one, two, kerf)).toBe(true);
  });
}

/**
 * Do the cuts on paper: each must divide a piece that is there at the time, and at the end every
 * place must be one of the pieces.
 */
export function expectCutsWork(used: UsedStock, kerf: number): void {
  let pieces: Box[] = [{ at: used.size.map(() => 0), size: used.size }];
  used.cuts.forEach((cut, i) => {
    expect(cut.order).toBe(i + 1);
    if (cut.kind === "free") return;
    const piece = pieces.find((each) => isSame(each, cut.of));
    expect(piece, `cut ${cut.order} divides a piece that is there`).toBeDefined();
    const near = cut.at - cut.of.at[cut.axis]!;
    const far = cut.of.size[cut.axis]! - near - kerf;
    expect(near).toBeGreaterThan(0);
    const withSize = (value: number): readonly number[] =>
      cut.of.size.map((each, axis) => (axis === cut.axis ? value : each));
    const moved = cut.of.at.map((each, axis) => (axis === cut.axis ? cut.at + kerf : each));
    pieces = [
      ...pieces.filter((each) => each !== piece),
      { at: cut.of.at, size: withSize(near) },
      { at: moved, size: withSize(far) },
    ];
  });
  for (const place of used.places) {
    expect(pieces.some((each) => isSame(each, place))).toBe(true);
  }
}

const isSame = (one: Box, two: Box): boolean =>
  one.at.every(
    (at, i) => Math.abs(at - two.at[i]!) < 1e-3 && Math.abs(one.size[i]! - two.size[i]!) < 1e-3,
  );

/** Every copy of every part is there once, whole or in all its layers. */
export function expectAllCut(plans: readonly CutPlan[], parts: readonly Part[]): void {
  const places = plans.flatMap(({ used }) => used.flatMap((each) => each.places));
  for (const { id, copies, size } of parts) {
    for (let copy = 1; copy <= copies; copy++) {
      const own = places.filter((place) => place.part === id && place.copy === copy);
      const layers = own.map(({ layer }) => layer[0]).sort((a, b) => a - b);
      expect(layers).toEqual(Array.from({ length: own[0]?.layer[1] ?? 1 }, (_, i) => i + 1));
      const content = (sizes: readonly number[]) => sizes.reduce((all, each) => all * each, 1);
      const made = own.reduce((sum, place) => sum + content(place.size), 0);
      expect(made / content(size)).toBeCloseTo(1, 6);
    }
  }
}

/** Everything a plan must be, whatever it holds. */
export function expectSoundPlans(
  plans: readonly CutPlan[],
  parts: readonly Part[],
  kerf: number,
): void {
  expectAllCut(plans, parts);
  for (const plan of plans) {
    expect(plan.needed).toBe(plan.used.length);
    expect(plan.lowerBound).toBeLessThanOrEqual(plan.needed);
    for (const used of plan.used) {
      expectSoundStock(used, kerf);
      expectCutsWork(used, kerf);
    }
  }
}
