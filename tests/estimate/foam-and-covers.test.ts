import { describe, expect, test } from "vitest";
import { rules } from "../../lib/checks/rules.ts";
import { coverageByCoat, squareMetresPerLitre } from "../../lib/estimate/coverage.ts";
import { foamGrade } from "../../lib/estimate/foam-grade.ts";
import { densityFromPoundsPerCubicFoot } from "../../lib/estimate/pounds-per-cubic-foot.ts";
import { replacementFoam } from "../../lib/estimate/replacement-foam.ts";
import type { BlockSpec } from "../../lib/project/types.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { listSteps } from "../../lib/steps/list-steps.ts";
import { wedge } from "../fixtures/blocks.ts";
import * as make from "../fixtures/plans/make.ts";

const inch = 25.4;
const pound = 4.4482216152605;

describe("foam against its cover", () => {
  // Foam Factory, How to measure, https://www.thefoamfactory.com/seatcushion/diy_measure.html: 1 in more in each
  // measure, thickness then to a whole inch; 4 1/2 becomes 5 1/2 and is cut 5, 4 3/4 becomes 5 3/4 and is cut 6
  test.each([
    [4.5, 5],
    [4.75, 6],
    [4, 5],
  ])("for a cover %d in thick, foam of %d in is bought", (cover, foam) => {
    const [width, depth, thickness] = replacementFoam([22 * inch, 20 * inch, cover * inch]);
    expect([width, depth].map((mm) => mm / inch)).toEqual([23, 21]);
    expect(thickness / inch).toBeCloseTo(foam, 9);
  });

  // The same page, 1 in; a boating magazine, 1/4 in a side, so 1/2 in on length and width of new foam: a band
  test("a cover may be smaller than its foam by the published half inch to an inch", () => {
    expect(rules["cover-tight"].usual).toBeGreaterThanOrEqual(0.5 * inch);
    expect(rules["cover-tight"].usual).toBeLessThanOrEqual(inch);
    expect(rules["cover-tight"].most).toBe(inch);
  });

  // Upholstery Supplies Guide, http://www.upholstery-supplies-guide.com/upholstery-batting.html, 1 to 1 1/2 in;
  // cushionworks.blogspot.com/2011/06, about 1 in each side
  test("batting is as thick as the trade sells it", () => {
    expect(rules["cover-loose"].thinWrap).toBe(inch);
    expect(rules["cover-loose"].wrap).toBeCloseTo(1.5 * inch, 9);
  });
});

describe("foam by number", () => {
  // Upholstery Resource, http://upholsteryresource.com/node/81; Richardson Seating, How to buy foam
  test.each([
    ["2535", 2.5, 35],
    ["1560", 1.5, 60],
    ["2860", 2.8, 60],
  ])("%s is %d lb a cubic foot and %d lb hard", (grade, density, hardness) => {
    expect(foamGrade(densityFromPoundsPerCubicFoot(density), hardness * pound)).toBe(grade);
  });
});

describe("coverage", () => {
  // Foster 81-10 data sheet, Scribd 76887050
  test.each([
    [200, 4.9],
    [400, 9.8],
  ])("%d ft² a gallon are %d m² a litre", (perGallon, perLitre) => {
    expect(squareMetresPerLitre(perGallon)).toBeCloseTo(perLitre, 1);
  });

  // The same sheet gives those coverages as wet films of 0.008 and 0.004 in: a litre over so many m² is as deep
  test.each([
    [200, 0.008],
    [400, 0.004],
  ])("%d ft² a gallon is a wet film of %d in", (perGallon, film) => {
    const millimetres = 1 / squareMetresPerLitre(perGallon);
    expect(millimetres / inch).toBeCloseTo(film, 3);
  });

  // 3M, Fastbond Insulation Adhesive, data sheet, January 2008: 8.25 lb a gallon, 53 to 57 % solids, 2.5 g dry a ft²
  // is 824 ft² a gallon; the middle of the range gives 823
  test("8.25 lb a gallon, 55 % solid, at 2.5 g a square foot cover 824 ft² a gallon", () => {
    const litres = coverageByCoat({
      density: (8.25 * 0.45359237) / 3.785411784,
      solids: 0.55,
      dryCoat: 2.5 / 0.3048 ** 2,
    });
    expect(Math.abs(litres / squareMetresPerLitre(1) - 824)).toBeLessThan(1.5);
  });
});

describe("cutting", () => {
  const cut = (
    block: Parameters<typeof make.makeSolidSpec>[0]["blocks"],
    size: readonly [number, number, number],
  ) =>
    listSteps(
      make.makeWork({
        project: {
          units: "in",
          stock: [make.makeSlab({ size: [2000, 2000, size[2]] })],
          solids: [make.makeSolidSpec({ id: "ottoman", blocks: block ?? [] })],
        },
        solids: [
          make.makeSolid({
            id: "ottoman",
            size,
            blocks: [make.makeBlock({ id: "disc", size, foam: "foam" })],
          }),
        ],
        slabs: [
          make.makeCutPlan({
            stock: "foam",
            kind: "slab",
            used: [
              {
                stockIndex: 1,
                size: [2000, 2000, size[2]],
                cuts: [],
                offcuts: [],
                places: [
                  {
                    part: "ottoman/disc",
                    copy: 1,
                    at: [0, 0, 0],
                    size,
                    layer: [1, 1],
                    outline: null,
                  },
                ],
              },
            ],
          }),
        ],
      }),
    )
      .flatMap(({ actions }) => actions)
      .join(" ");

  // Cushion Works, https://cushionworks.blogspot.com/2011/09/: one slanting cut makes two wedges of a block, so one
  // wedge 36 in wide comes out of a block 18 in wide, its halves glued side by side
  test("a wedge 36 in wide takes the foam of a block 18 in wide", () => {
    const volumeOf = (block: BlockSpec) =>
      buildSolid({ id: "s", foam: null, blocks: [block] }).volume;
    const whole = wedge("b", [36 * inch, 20 * inch, 6 * inch], "back");
    const half = wedge("b", [18 * inch, 20 * inch, 6 * inch], "back");
    const block = 18 * 20 * 6 * inch ** 3;
    expect(volumeOf(whole)).toBeCloseTo(block, 3);
    expect(2 * volumeOf(half)).toBeCloseTo(block, 3);
  });

  // BHG, round ottoman, https://issuhub.com/view/index/12538?pageIndex=50: a 40 in disc is drawn with 20 in of string
  test("a disc of 40 in is drawn with a string of 20 in", () => {
    const disc = {
      kind: "cylinder" as const,
      id: "disc",
      at: [0, 0, 0] as const,
      foam: "foam",
      diameter: 40 * inch,
      length: 4 * inch,
      along: "z" as const,
    };
    expect(cut([disc], [40 * inch, 40 * inch, 4 * inch])).toMatch(/circle of 20 ?in radius/);
  });
});
