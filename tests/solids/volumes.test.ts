import { describe, expect, test } from "vitest";
import type { BlockSpec } from "../../lib/project/types.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { box, cylinder, frustum, inch, inches, prism, rounded, wedge } from "../fixtures/blocks.ts";

const solidOf = (...blocks: readonly BlockSpec[]) => buildSolid({ id: "form", foam: null, blocks });

const slant = Math.hypot(50, 350);

// Handbook formulas (Machinery's Handbook, "Volumes of solids"; the same in Weisstein, MathWorld,
// under "Cylinder", "Conical Frustum", "Cone", "Prism", "Wedge").
const handbook = [
  {
    name: "a cylinder, π r² h",
    block: cylinder("b", 450, 300),
    volume: Math.PI * 225 ** 2 * 300,
    area: 2 * Math.PI * 225 * (225 + 300),
    centre: [225, 225, 150],
  },
  {
    name: "a frustum, π h (R² + R r + r²) / 3",
    block: frustum("b", 500, 400, 350),
    volume: (Math.PI * 350 * (250 ** 2 + 250 * 200 + 200 ** 2)) / 3,
    area: Math.PI * (250 ** 2 + 200 ** 2 + (250 + 200) * slant),
    // Centroid h (R² + 2 R r + 3 r²) / 4 (R² + R r + r²) above the base.
    centre: [
      250,
      250,
      (350 * (250 ** 2 + 2 * 250 * 200 + 3 * 200 ** 2)) / (4 * (250 ** 2 + 250 * 200 + 200 ** 2)),
    ],
  },
  {
    name: "a frustum that widens upwards",
    block: frustum("b", 400, 500, 350),
    volume: (Math.PI * 350 * (250 ** 2 + 250 * 200 + 200 ** 2)) / 3,
    area: Math.PI * (250 ** 2 + 200 ** 2 + (250 + 200) * slant),
    centre: null,
  },
  {
    name: "a cone, π r² h / 3, with its centre a quarter up",
    block: frustum("b", 300, 0, 200),
    volume: (Math.PI * 150 ** 2 * 200) / 3,
    area: Math.PI * 150 * (150 + 250),
    centre: [150, 150, 50],
  },
  {
    name: "a wedge, half its box, with its centre a third in and up",
    block: wedge("b", [300, 500, 200], "back"),
    volume: (300 * 500 * 200) / 2,
    area: 300 * 500 + 300 * 200 + 500 * 200 + 300 * Math.hypot(500, 200),
    centre: [150, (2 * 500) / 3, 200 / 3],
  },
  {
    name: "a trapezium prism, (a + b) / 2 times depth times height",
    block: prism(
      "b",
      [
        [0, 0],
        [1200, 0],
        [1110, 420],
        [90, 420],
      ],
      80,
    ),
    volume: ((1200 + 1020) / 2) * 420 * 80,
    area: (1200 + 1020) * 420 + 80 * (1200 + 1020 + 2 * Math.hypot(90, 420)),
    centre: null,
  },
  {
    name: "a block with two rounded corners, less (1 − π / 4) r² each",
    block: rounded("b", [400, 300, 100], 60, ["front-left", "front-right"]),
    volume: (400 * 300 - 2 * (1 - Math.PI / 4) * 60 ** 2) * 100,
    area:
      2 * (400 * 300 - 2 * (1 - Math.PI / 4) * 60 ** 2) + 100 * (2 * 700 - 4 * 60 + Math.PI * 60),
    centre: null,
  },
  {
    name: "a block with all corners rounded to a cylinder",
    block: rounded("b", [200, 200, 90], 100, [
      "front-left",
      "front-right",
      "back-right",
      "back-left",
    ]),
    volume: Math.PI * 100 ** 2 * 90,
    area: 2 * Math.PI * 100 * (100 + 90),
    centre: [100, 100, 45],
  },
] as const;

describe("the volume and area of a block", () => {
  test.each(handbook)("are those of $name", ({ block, volume, area, centre }) => {
    const solid = solidOf(block);
    expect(Math.abs(solid.volume / volume - 1)).toBeLessThan(1e-8);
    expect(Math.abs(solid.area / area - 1)).toBeLessThan(1e-8);
    centre?.forEach((part, axis) => expect(solid.centreOfMass[axis]).toBeCloseTo(part, 4));
  });

  test("are the same for an outline drawn clockwise", () => {
    const outline = [
      [0, 0],
      [300, 0],
      [200, 150],
      [0, 100],
    ] as const;
    const [one, other] = [outline, outline.toReversed()].map((corners) =>
      solidOf(prism("b", corners, 70, "y")),
    );
    expect(other!.volume).toBeCloseTo(one!.volume, 6);
    expect(other!.area).toBeCloseTo(one!.area, 6);
    // Its sides keep the numbers of the outline as drawn: the long one is the first of the one and
    // the third of the other.
    const areaOf = (solid: typeof one, name: string) =>
      solid!.faces.find(({ names }) => names.includes(name))!.area;
    expect(areaOf(other, "b/side-3")).toBeCloseTo(areaOf(one, "b/side-1"), 6);
  });
});

