import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Mm, Point, Segment } from "../../lib/plane/types.ts";
import { distance, dot, subtract } from "../../lib/plane/points.ts";
import { pointAlong, segmentLength } from "../../lib/plane/segments.ts";
import type { Panel } from "../../lib/panels/types.ts";
import type { Piece } from "../../lib/seams/types.ts";
import { blockSeat, box, cylinder } from "../fixtures/blocks.ts";
import { anyBlocks } from "../fixtures/random-blocks.ts";
import { sewPanels } from "../fixtures/sew-panels.ts";

/** Notches nearer than this are taken for one another, in mm. */
const near: Mm = 3;

interface Round {
  readonly length: Mm;
  readonly corners: readonly Mm[];
  readonly notches: readonly Mm[];
}

/** How far along a segment a point of it lies. */
function shareAlong(segment: Segment, at: Point): number {
  if (segment.kind === "line") {
    const [along, own] = [subtract(segment.to, segment.from), subtract(at, segment.from)];
    return Math.max(0, Math.min(1, dot(own, along) / dot(along, along)));
  }
  return Array.from({ length: 1601 }, (_, i) => i / 1600).reduce((a, b) =>
    distance(pointAlong(segment, b), at) < distance(pointAlong(segment, a), at) ? b : a,
  );
}

/** Corners and notches of one loop of a panel, as distances round it. */
function goRound(loop: Panel["loops"][number], piece: Piece): Round {
  let along = 0;
  const corners: Mm[] = [];
  const notches: Mm[] = [];
  for (const { segments } of loop) {
    for (const segment of segments) {
      const own = segmentLength(segment);
      corners.push(along);
      for (const { at } of piece.notches) {
        const share = shareAlong(segment, at);
        if (distance(pointAlong(segment, share), at) < 0.5) notches.push(along + share * own);
      }
      along += own;
    }
  }
  return { length: along, corners, notches };
}

/** Whether every place lies near one of the others, round and round. */
const covers = (places: readonly Mm[], others: readonly Mm[], length: Mm): boolean =>
  places.every((one) =>
    others.some((other) => {
      const off = (((one - other) % length) + length) % length;
      return Math.min(off, length - off) <= near;
    }),
  );

/** Ways to lay a loop on itself, turned or flipped, so that corners and notches all meet. */
function wrongWays({ length, corners, notches }: Round): string[] {
  const found: string[] = [];
  for (const isFlipped of [false, true]) {
    const turned = (place: Mm) => (isFlipped ? -place : place);
    for (const from of corners) {
      const shift = from - turned(corners[0]!);
      if (!isFlipped && Math.abs(shift) <= near) continue;
      const move = (places: readonly Mm[]) => places.map((place) => turned(place) + shift);
      if (covers(move(corners), corners, length) && covers(move(notches), notches, length))
        found.push(`${isFlipped ? "flipped" : "turned"} by ${shift.toFixed(1)} of ${length}`);
    }
  }
  return found;
}

const check = ({ panels, pieces, seams }: ReturnType<typeof sewPanels>) => {
  const long = new Set(seams.filter(({ length }) => length[0] >= 200).map(({ id }) => id));
  for (const panel of panels) {
    const piece = pieces.find(({ id }) => id === panel.id)!;
    for (const loop of panel.loops) {
      const round = goRound(loop, piece);
      const own = piece.edges.filter(({ segments }) =>
        loop.some((side) => side.segments[0] === segments[0]),
      );
      // A loop of short seams only has too little edge for notches that tell.
      if (!own.some(({ seam }) => long.has(seam!))) continue;
      expect(wrongWays(round), `${panel.id} ${panel.label}`).toEqual([]);
    }
  }
};

describe("notches", () => {
  test("are two at least on every seam longer than 20 cm", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        const { pieces, seams } = sewPanels(blocks);
        for (const { id, length } of seams.filter((seam) => seam.length[0] > 200)) {
          const marks = pieces.flatMap(({ notches }) => notches.filter(({ seam }) => seam === id));
          expect(marks.length, `${id}, ${length[0]} mm`).toBeGreaterThanOrEqual(4);
        }
      }),
      { numRuns: 20, seed: 5, endOnFailure: true },
    );
  });

  test.each([
    ["a cube", [box("b", [450, 450, 450])]],
    ["a square cushion", [box("b", [450, 450, 80])]],
    ["a long cushion", [box("b", [1200, 450, 80])]],
    ["a drum", [cylinder("drum", 450, 360)]],
    ["the block seat", blockSeat],
  ])("of %s meet in one way only: no panel can be sewn on turned or flipped", (_, blocks) => {
    for (const rule of ["plain", "auto"] as const) check(sewPanels(blocks, { rule }));
  });

  test("of any form meet in one way only", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => check(sewPanels(blocks))),
      { numRuns: 20, seed: 6, endOnFailure: true },
    );
  });
});
