import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { containsPoint } from "../../lib/plane/contains-point.ts";
import { flattenLoop } from "../../lib/plane/flatten-loop.ts";
import { distance } from "../../lib/plane/points.ts";
import { pointAlong, segmentLength } from "../../lib/plane/segments.ts";
import type { Loop, Point, Polygon } from "../../lib/plane/types.ts";
import type { SeamRun } from "../../lib/seams/find-seams.ts";
import { threadShort } from "../../lib/seams/clip-corners.ts";
import { blockSeat, box, cylinder } from "../fixtures/blocks.ts";
import { anyBlocks } from "../fixtures/random-blocks.ts";
import { sewPanels } from "../fixtures/sew-panels.ts";

const runs = { numRuns: 40, seed: 11, endOnFailure: true };

describe("the seams of any cover", () => {
  test("join two edges of one length, letter by letter", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        for (const { length } of sewPanels(blocks).seams) {
          // Free curves are chords in two flats: they agree to a twentieth of a millimetre.
          expect(Math.abs(length[0] - length[1])).toBeLessThan(0.05 + 1e-4 * length[0]);
        }
      }),
      runs,
    );
  });

  test("take in every edge of the solid once, or else it is a fold", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        const { solid, panels, seams } = sewPanels(blocks);
        const folded = panels.flatMap(({ folds }) => folds.map(({ edge }) => edge));
        const sewn = seams.flatMap(({ edges }) => edges);
        expect([...folded, ...sewn].toSorted()).toEqual(solid.edges.map(({ id }) => id).toSorted());
      }),
      runs,
    );
  });

  test("come in an order that leaves none out, the open ones last", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        const { seams } = sewPanels(blocks);
        const orders = seams.map(({ order }) => order).toSorted((a, b) => a - b);
        expect(orders).toEqual(seams.map((_, i) => i + 1));
        const isOpen = seams
          .toSorted((a, b) => a.order - b.order)
          .map(({ state }) => state === "open");
        expect(isOpen).toEqual(isOpen.toSorted((a, b) => Number(a) - Number(b)));
        expect(new Set(seams.map(({ id }) => id)).size).toBe(seams.length);
      }),
      runs,
    );
  });

  test("hang all the panels together", () => {
    const { panels, seams } = sewPanels(blockSeat);
    const reached = new Set([panels[0]!.id]);
    for (let round = 0; round < panels.length; round++) {
      for (const { panels: pair } of seams) {
        if (pair.some((panel) => reached.has(panel))) pair.forEach((panel) => reached.add(panel));
      }
    }
    expect(reached.size).toBe(panels.length);
  });
});

/** How far along a list of sides a point of its outline lies, walked in the run's order. */
function alongSides(sides: SeamRun["first"], at: Point, isBackward: boolean): number {
  let run = 0;
  let best = { off: Infinity, along: 0 };
  for (const { segments, length } of sides) {
    let within = 0;
    for (const segment of segments) {
      const own = segmentLength(segment);
      for (let i = 0; i <= 400; i++) {
        const off = distance(pointAlong(segment, i / 400), at);
        const here = within + (own * i) / 400;
        if (off < best.off) best = { off, along: run + (isBackward ? length - here : here) };
      }
      within += own;
    }
    run += length;
  }
  return best.along;
}

