import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layCloth } from "../../lib/packing/lay-cloth.ts";
import { layStock } from "../../lib/packing/lay-stock.ts";
import type { Lay } from "../../lib/packing/types.ts";
import { overlapArea } from "../../lib/plane/clip-polygons.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import type { Polygon } from "../../lib/plane/types.ts";
import type { FabricStock } from "../../lib/project/types.ts";
import { cloth, piece, rectangle } from "./lay-cases.ts";
import { worstOverlap } from "./overlap-oracle.ts";

const sliver = 0.1;

type Remnant = NonNullable<FabricStock["also"]>[number];
const remnant = (outline: Polygon, change: Partial<Remnant> = {}): Remnant => ({
  label: null,
  outline,
  isFullWidth: false,
  flaws: [],
  ...change,
});
const fullWidth = (width: number, length: number): Remnant =>
  remnant(rectangle(width, length), { isFullWidth: true });

/** No overlap; everything within one piece of cloth, and off its flaws. */
function expectSound(lay: Lay): void {
  expect(worstOverlap(lay.places.map(({ outline }) => outline))).toBeLessThan(sliver);
  for (const { outline } of lay.places) {
    const area = Math.abs(polygonArea(outline));
    const beds = lay.sections?.map((section) => section.outline) ?? [
      rectangle(lay.width, lay.length),
    ];
    const best = Math.max(...beds.map((bed) => overlapArea([outline], [bed])));
    expect(area - best).toBeLessThan(sliver);
    for (const flaw of lay.sections?.flatMap(({ flaws }) => flaws) ?? []) {
      expect(overlapArea([outline], [flaw])).toBeLessThan(sliver);
    }
  }
}

const count = (lay: Lay, id: string): number =>
  lay.places.filter((each) => each.piece === id).length;

describe("two lengths on hand of one cloth", () => {
  const squares = piece("square", rectangle(600, 600), 3);

  test("are both used, and no piece lies across an end", () => {
    const lay = layStock([squares], cloth(700, { have: 700, also: [fullWidth(700, 1300)] }));
    expect(lay).toMatchObject({ short: 0, buy: 0, have: 2000 });
    expect(lay.sections!.map(({ kind, length }) => [kind, length])).toEqual([
      ["length", 700],
      ["length", 1300],
    ]);
    expectSound(lay);
  });

  test("leave to buy only what they do not hold", () => {
    const lay = layStock([squares], cloth(700, { have: 700, also: [fullWidth(700, 650)] }));
    expect(lay).toMatchObject({ short: 600, buy: 600 });
    expect(lay.sections!.at(-1)!.kind).toBe("bought");
    expectSound(lay);
  });

  test("give way to the one that is long enough alone", () => {
    const lay = layStock([squares], cloth(700, { have: 700, also: [fullWidth(700, 1900)] }));
    expect(lay.sections).toHaveLength(1);
    expect(lay.length).toBe(1800);
  });
});