describe("two equal cylinders that cross at right angles", () => {
  // Weisstein, "Steinmetz Solid", MathWorld: they share 16 r³ / 3, whose surface is 16 r².
  const [r, h] = [100, 600];
  const solid = solidOf(
    cylinder("a", 2 * r, h, "x", [0, 200, 0]),
    cylinder("b", 2 * r, h, "y", [200, 0, 0]),
  );

  test("hold two cylinders less the Steinmetz solid", () => {
    const volume = 2 * Math.PI * r ** 2 * h - (16 * r ** 3) / 3;
    // The curve in which they meet is kept as chords within a hundredth of a millimetre.
    expect(Math.abs(solid.volume / volume - 1)).toBeLessThan(1e-4);
  });

  test("have the outside of two cylinders less that of the Steinmetz solid", () => {
    const area = 2 * (2 * Math.PI * r * (r + h)) - 16 * r ** 2;
    expect(Math.abs(solid.area / area - 1)).toBeLessThan(1e-4);
  });
});

// Pounds and cubic feet: 1 lb = 0.45359237 kg, 1 ft = 304.8 mm, both exact (NIST Handbook 44, App. C).
const pound = 0.45359237;
const perCubicFoot = pound / 0.3048 ** 3;
const weigh = (density: number, ...blocks: readonly BlockSpec[]) =>
  buildSolid({ id: "form", foam: "foam", blocks }, { densities: { foam: density * perCubicFoot } })
    .mass! / pound;

describe("foam by weight", () => {
  // Foam Industries, "How much does my foam part weigh?"
  // https://www.foam-industries.com/news/how-much-does-my-foam-part-weigh
  test("a 12 × 12 × 4 in part of 1.7 lb/ft³ weighs 0.567 lb", () => {
    expect(weigh(1.7, box("b", inches(12, 12, 4)))).toBeCloseTo((12 * 12 * 4 * 1.7) / 1728, 9);
    expect(weigh(1.7, box("b", inches(12, 12, 4)))).toBeCloseTo(0.567, 3);
  });

  test("with a pocket of 8 × 8 × 2 in, glued up from five boxes, 0.44 lb", () => {
    const weight = weigh(
      1.7,
      box("floor", inches(12, 12, 2)),
      box("front", inches(12, 2, 2), inches(0, 0, 2)),
      box("back", inches(12, 2, 2), inches(0, 10, 2)),
      box("left", inches(2, 8, 2), inches(0, 2, 2)),
      box("right", inches(2, 8, 2), inches(10, 2, 2)),
    );
    expect(weight).toBeCloseTo(0.44, 2);
  });

  // Worked by hand from density times volume, no source needed.
  test("24 × 24 × 4 in of 1.8 lb/ft³ weighs 2.40 lb or 1.09 kg", () => {
    const weight = weigh(1.8, box("b", inches(24, 24, 4)));
    expect(weight).toBeCloseTo(2.4, 9);
    expect(weight * pound).toBeCloseTo(1.09, 2);
  });

  test("is none where a density is missing", () => {
    expect(solidOf(box("b", [100, 100, 100])).mass).toBeNull();
  });

  test("counts what two blocks share once, as the earlier one's foam", () => {
    const heavyFirst = buildSolid(
      {
        id: "form",
        foam: null,
        blocks: [
          { ...box("a", [100, 100, 100]), foam: "heavy" },
          { ...box("b", [100, 100, 100], [50, 0, 0]), foam: "light" },
        ],
      },
      { densities: { heavy: 100, light: 20 } },
    );
    expect(heavyFirst.mass!).toBeCloseTo(0.1 + 0.01, 9);
  });
});

describe("where the weight lies", () => {
  // Home Made Tools forum, post 138948, tip angle of a stand: base 3 ft across, centre 1 ft up, 56.3°.
  test("a drum 3 ft across and 2 ft high tips at 56.3°", () => {
    const drum = solidOf(cylinder("b", 36 * inch, 24 * inch));
    const [x, , height] = drum.centreOfMass;
    expect((Math.atan2(x, height) * 180) / Math.PI).toBeCloseTo(56.3, 1);
  });

  // Worked by hand: arc tangent of 150 over 200.
  test("a block 300 deep with its centre 200 up tips at 36.9°", () => {
    const [, y, z] = solidOf(box("b", [500, 300, 400])).centreOfMass;
    expect((Math.atan2(y, z) * 180) / Math.PI).toBeCloseTo(36.87, 2);
  });

  test("leans towards the heavier foam", () => {
    const { centreOfMass } = buildSolid(
      {
        id: "form",
        foam: null,
        blocks: [
          { ...box("a", [100, 100, 100]), foam: "heavy" },
          { ...box("b", [100, 100, 100], [100, 0, 0]), foam: "light" },
        ],
      },
      { densities: { heavy: 60, light: 20 } },
    );
    // Lever rule: (3 · 50 + 1 · 150) / 4.
    expect(centreOfMass[0]).toBeCloseTo(75, 6);
  });
});