describe("notches", () => {
  test("come in twos, at the same distance along the seam on both panels", () => {
    fc.assert(
      fc.property(anyBlocks(2), (blocks) => {
        const { pieces, seams, runs: sewn } = sewPanels(blocks);
        const all = pieces.flatMap(({ id, notches }) => notches.map((notch) => ({ id, notch })));
        for (const number of new Set(all.map(({ notch }) => notch.number))) {
          const twins = all.filter(({ notch }) => notch.number === number);
          expect(twins.length).toBe(2);
          expect(twins[0]!.notch.seam).toBe(twins[1]!.notch.seam);
          const seam = seams.find(({ id }) => id === twins[0]!.notch.seam)!;
          expect(twins.map(({ id }) => id).toSorted()).toEqual([...seam.panels].toSorted());
          // A dart and a ring can be met from two ends: there the two are told apart below.
          if (seam.panels[0] === seam.panels[1] || seam.isRing) continue;
          const run = sewn.find(({ first }) => first[0]!.edge === seam.edges[0])!;
          const [own, other] = [run.first, run.second].map(
            (sides) => twins.find(({ id }) => id === sides[0]!.panel)!.notch,
          );
          const [a, b] = [
            alongSides(run.first, own!.at, false),
            alongSides(run.second, other!.at, true),
          ];
          expect(Math.abs(a - b)).toBeLessThan(0.005 * seam.length[0] + 0.1);
        }
      }),
      { ...runs, numRuns: 30 },
    );
  });

  test("of a ring lie at the same distance too", () => {
    const { pieces } = sewPanels([cylinder("drum", 300, 200)]);
    const top = pieces.find(({ label }) => label === "panel 2" || label.includes("top"))!;
    const numbers = top.notches.map(({ number }) => number);
    const band = pieces.find(
      (piece) => piece !== top && piece.notches.some(({ number }) => numbers.includes(number)),
    )!;
    const pairs = top.notches.map((notch) => ({
      notch,
      twin: band.notches.find(({ number }) => number === notch.number)!,
    }));
    // Round a disc of radius r an angle a is r a along the strip.
    const centre: Point = [150, 150];
    const angles = pairs.map(({ notch }) =>
      Math.atan2(notch.at[1] - centre[1], notch.at[0] - centre[0]),
    );
    const places = pairs.map(({ twin }) => twin.at[0]);
    for (let i = 1; i < pairs.length; i++) {
      const round = Math.abs(angles[i]! - angles[i - 1]!) % (2 * Math.PI);
      const step = Math.min(round, 2 * Math.PI - round) * 150;
      const straight = Math.abs(places[i]! - places[i - 1]!);
      const wrapped = Math.min(straight, 2 * Math.PI * 150 - straight);
      expect(wrapped).toBeCloseTo(step, 6);
    }
    // Four quarters, the first two double: it is the second ring of this length.
    expect(pairs.length).toBe(6);
  });
});

const toSegment = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const square = (bx - ax) ** 2 + (by - ay) ** 2;
  const share = square === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square;
  const held = Math.max(0, Math.min(1, share));
  return Math.hypot(x - ax - held * (bx - ax), y - ay - held * (by - ay));
};
const toOutline = (point: Point, outline: Polygon): number =>
  Math.min(
    ...outline.map((corner, i) => toSegment(point, corner, outline[(i + 1) % outline.length]!)),
  );
const samplesOf = (loop: Loop): Point[] =>
  loop.flatMap((segment) => [0, 0.21, 0.5, 0.83].map((share) => pointAlong(segment, share)));

describe("the cut line of any piece", () => {
  const allowance = 12;
  test("lies outside the seam line by the allowance, and nowhere nearer", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        for (const { finished, outline } of sewPanels(blocks, { allowance }).pieces) {
          const [seam, cut] = [flattenLoop(finished.outer), flattenLoop(outline.outer)];
          for (const at of samplesOf(finished.outer)) {
            expect(toOutline(at, cut)).toBeGreaterThan(allowance - 0.11);
            expect(containsPoint(cut, at)).toBe(true);
          }
          // Sharp corners stick out as far as the mitre goes.
          for (const at of samplesOf(outline.outer)) {
            expect(toOutline(at, seam)).toBeGreaterThan(allowance - 0.11);
            expect(toOutline(at, seam)).toBeLessThan(3.2 * allowance);
          }
        }
      }),
      runs,
    );
  });

  test("of a box is a rectangle an allowance larger all round", () => {
    const { pieces } = sewPanels([box("b", [300, 200, 80])], { allowance });
    for (const { finished, outline, cutSize } of pieces) {
      if (finished.outer.length !== 4) continue;
      expect(outline.outer.length).toBe(4);
      const width = Math.max(...finished.outer.map(({ from }) => from[0]));
      expect(cutSize[0]).toBeCloseTo(width + 2 * allowance, 9);
    }
  });
});

describe("clips", () => {
  test("run in from the cut line and stop a thread short of the seam line", () => {
    const { pieces } = sewPanels(blockSeat);
    const clips = pieces.flatMap(({ clips: own, finished }) =>
      own.map((clip) => ({ clip, seam: flattenLoop(finished.outer) })),
    );
    expect(clips.length).toBeGreaterThan(0);
    for (const { clip, seam } of clips) {
      const nearest = seam.reduce((a, b) => (distance(b, clip.to) < distance(a, clip.to) ? b : a));
      const gap = Math.min(distance(nearest, clip.to), toOutline(clip.to, seam));
      expect(gap).toBeGreaterThan(threadShort / 2);
      expect(gap).toBeLessThan(threadShort + 1e-6);
      expect(distance(clip.from, clip.to)).toBeGreaterThan(5);
    }
  });
});
