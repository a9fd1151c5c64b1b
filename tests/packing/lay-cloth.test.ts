import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layCloth } from "../../lib/packing/lay-cloth.ts";
import type { Lay } from "../../lib/packing/types.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import type { Polygon } from "../../lib/plane/types.ts";
import { atOrigin, cloth, inch, piece, rectangle } from "./lay-cases.ts";
import { worstOverlap } from "./overlap-oracle.ts";

/** Two outlines may share no more than a sliver a hundred-thousandth of a millimetre thick and 10 m long. */
const sliver = 0.1;

function expectSound(lay: Lay): void {
  const outlines = lay.places.map(({ outline }) => outline);
  expect(worstOverlap(outlines)).toBeLessThan(sliver);
  for (const [x, y] of outlines.flat()) {
    expect(x).toBeGreaterThanOrEqual(lay.selvedge - 1e-6);
    expect(x).toBeLessThanOrEqual(lay.width - lay.selvedge + 1e-6);
    expect(y).toBeGreaterThanOrEqual(-1e-6);
    expect(y).toBeLessThanOrEqual(lay.length + 1e-6);
  }
  expect(lay.lowerBound).toBeLessThanOrEqual(lay.length + 1e-6);
  expect(lay.yield).toBeLessThanOrEqual(1 + 1e-9);
}

// Check value C1: box cushion 32 5/8 × 14 5/8 × 3 in, 5/8 in allowance, 45 in cloth.
// Source: Instructables Q&A, "Calculating yardage for bench cushions".
const cushion = (sidesUpright: boolean) => [
  piece("plate", rectangle(33.875 * inch, 15.875 * inch), 2),
  piece("front", rectangle(33.875 * inch, 4.25 * inch)),
  piece("side", rectangle(4.25 * inch, 15.875 * inch), 2, sidesUpright),
  piece("back", rectangle(33.875 * inch, 3 * inch), 2),
];

describe("laying a box cushion on 45 in cloth (check values C1, C1a)", () => {
  test("lays sides that may turn beside the plates in 42 in", () => {
    const lay = layCloth(cushion(false), cloth(45 * inch));
    expect(lay.length / inch).toBeCloseTo(42, 6);
    expectSound(lay);
  });

  test("lays upright sides across, as the source cuts them, in 46 1/4 in", () => {
    const across = cushion(false).map((each) =>
      each.id === "side" ? piece("side", rectangle(15.875 * inch, 4.25 * inch), 2) : each,
    );
    const lay = layCloth(across, cloth(45 * inch), { unit: "in" });
    expect(lay.length / inch).toBeCloseTo(46.25, 6);
    expect(lay.buy / 914.4).toBeCloseTo(1.375, 9); // 1.28 yd, the next eighth
    expectSound(lay);
  });
});

describe("laying a knife-edge cushion (check value C2)", () => {
  // Source: homesteady.com, "Estimate yardage for cushions": 25 1/2 × 16 1/2 in, 2 across 54 in.
  test("lays two across in one height", () => {
    const lay = layCloth([piece("side", rectangle(25.5 * inch, 16.5 * inch), 2)], cloth(54 * inch));
    expect(lay.length / inch).toBeCloseTo(16.5, 9);
    expect(lay.lowerBound / inch).toBeCloseTo(16.5, 9);
  });
});

// Rule: cut = ⌈L / V⌉ · V, and one V more for the order.
// R1 diyideas.com "Figuring Pattern Repeats"; R2 Pate-Meadows "Matching Repeats"; R3 Workroom
// Threads, August 2011. Two cuts are laid, so that the second starts at the rounded length.
const repeats = [
  { id: "R1", length: 96, repeat: 27, cut: 108 },
  { id: "R2", length: 90, repeat: 27, cut: 108 },
  { id: "R3", length: 116, repeat: 25, cut: 125 },
];

