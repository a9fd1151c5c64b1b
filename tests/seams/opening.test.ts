import { describe, expect, test } from "vitest";
import { box, prism } from "../fixtures/blocks.ts";
import { makeCover } from "../fixtures/make-cover.ts";

/** Three bars through one another, each 600 by 200 by 200: every face is small, the whole is wide. */
const jack = [
  box("x", [600, 200, 200], [0, 200, 200]),
  box("y", [200, 600, 200], [200, 0, 200]),
  box("z", [200, 200, 600], [200, 200, 0]),
];
/** Worked by hand: along an axis its shadow has an octagon for a hull, four sides of 200, four of 200 √2. */
const jackGirth = 4 * 200 + 4 * 200 * Math.SQRT2;

describe("an opening that the program proposes", () => {
  test.each(["auto", "fewest"] as const)(
    "goes on over several faces where none is wide enough, panels %s",
    (panels) => {
      const { cover } = makeCover(jack, { panels });
      expect(cover.opening!.needed).toBeCloseTo(jackGirth, 3);
      expect(cover.opening!.fits).toBe(true);
      // No face of it has more than four edges of 200: what opens is longer than any one of them.
      expect(cover.opening!.run).toBeGreaterThan(3 * 200);
      expect(cover.sewable.faults).toEqual([]);
      expect(cover.refolds.ok).toBe(true);
    },
  );

  test("does not turn an inward corner where another run will do", () => {
    const seat = [
      box("left", [400, 450, 80]),
      box("right", [400, 450, 80], [500, 0, 0]),
      box("mid", [100, 350, 80], [400, 0, 0]),
    ];
    const { cover, fitted } = makeCover(seat);
    // Both inward corners lie at the ends of the floor of the notch.
    const faces = cover.opening!.edges.flatMap(
      (edge) => fitted.edges.find(({ id }) => id === edge)!.faces,
    );
    expect(faces).not.toContain("mid/back");
  });

  test("round a corner is closed in one go, its strips joined before", () => {
    const hexagon = [
      [200, 0],
      [600, 0],
      [800, 346],
      [600, 692],
      [200, 692],
      [0, 346],
    ] as const;
    const { cover } = makeCover(
      [prism("hex", hexagon, 100)],
      { closing: { kind: "zip", stock: null } },
      { direction: "one-way" },
    );
    const closing = cover.passes.filter(({ state }) => state === "closing");
    expect(closing.length).toBe(1);
    expect(closing[0]!.length).toBeCloseTo(cover.opening!.run, 6);
  });
});

describe("an opening of the author's own that is too tight", () => {
  const pad = [box("b", [500, 400, 80])];

  test("says which seam beside it would let the foam in", () => {
    const { cover } = makeCover(pad, {
      panels: "plain",
      open: [{ kind: "between", faces: ["b/left", "b/top"] }],
    });
    // Worked by hand: a slit of 400 opens to 800, the pad is 2 (400 + 80) = 960 round at its least.
    expect(cover.opening).toMatchObject({ fits: false, isProposed: false });
    expect(cover.opening!.girth).toBeCloseTo(800, 6);
    expect(cover.opening!.give).toBeCloseTo(1 - 800 / 960, 9);
    const { kind, pairs, girth } = cover.opening!.wayOut!;
    expect(kind).toBe("also");
    expect(pairs.length).toBe(1);
    expect(girth).toBeGreaterThanOrEqual(0.9 * 960);
  });

  test("asks for nothing where the foam goes in", () => {
    const { cover } = makeCover(pad, {
      panels: "plain",
      open: [{ kind: "between", faces: ["b/back", "b/underside"] }],
    });
    expect(cover.opening).toMatchObject({ fits: true, wayOut: null });
  });
});
