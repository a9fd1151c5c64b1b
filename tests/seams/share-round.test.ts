import { describe, expect, test } from "vitest";
import { cylinder, rounded } from "../fixtures/blocks.ts";
import { makeCover, tryCover } from "../fixtures/make-cover.ts";
import { partEdge } from "../../lib/solids/part-edge.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { distance3 } from "../../lib/solids/points3.ts";
import { centreOfArc } from "../../lib/panels/sample-side.ts";

const zip = { closing: { kind: "zip", stock: null } } as const;

/** Weisstein, "Circular Segment", MathWorld: arc s = R θ, chord a = 2 R sin(θ / 2). */
const mouthOf = (radius: number, share: number) =>
  2 * Math.PI * radius * share + 2 * radius * Math.sin(Math.PI * share);

describe("the opening of a round form", () => {
  // Worked by hand. A drum of 450 by 360 is π 450 = 1413.7 round on end, the least it presents; one of
  // 400 by 60 is 2 (400 + 60) = 920 round on edge. Foam of unknown hardness may be squeezed by a tenth.
  test.each([
    { name: "a thin pad over half", size: [400, 60], share: 1 / 2, needed: 920, hardness: null },
    { name: "a drum", size: [450, 360], share: 5 / 8, needed: 450 * Math.PI, hardness: null },
    { name: "a firm drum", size: [450, 360], share: 2 / 3, needed: 450 * Math.PI, hardness: 190 },
    { name: "a soft drum", size: [450, 360], share: 1 / 2, needed: 450 * Math.PI, hardness: 90 },
  ] as const)("takes a share of the seam: $name", ({ size, share, needed, hardness }) => {
    const [across, high] = size;
    const { cover } = tryCover([cylinder("c", across, high)], zip, { hardness });
    const { opening, refolds, sewable, seams } = cover!;
    expect(opening!.run).toBeCloseTo(Math.PI * across * share, 6);
    expect(opening!.girth).toBeCloseTo(mouthOf(across / 2, share), 6);
    // The shadow of a round form is a many-sided one: a thousandth less.
    expect(Math.abs(opening!.needed / needed - 1)).toBeLessThan(1.5e-3);
    expect(opening!.fits).toBe(true);
    expect(refolds.worst).toBeLessThan(1e-6);
    expect(sewable.faults).toEqual([]);
    const closing = seams.filter(({ state }) => state === "closing");
    expect(closing.map(({ isRing }) => isRing)).toEqual([false]);
    expect(closing[0]!.length[0]).toBeCloseTo(closing[0]!.length[1], 6);
    const rest = seams.find(({ edges }) => edges.includes(`${opening!.edges[0]!}'`))!;
    expect(rest.state).toBe("sewn");
    expect(rest.length[0] + closing[0]!.length[0]).toBeCloseTo(Math.PI * across, 6);
  });

  test("has a notch at both its ends, with a twin on the other panel", () => {
    const { cover } = makeCover([cylinder("c", 450, 360)], zip);
    const { id, length, panels } = cover.seams.find(({ state }) => state === "closing")!;
    const [disc, strip] = ["underside", "round side"].map((label) =>
      cover.pieces.find((piece) => piece.label === label)!,
    );
    expect([disc!.panel, strip!.panel].toSorted()).toEqual([...panels].toSorted());
    const places = strip!.notches
      .filter(({ seam }) => seam === id)
      .map(({ at: [x] }) => x)
      .toSorted((a, b) => a - b);
    expect(places.at(-1)! - places[0]!).toBeCloseTo(length[0], 6);
    const numbers = (piece: typeof disc) =>
      piece!.notches.filter(({ seam }) => seam === id).map(({ number }) => number);
    expect(numbers(disc).toSorted()).toEqual(numbers(strip).toSorted());
  });

  test("of a bolster is its long seam at the back, not an end in view", () => {
    const { cover, fitted } = makeCover([cylinder("bolster", 200, 600, "x")], zip);
    expect(cover.opening!.run).toBeCloseTo(600, 6);
    const [edge] = fitted.edges.filter(({ id }) => cover.opening!.edges.includes(id));
    for (const [, y] of edge!.path) expect(y).toBeCloseTo(200, 6);
  });

  test("is the whole face where the author says so, and comes off whole for want of a hinge", () => {
    const { cover } = makeCover([cylinder("drum", 450, 360)], {
      ...zip,
      open: [{ kind: "face", face: "drum/underside" }],
    });
    expect(cover.opening!.run).toBeCloseTo(450 * Math.PI, 6);
    expect(cover.opening!.reason).toContain("no edge for a hinge: it comes off whole");
  });

  test("is piped on both its stretches where the face is piped", () => {
    const { cover } = makeCover([cylinder("drum", 450, 360)], {
      ...zip,
      piping: { cord: 5, along: ["drum/underside"], cut: "bias" },
    });
    const round = cover.seams.filter(({ edges }) => edges[0]!.startsWith(cover.opening!.edges[0]!));
    expect(round.length).toBe(2);
    for (const { isPiped } of round) expect(isPiped).toBe(true);
  });

  test("does not cut a corner of a quarter circle in two", () => {
    const corners = ["front-left", "front-right", "back-left", "back-right"] as const;
    const { cover } = makeCover([rounded("pad", [500, 400, 80], 60, corners)], zip);
    expect(cover.opening!.parts).toEqual([]);
  });
});

test("an edge cut in two keeps its length, its path and its circle", () => {
  const solid = buildSolid({ id: "c", foam: null, blocks: [cylinder("c", 450, 360)] });
  const ring = solid.edges.find(({ faces }) => faces.includes("c/underside"))!;
  for (const share of [1 / 8, 0.3, 1 / 2, 2 / 3, 7 / 8]) {
    const parts = partEdge(solid, { edge: ring.id, share }).edges.filter(({ id }) =>
      id.startsWith(ring.id),
    );
    const [first, rest] = parts;
    expect(first!.length).toBeCloseTo(Math.PI * 450 * share, 9);
    expect(first!.length + rest!.length).toBeCloseTo(ring.length, 9);
    expect(distance3(first!.path.at(-1)!, rest!.path[0]!)).toBe(0);
    for (const { path } of parts) {
      const centre = centreOfArc(path)!;
      for (const point of path) expect(distance3(point, centre)).toBeCloseTo(225, 6);
    }
  }
});