describe("a print with a repeat", () => {
  test.each(repeats)("$id: $length in by a $repeat in repeat is cut each $cut in", (row) => {
    const print = cloth(50 * inch, { repeat: { along: row.repeat * inch, across: 0 } });
    const width = rectangle(45 * inch, row.length * inch);
    const lay = layCloth([piece("width", width, 2)], print, { unit: "in" });
    const starts = lay.places.map(({ y }) => y / inch).sort((a, b) => a - b);
    expect(starts[0]).toBeCloseTo(0, 9);
    expect(starts[1]).toBeCloseTo(row.cut, 9);
    expect(lay.lowerBound).toBeCloseTo(lay.length, 6);
    expect(lay.short / inch).toBeCloseTo(row.cut + row.length + row.repeat, 6);
    expectSound(lay);
  });

  test("starts upright pieces at multiples across as well, and others anywhere", () => {
    const print = cloth(1000, { repeat: { along: 320, across: 230 } });
    const lay = layCloth(
      [piece("face", rectangle(300, 250), 3), piece("strip", rectangle(90, 400), 2, false)],
      print,
    );
    for (const place of lay.places.filter(({ piece: id }) => id === "face")) {
      expect(place.x % 230).toBeCloseTo(0, 9);
      expect(place.y % 320).toBeCloseTo(0, 9);
    }
    expectSound(lay);
  });
});

describe("what to buy", () => {
  const square = piece("square", rectangle(600, 600), 3);

  test("is nothing when enough is on hand", () => {
    const lay = layCloth([square], cloth(700, { have: 1800 }));
    expect(lay).toMatchObject({ short: 0, buy: 0, length: 1800 });
  });

  test("uses a short length on hand first, and lays no piece across its end", () => {
    const lay = layCloth([square], cloth(700, { have: 1000 }));
    expect(lay.places.map(({ y }) => y).sort((a, b) => a - b)).toEqual([0, 1000, 1600]);
    expect(lay).toMatchObject({ length: 2200, short: 1200, buy: 1200 });
  });

  test("names pieces wider than the cloth and lays the rest", () => {
    const lay = layCloth([square, piece("wide", rectangle(800, 750))], cloth(700));
    expect(lay.unplaced).toEqual(["wide"]);
    expect(lay.places).toHaveLength(3);
  });

  test("is nothing for no pieces", () => {
    expect(layCloth([], cloth(700))).toMatchObject({ length: 0, buy: 0, places: [], yield: 0 });
  });
});

describe("turns and flips", () => {
  const flag: Polygon = [
    [0, 0],
    [300, 0],
    [300, 80],
    [0, 300],
  ];
  const turnsOn = (direction: "one-way" | "two-way" | "any", isUpright: boolean) =>
    new Set(
      layCloth([piece("flag", flag, 8, isUpright)], cloth(700, { direction })).places.map(
        ({ turn }) => turn,
      ),
    );

  test("keeps upright pieces upright on a one-way print", () => {
    expect([...turnsOn("one-way", true)]).toEqual([0]);
  });

  test("turns upright pieces only half round on a two-way print", () => {
    expect([0, 180]).toEqual(expect.arrayContaining([...turnsOn("two-way", true)]));
    expect(turnsOn("two-way", true).size).toBe(2);
  });

  // The lid fits on the base only when one of them is turned over; by hand 100 + 200 or 200 + 200.
  const slopes = [
    piece("base", [
      [0, 0],
      [300, 0],
      [300, 200],
      [0, 100],
    ]),
    piece("lid", [
      [0, 100],
      [300, 0],
      [300, 200],
      [0, 200],
    ]),
  ];

  test("flips pieces only on cloth with two good sides", () => {
    const flat = layCloth(slopes, cloth(300));
    expect(flat.length).toBeCloseTo(400, 4);
    expect(flat.places.some(({ flipped }) => flipped)).toBe(false);
    const turned = layCloth(slopes, cloth(300, { isTwoFaced: true }));
    expect(turned.length).toBeCloseTo(300, 4);
    expect(turned.places.some(({ flipped }) => flipped)).toBe(true);
    expectSound(turned);
  });
});

