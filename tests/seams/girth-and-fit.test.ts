import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Place } from "../../lib/project/types.ts";
import { fitBlocks } from "../../lib/seams/fit-blocks.ts";
import { girthAlong, smallestGirth } from "../../lib/seams/measure-girth.ts";
import { planClosing } from "../../lib/seams/plan-closing.ts";
import { seamLetter } from "../../lib/seams/name-edges.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { blockSeat, box, cylinder, frustum, inch, inches } from "../fixtures/blocks.ts";
import { anyBlocks } from "../fixtures/random-blocks.ts";
import { listPanels, makeCover, pieceNamed } from "../fixtures/make-cover.ts";

const solidOf = (...blocks: Parameters<typeof buildSolid>[0]["blocks"]) =>
  buildSolid({ id: "form", foam: null, blocks });
const side = fc.integer({ min: 20, max: 900 });

describe("the smallest girth", () => {
  // Worked by hand: a box goes through a hole as long round as its smallest face.
  test("of a box is twice the sum of its two smallest sizes", () => {
    fc.assert(
      fc.property(side, side, side, (width, depth, height) => {
        const [small, middle] = [width, depth, height].toSorted((a, b) => a - b);
        const { girth } = smallestGirth(solidOf(box("b", [width, depth, height])));
        expect(girth).toBeCloseTo(2 * (small! + middle!), 6);
      }),
      { numRuns: 50 },
    );
  });

  // Worked by hand: end on, a drum is π d round; on its side, 2 (d + h).
  test.each([
    { diameter: 300, height: 600, girth: Math.PI * 300 },
    { diameter: 600, height: 100, girth: 2 * (600 + 100) },
    { diameter: 450, height: 300, girth: Math.PI * 450 },
  ])("of a drum $diameter across and $height high is the lesser of two", (drum) => {
    const { girth } = smallestGirth(solidOf(cylinder("b", drum.diameter, drum.height)));
    // The shadow is that of the facets, which lie a quarter of a millimetre inside the round.
    expect(Math.abs(girth / drum.girth - 1)).toBeLessThan(3e-3);
  });

  test("is no longer than the girth seen along any axis", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        const solid = solidOf(...blocks);
        const { girth } = smallestGirth(solid);
        for (const along of [
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
        ] as const) {
          expect(girth).toBeLessThan(girthAlong(solid, along) + 1e-6);
        }
      }),
      { numRuns: 30, seed: 31 },
    );
  });

  // Worked by hand: seen from its side the seat is an L, 18 in down the back, 18 along the floor, 12 up
  // the front, straight from the arm to the back (12 along, 6 up), and 6 over the top.
  test("of the block seat is that of its side, a string drawn tight round an L", () => {
    const wanted = 18 + 18 + 12 + Math.hypot(12, 6) + 6;
    expect(smallestGirth(solidOf(...blockSeat)).girth / inch).toBeCloseTo(wanted, 6);
  });
});

