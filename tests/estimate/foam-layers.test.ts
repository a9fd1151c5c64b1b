import { describe, expect, test } from "vitest";
import { coatedLayers, foamLayers, isCutInLayers } from "../../lib/estimate/foam-layers.ts";
import type { CutPlace } from "../../lib/packing/types.ts";
import type { BlockSpec } from "../../lib/project/types.ts";
import { makeBlock, makeCutPlan } from "../fixtures/plans/make.ts";

const place = (size: readonly number[], layer: readonly [number, number], copy = 1): CutPlace => ({
  part: "pouf/drum",
  copy,
  at: [0, 0, 0],
  size,
  layer,
  outline: null,
});
const cylinder = (along: "x" | "z"): BlockSpec => ({
  kind: "cylinder",
  id: "drum",
  at: [0, 0, 0],
  foam: null,
  diameter: 450,
  length: 360,
  along,
});
const three = [1, 2, 3].map((number) => place([450, 450, 120], [number, 3]));

describe("blocks glued up from layers", () => {
  // Area of a circle, πr²: Weisstein, "Circle", MathWorld. Two joints of a drum, each coated on both faces.
  test("three discs of a drum have two joints, each coated twice", () => {
    const drum = makeBlock({
      id: "drum",
      size: [450, 450, 360],
      volume: Math.PI * 225 ** 2 * 360,
    });
    const area = coatedLayers(drum, three, { isCutFirst: true });
    expect(area).toBeCloseTo(2 * 2 * Math.PI * 225 ** 2, 3);
  });

  // Worked by hand: 2 × 2 parts side by side leave a cross of two joints of 400 × 100 and 600 × 100.
  test("parts joined side by side count every joint once for each face", () => {
    const block = makeBlock({ id: "drum", size: [600, 400, 100], volume: 600 * 400 * 100 });
    const parts = [1, 2, 3, 4].map((number) => place([300, 200, 100], [number, 4]));
    expect(coatedLayers(block, parts, { isCutFirst: false })).toBe(2 * (400 * 100 + 600 * 100));
  });

  test("a block cut whole, and one that is not there, have no joint", () => {
    expect(coatedLayers(makeBlock({ id: "drum" }), [], { isCutFirst: false })).toBe(0);
    expect(foamLayers("pouf/drum", [])).toEqual([]);
  });

  test("an upright drum is cut in its layers, a lying one after gluing", () => {
    const block = makeBlock({ id: "drum", size: [450, 450, 360] });
    expect(isCutInLayers(cylinder("z"), block, three)).toBe(true);
    const lying = makeBlock({ id: "drum", size: [360, 450, 450] });
    const layers = [1, 2, 3].map((number) => place([360, 450, 150], [number, 3]));
    expect(isCutInLayers(cylinder("x"), lying, layers)).toBe(false);
    expect(isCutInLayers(cylinder("z"), block, [])).toBe(false);
  });

  test("layers of one copy are counted in a class set", () => {
    const used = {
      stockIndex: 1,
      size: [2000, 1000, 120],
      cuts: [],
      offcuts: [],
      places: [place([450, 450, 120], [2, 2]), place([450, 450, 120], [1, 2])].flatMap((one) => [
        one,
        { ...one, copy: 2 },
      ]),
    };
    const plan = makeCutPlan({ stock: "foam", kind: "slab", used: [used] });
    expect(foamLayers("pouf/drum", [plan]).map(({ layer }) => layer[0])).toEqual([1, 2]);
  });
});