describe("a class set", () => {
  test("is never longer than separate lays", () => {
    const lay = layCloth(cushion(true), cloth(45 * inch), { copies: 3 });
    expect(lay.length).toBeLessThanOrEqual(lay.separately + 1e-6);
    expect(lay.places).toHaveLength(21);
    expectSound(lay);
  });

  // By hand: an arrowhead as wide as the cloth, 100 deep and 200 from wing to tip. The next one goes
  // into it, so that each takes its depth and only one takes its whole height.
  const arrowhead: Polygon = [
    [0, 200],
    [200, 0],
    [400, 200],
    [400, 300],
    [200, 100],
    [0, 300],
  ];

  test.each([
    { repeat: null, one: 100, first: 300 },
    // With a repeat of 80 the next starts two repeats on.
    { repeat: { along: 80, across: 0 }, one: 160, first: 300 },
  ])("of thirty arrowheads slides them into one another (repeat $repeat)", (each) => {
    const lay = layCloth([piece("arrowhead", arrowhead)], cloth(400, { repeat: each.repeat }), {
      copies: 30,
    });
    expect(lay.length).toBeCloseTo(each.first + 29 * each.one, 3);
    expectSound(lay);
  });

  test("of thirty cushions takes no more for each set than the best of one to six sets", () => {
    const lays = [1, 2, 3].map((copies) => layCloth(cushion(true), cloth(45 * inch), { copies }));
    const many = layCloth(cushion(true), cloth(45 * inch), { copies: 30 });
    const best = Math.min(...lays.map(({ length, copies }) => length / copies));
    expect(many.length / 30).toBeLessThanOrEqual(best + 1e-6);
    expect(many.length).toBeGreaterThanOrEqual(many.lowerBound - 1e-6);
    expect(many.places).toHaveLength(210);
    expectSound(many);
  });

  test("starts every set at a repeat, also when it is counted set by set", () => {
    const repeat = { along: 320, across: 0 };
    const lay = layCloth([piece("strip", rectangle(600, 400))], cloth(850, { repeat }), {
      copies: 4,
    });
    // By hand: a strip of 400 takes two repeats of 320, but for the last.
    expect(lay.separately).toBeCloseTo(3 * 640 + 400, 6);
    expect(lay.length).toBeCloseTo(3 * 640 + 400, 6);
  });
});

// ---- Any pieces at all ---------------------------------------------------------------------

const size = fc.integer({ min: 20, max: 400 });
const ell = fc
  .tuple(size, size, fc.double({ min: 0.2, max: 0.8, noNaN: true }))
  .map(([w, h, share]): Polygon => [
    [0, 0],
    [w, 0],
    [w, h * share],
    [w * share, h * share],
    [w * share, h],
    [0, h],
  ]);
const round = fc
  .tuple(size, size, fc.integer({ min: 3, max: 9 }), fc.double({ min: 0, max: 6, noNaN: true }))
  .map(([w, h, corners, from]): Polygon =>
    atOrigin(
      Array.from({ length: corners }, (_, i) => {
        const angle = from + (i * 2 * Math.PI) / corners;
        return [w * Math.cos(angle), h * Math.sin(angle)];
      }),
    ),
  );
const anyPieces = fc
  .array(fc.tuple(fc.oneof(ell, round), fc.integer({ min: 1, max: 3 }), fc.boolean()), {
    minLength: 1,
    maxLength: 5,
  })
  .map((list) => list.map(([outline, copies, up], i) => piece(`p${i}`, outline, copies, up)));
const anyCloth = fc.record({
  direction: fc.constantFrom("one-way" as const, "two-way" as const, "any" as const),
  isTwoFaced: fc.boolean(),
  selvedge: fc.constantFrom(0, 12.7),
  have: fc.constantFrom(0, 650),
  repeat: fc.constantFrom(null, { along: 320, across: 0 }, { along: 150, across: 90 }),
});

test("no lay of any pieces overlaps, hangs off or loses a piece", () => {
  fc.assert(
    fc.property(anyPieces, anyCloth, (pieces, change) => {
      const lay = layCloth(pieces, cloth(850, change));
      expectSound(lay);
      const laid = lay.places.reduce((sum, { outline }) => sum + polygonArea(outline), 0);
      const asked = pieces
        .filter(({ id }) => !lay.unplaced.includes(id))
        .reduce((sum, each) => sum + each.copies * polygonArea(each.outline), 0);
      expect(laid).toBeCloseTo(asked, 3);
    }),
    { numRuns: 20, seed: 7 },
  );
});
