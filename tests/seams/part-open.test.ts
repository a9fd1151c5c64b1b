import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { box, cylinder, frustum } from "../fixtures/blocks.ts";
import { makeCover, tryCover } from "../fixtures/make-cover.ts";

const zip = { closing: { kind: "zip", stock: null } } as const;
const slab = [box("b", [500, 400, 80])];
const opened = (faces: readonly [string, string], length?: number) =>
  [{ kind: "between", faces, ...(length === undefined ? {} : { length }) }] as const;

describe("a seam left open for a length", () => {
  test("is open in its middle, with a notch on both panels where the open run ends", () => {
    const { cover, fitted } = makeCover(slab, {
      ...zip,
      panels: "plain",
      open: opened(["b/back", "b/underside"], 360),
    });
    const { opening, closing, seams, refolds, sewable } = cover;
    expect(opening!.run).toBeCloseTo(360, 9);
    expect(closing!.run).toBeCloseTo(360, 9);
    // A straight slit opens to twice its length.
    expect(opening!.girth).toBeCloseTo(720, 9);
    const [edge] = fitted.edges.filter(({ id }) => opening!.edges.includes(id));
    // Worked by hand: (500 - 360) / 2 = 70 from either end of the back edge.
    expect(edge!.path.map(([x]) => x).toSorted((a, b) => a - b)).toEqual([70, 430]);
    for (const [, y, z] of edge!.path) expect([y, z]).toEqual([400, 0]);
    const [open] = seams.filter(({ state }) => state === "closing");
    for (const stub of [edge!.id.slice(0, -1), `${edge!.id}'`])
      expect(seams.find(({ edges }) => edges.includes(stub))!.state).toBe("sewn");
    for (const panel of open!.panels) {
      const piece = cover.pieces.find((one) => one.panel === panel)!;
      const ends = piece.notches.filter(({ seam }) => seam === open!.id).map(({ at }) => at);
      const apart = ends.flatMap((p) => ends.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])));
      expect(Math.max(...apart)).toBeCloseTo(360, 6);
    }
    expect(refolds.worst).toBeLessThan(1e-6);
    expect(sewable.faults).toEqual([]);
  });

  // Worked by hand: the ring of a drum of 450 is 450 π round, and π 450 is what it presents.
  test("is as much of a round seam as the author's zip is long", () => {
    const { cover } = makeCover([cylinder("drum", 450, 360)], {
      ...zip,
      open: opened(["drum/underside", "drum/around"], 900),
    });
    const [open] = cover.seams.filter(({ state }) => state === "closing");
    expect(open!.length[0]).toBeCloseTo(900, 6);
    expect(open!.length[1]).toBeCloseTo(900, 6);
    expect(open!.isRing).toBe(false);
    expect(cover.opening!.girth).toBeCloseTo(900 + 450 * Math.sin(900 / 450), 6);
    const sewn = cover.seams.find(({ edges }) => edges.includes(`${cover.opening!.edges[0]!}'`))!;
    expect(sewn.length[0]).toBeCloseTo(450 * Math.PI - 900, 6);
    expect(cover.sewable.faults).toEqual([]);
  });

  test("keeps every seam's two sides alike and folds back, whatever the form and the length", () => {
    const forms = [
      { blocks: slab, faces: ["b/back", "b/top"], whole: 500 },
      { blocks: [cylinder("c", 300, 200)], faces: ["c/top", "c/around"], whole: 300 * Math.PI },
      {
        blocks: [frustum("f", 400, 250, 200)],
        faces: ["f/underside", "f/around"],
        whole: 400 * Math.PI,
      },
    ] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...forms),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        ({ blocks, faces, whole }, share) => {
          const length = Math.min(whole, Math.round(whole * share));
          const { cover } = makeCover(blocks, { ...zip, open: opened(faces, length) });
          expect(cover.opening!.run).toBeCloseTo(length, 6);
          for (const { length: sides } of cover.seams) expect(sides[0]).toBeCloseTo(sides[1], 6);
          expect(cover.refolds.worst).toBeLessThan(1e-6);
          expect(cover.sewable.faults).toEqual([]);
        },
      ),
      { numRuns: 20, seed: 20261125 },
    );
  });

  test("as long as the seam leaves all of it open, without a cut", () => {
    const { cover } = makeCover(slab, { ...zip, open: opened(["b/back", "b/top"], 500) });
    expect(cover.opening!.parts).toEqual([]);
    expect(cover.opening!.run).toBeCloseTo(500, 9);
  });

  test("says how much of it would let the foam in", () => {
    const { cover } = makeCover(slab, {
      ...zip,
      panels: "plain",
      open: opened(["b/back", "b/top"], 300),
    });
    // The pad is 2 (400 + 80) = 960 round and may be squeezed by a tenth: 432 of slit, 440 on a ruler.
    expect(cover.opening!.wayOut).toMatchObject({ kind: "longer", run: 440 });
  });

  test.each([
    { name: "longer than the seam", blocks: slab, faces: ["b/back", "b/top"], length: 501 },
    {
      name: "on a curve no compass draws",
      blocks: [cylinder("a", 300, 600, "x"), cylinder("c", 200, 400, "y", [200, -50, 40])],
      faces: ["a/around", "c/around"],
      length: 60,
    },
  ] as const)("is a fault at its line: $name", ({ blocks, faces, length }) => {
    const { faults } = tryCover(blocks, { ...zip, open: opened(faces, length) });
    expect(faults.map(({ field }) => field)).toEqual(["solids.form.cover.open.0.length"]);
  });
});