describe("odd-shaped remnants and flaws", () => {
  const pieces = [
    piece("large", rectangle(500, 400)),
    piece("small", rectangle(200, 150), 4, false),
  ];
  const corner: Polygon = [
    [0, 0],
    [620, 0],
    [620, 200],
    [200, 500],
    [0, 500],
  ];

  test("a remnant takes what fits it, and less is bought", () => {
    const plain = layCloth(pieces, cloth(700));
    const lay = layStock(pieces, cloth(700, { also: [remnant(corner, { label: "old curtain" })] }));
    expect(lay.length).toBeLessThan(plain.length);
    expect(count(lay, "small") + count(lay, "large")).toBe(5);
    expect(lay.sections!.map(({ kind }) => kind)).toContain("remnant");
    expectSound(lay);
  });

  test("nothing lies on a flaw of the length on hand", () => {
    const flaws = [{ at: [250, 180], size: [60, 60] } as const];
    const lay = layStock(pieces, cloth(700, { have: 700, flaws }));
    expect(lay.have).toBe(700);
    expectSound(lay);
    const spoiled = lay.sections!.find(({ kind }) => kind === "remnant");
    expect(spoiled!.flaws).toHaveLength(1);
  });

  test("pieces that start at a repeat stay on whole cloth", () => {
    const print = cloth(700, { repeat: { along: 200, across: 0 }, also: [remnant(corner)] });
    const lay = layStock(pieces, print);
    const section = lay.sections?.find(({ kind }) => kind === "remnant");
    for (const place of lay.places.filter(({ piece: id }) => id === "large")) {
      if (section !== undefined) expect(place.y).toBeLessThan(section.start);
    }
    expectSound(lay);
  });

  test("every copy of a class set is there once", () => {
    const lay = layStock(pieces, cloth(700, { also: [remnant(corner)] }), { copies: 3 });
    const names = lay.places.map((place) => `${place.piece} ${place.copy}`);
    expect(new Set(names).size).toBe(15);
    expect(names).toHaveLength(15);
    expectSound(lay);
  });

  test("whatever the remnant, the lay is sound", () => {
    const point = fc.tuple(fc.integer({ min: 150, max: 600 }), fc.integer({ min: 150, max: 500 }));
    fc.assert(
      fc.property(point, point, ([a, b], [c, d]) => {
        const outline: Polygon = [
          [0, 0],
          [a + c, 0],
          [a, b],
          [0, b + d],
        ];
        expectSound(layStock(pieces, cloth(700, { also: [remnant(outline)] })));
      }),
      { numRuns: 12, seed: 6 },
    );
  });
});

describe("a piece wider than the cloth", () => {
  test("is laid in two parts with an allowance each, so that the length to buy is right", () => {
    const wide = { ...piece("wide", rectangle(1000, 400)), joinAllowance: 10 };
    const lay = layStock([wide], cloth(700));
    // By hand: two parts of 500 + 10, one above the other.
    expect(lay.unplaced).toEqual([]);
    expect(lay.length).toBe(800);
    expect(lay.splits).toEqual([
      { piece: "wide", parts: ["wide/1", "wide/2"], at: [500], allowance: 10 },
    ]);
    expectSound(lay);
  });

  test("takes three parts where two are still too wide", () => {
    const lay = layStock([piece("wide", rectangle(1900, 400))], cloth(700));
    expect(lay.splits![0]!.parts).toHaveLength(3);
    expectSound(lay);
  });

  test("that no four parts make stays unplaced", () => {
    expect(layStock([piece("huge", rectangle(9000, 900))], cloth(700)).unplaced).toEqual(["huge"]);
  });
});

describe("a folded lay", () => {
  const slope: Polygon = [
    [0, 0],
    [300, 0],
    [300, 100],
    [0, 250],
  ];
  const mirror: Polygon = [
    [0, 0],
    [300, 0],
    [300, 250],
    [0, 100],
  ];

  test("is the same from both sides of the fold", () => {
    const lay = layStock([piece("face", rectangle(300, 200), 4)], cloth(700, { isFolded: true }));
    expect(lay.folded).toBe(400);
    expect(count(lay, "face")).toBe(4);
    for (const { x, y, outline } of lay.places) {
      const over = 700 - Math.max(...outline.map(([at]) => at));
      expect(lay.places.some((other) => other.y === y && Math.abs(other.x - over) < 1e-6)).toBe(
        true,
      );
      expect(x).toBeGreaterThanOrEqual(0);
    }
    expectSound(lay);
  });

  test("cuts a piece and its mirror image together", () => {
    const pieces = [piece("left", slope, 2), { ...piece("right", mirror, 2), mirrorOf: "left" }];
    const lay = layStock(pieces, cloth(700, { isFolded: true }));
    expect(lay.folded).toBe(lay.length);
    expect([count(lay, "left"), count(lay, "right")]).toEqual([2, 2]);
    expectSound(lay);
  });

  test("lays single what has no pair", () => {
    const lay = layStock([piece("slope", slope, 3)], cloth(700, { isFolded: true }));
    expect(lay.folded).toBeUndefined();
    const odd = layStock([piece("face", rectangle(300, 200), 5)], cloth(700, { isFolded: true }));
    expect(odd.folded).toBe(400);
    expect(odd.length).toBe(600);
    expectSound(odd);
  });
});