describe("a fit", () => {
  const ease = fc.tuple(
    ...([0, 1, 2] as const).map(() => fc.integer({ min: -15, max: 15 })),
  ) as unknown as fc.Arbitrary<Place>;

  test("changes the size of the whole by just the ease", () => {
    fc.assert(
      fc.property(
        anyBlocks(3).filter((blocks) =>
          blocks.every(({ kind }) => ["box", "wedge", "prism"].includes(kind)),
        ),
        ease,
        (blocks, by) => {
          const foam = solidOf(...blocks);
          const fitted = solidOf(...fitBlocks(blocks, foam, by));
          by.forEach((part, axis) =>
            expect(fitted.size[axis]).toBeCloseTo(foam.size[axis]! + part, 4),
          );
        },
      ),
      { numRuns: 40, seed: 32 },
    );
  });

  test("keeps the block seat's faces flush and its edges matching", () => {
    const { cover, foam, fitted } = makeCover(blockSeat, {
      panels: "plain",
      ease: inches(-0.5, -0.5, -0.25),
    });
    expect(fitted.faces.map(({ id }) => id)).toEqual(foam.faces.map(({ id }) => id));
    expect(fitted.size.map((size, i) => (size - foam.size[i]!) / inch)).toEqual([
      expect.closeTo(-0.5, 6),
      expect.closeTo(-0.5, 6),
      expect.closeTo(-0.25, 6),
    ]);
    for (const { length } of cover.seams) expect(length[0]).toBeCloseTo(length[1], 6);
    expect(cover.refolds.worst).toBeLessThan(1e-6);
  });

  test("keeps circles circles", () => {
    const foam = solidOf(cylinder("drum", 400, 300), frustum("cap", 400, 300, 50, [0, 0, 300]));
    const blocks = fitBlocks(
      [cylinder("drum", 400, 300), frustum("cap", 400, 300, 50, [0, 0, 300])],
      foam,
      [-10, -10, -7],
    );
    expect(blocks[0]).toMatchObject({ diameter: expect.closeTo(390, 9) });
    expect(blocks[1]).toMatchObject({ base: expect.closeTo(390, 9) });
  });

  test("of nothing leaves the blocks alone", () => {
    expect(fitBlocks(blockSeat, solidOf(...blockSeat), [0, 0, 0])).toBe(blockSeat);
  });

  test("shows in the cut size, with what the wash takes put on", () => {
    const panels = listPanels(["b/top"], ["b/underside"]);
    const { cover } = makeCover(
      [box("b", [500, 400, 80])],
      { panels, ease: [-10, -20, 0] },
      {
        shrink: 0.03,
      },
    );
    const [width, height] = pieceNamed(cover, "b/top").cutSize;
    expect(width).toBeCloseTo((490 + inch) / 0.97, 6);
    expect(height).toBeCloseTo((380 + inch) / 0.97, 6);
  });
});

describe("an opening the author names", () => {
  test("runs round a face but for its longest edge, and opens as wide as it is long", () => {
    const { cover } = makeCover([box("b", [500, 400, 80])], {
      panels: listPanels(["b/underside"]),
      open: [{ kind: "face", face: "b/underside" }],
    });
    expect(cover.opening!.run).toBeCloseTo(500 + 2 * 400, 6);
    // Worked by hand: the flap swings away, and its hinge closes the ring.
    expect(cover.opening!.girth).toBeCloseTo(2 * (500 + 400), 6);
    expect(cover.opening!.needed).toBeCloseTo(2 * (400 + 80), 6);
    expect(cover.opening!.fits).toBe(true);
    expect(cover.opening!.give).toBe(0);
  });

  test("of one slit opens to twice its length", () => {
    const { cover } = makeCover([box("b", [500, 400, 80])], {
      panels: listPanels(["b/back"]),
      open: [{ kind: "between", faces: ["b/back", "b/underside"] }],
    });
    expect(cover.opening!.run).toBeCloseTo(500, 6);
    expect(cover.opening!.girth).toBeCloseTo(1000, 6);
  });
});

describe("a closing", () => {
  const format = (length: number) => `${length} mm`;
  const zips = {
    kind: "zip",
    id: "z",
    label: "zip",
    lengths: [400, 600, 800],
    have: [600],
    price: null,
  } as unknown as Parameters<typeof planClosing>[2];

  test.each([
    { run: 550, buy: 0, have: 600, short: 0 },
    { run: 600, buy: 0, have: 600, short: 0 },
    { run: 700, buy: 800, have: 600, short: 100 },
  ])("of $run mm buys $buy with $have on hand", ({ run, ...wanted }) => {
    expect(planClosing({ kind: "zip", stock: "z" }, run, zips, format)).toMatchObject(wanted);
  });

  test("longer than any zip sold is chain by the metre with its ends", () => {
    const plan = planClosing({ kind: "zip", stock: "z" }, 900, zips, format);
    expect(plan.buy).toBe(950);
    expect(plan.basis).toMatch(/chain/);
  });
});

test("seams are lettered on past Z", () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(seamLetter)).toEqual([
    "A",
    "Z",
    "AA",
    "AZ",
    "BA",
    "ZZ",
    "AAA",
  ]);
});
