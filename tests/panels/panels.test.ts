import fc from "fast-check";
import * as polyclip from "polyclip-ts";
import { describe, expect, test } from "vitest";
import { flattenLoop } from "../../lib/plane/flatten-loop.ts";
import { loopArea } from "../../lib/plane/loop-area.ts";
import { atHome, placeLoop, placePoint } from "../../lib/plane/place.ts";
import { distance } from "../../lib/plane/points.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import { pointAlong } from "../../lib/plane/segments.ts";
import type { Loop, Polygon } from "../../lib/plane/types.ts";
import { refoldPanels } from "../../lib/panels/refold-panel.ts";
import type { Panel } from "../../lib/panels/types.ts";
import type { FaceGraph } from "../../lib/panels/unfold-panel.ts";
import type { PanelRule } from "../../lib/project/types.ts";
import { blockSeat, box, cylinder, frustum, prism } from "../fixtures/blocks.ts";
import { listPanels, makeCover } from "../fixtures/make-cover.ts";
import { anyBlocks } from "../fixtures/random-blocks.ts";
import { sewPanels } from "../fixtures/sew-panels.ts";

const runs = { numRuns: 30, seed: 21, endOnFailure: true };
const rules: readonly PanelRule[] = ["plain", "fewest"];

type Rings = readonly (readonly (readonly (readonly number[])[])[])[];
const areaOf = (parts: Rings): number =>
  parts.reduce(
    (sum, rings) =>
      sum +
      rings.reduce(
        (own, ring, i) =>
          own + (i === 0 ? 1 : -1) * Math.abs(polygonArea(ring as unknown as Polygon)),
        0,
      ),
    0,
  );

/** Area that the faces of a panel cover on the table, by a library the search does not use. */
function coveredArea({ faces }: Panel, graph: FaceGraph): { covered: number; sum: number } {
  const laid = faces.map(({ face, placement }) => {
    const { outer, holes } = graph.faces.get(face)!.shape;
    return [outer, ...holes].map((loop) =>
      flattenLoop(loop, 0.05).map((corner) =>
        placePoint(corner, placement).map((part) => Math.round(part * 1e6) / 1e6),
      ),
    );
  });
  const sum = laid.reduce((all, rings) => all + areaOf([rings]), 0);
  const [first, ...rest] = laid as unknown as Parameters<typeof polyclip.union>[0][];
  return { covered: areaOf(polyclip.union(first!, ...rest) as unknown as Rings), sum };
}

describe("panels of any solid", () => {
  test.each(rules)("never lie over themselves, by the rule %s", (rule) => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        const { panels, graph } = sewPanels(blocks, { rule });
        for (const panel of panels) {
          const { covered, sum } = coveredArea(panel, graph);
          // Faces whose round sides touch are flattened to a twentieth of a millimetre.
          expect(Math.abs(sum - covered)).toBeLessThan(4);
        }
      }),
      runs,
    );
  });

  test.each(rules)("keep the area, and fold back, by the rule %s", (rule) => {
    fc.assert(
      fc.property(anyBlocks(4), (blocks) => {
        const { solid, panels, graph } = sewPanels(blocks, { rule });
        const area = panels.reduce((sum, panel) => sum + panel.area, 0);
        expect(Math.abs(area / solid.area - 1)).toBeLessThan(1e-6);
        expect(refoldPanels(panels, graph).worst).toBeLessThan(1e-6);
      }),
      runs,
    );
  });

  test("take every face once", () => {
    fc.assert(
      fc.property(anyBlocks(4), (blocks) => {
        const { solid, panels } = sewPanels(blocks);
        const taken = panels.flatMap(({ faces }) => faces.map(({ face }) => face));
        expect(taken.toSorted()).toEqual(solid.faces.map(({ id }) => id).toSorted());
      }),
      runs,
    );
  });

  test("stand with their lowest-left corner at the origin, outer loop counter-clockwise", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        for (const { shape, size } of sewPanels(blocks).panels) {
          const corners = flattenLoop(shape.outer);
          // Arcs are flattened to a twentieth of a millimetre.
          expect(Math.abs(Math.min(...corners.map(([x]) => x)))).toBeLessThan(0.06);
          expect(Math.abs(Math.min(...corners.map(([, y]) => y)))).toBeLessThan(0.06);
          expect(Math.abs(Math.max(...corners.map(([x]) => x)) - size[0])).toBeLessThan(0.06);
          expect(loopArea(shape.outer)).toBeGreaterThan(0);
          shape.holes.forEach((hole) => expect(loopArea(hole)).toBeLessThan(0));
        }
      }),
      runs,
    );
  });
});

/** Points of an outline by their place, so that two outlines can be compared wherever they start. */
const pointsOf = (loop: Loop) =>
  loop.flatMap((segment) => [segment.from, pointAlong(segment, 0.37), pointAlong(segment, 0.63)]);

function isMirrorImage(one: Panel, other: Panel): boolean {
  const turned = placeLoop(one.shape.outer, {
    ...atHome,
    isFlipped: true,
    shift: [one.size[0], 0],
  });
  const theirs = pointsOf(other.shape.outer);
  return pointsOf(turned).every((point) => theirs.some((at) => distance(point, at) < 1e-2));
}

describe("mirror pairs", () => {
  test("are the mirror image of one another and not the same shape turned over in place", () => {
    const { panels } = sewPanels(blockSeat);
    const pairs = panels.filter(({ mirrorOf }) => mirrorOf !== null);
    expect(pairs.length).toBeGreaterThan(0);
    for (const panel of pairs) {
      const other = panels.find(({ id }) => id === panel.mirrorOf)!;
      expect(isMirrorImage(panel, other)).toBe(true);
    }
  });

  test("really mirror whatever the blocks", () => {
    fc.assert(
      fc.property(anyBlocks(3), (blocks) => {
        const { panels } = sewPanels(blocks);
        for (const panel of panels) {
          if (panel.mirrorOf === null) continue;
          expect(
            isMirrorImage(
              panel,
              panels.find(({ id }) => id === panel.mirrorOf)!,
            ),
          ).toBe(true);
        }
      }),
      runs,
    );
  });

  test("are not made of shapes that are their own mirror image", () => {
    const { panels } = makeCover([box("b", [300, 200, 100])], {
      panels: listPanels(["b/top"], ["b/underside"], ["b/left"], ["b/right"]),
    }).cover;
    expect(panels.every(({ mirrorOf }) => mirrorOf === null)).toBe(true);
    expect(panels.filter(({ sameAs }) => sameAs !== null).length).toBe(3);
  });
});

describe("the proof of folding", () => {
  const moved = (panel: Panel, by: number): Panel => ({
    ...panel,
    loops: panel.loops.map((loop) =>
      loop.map((side, i) => ({
        ...side,
        segments: side.segments.map((segment) => ({
          ...segment,
          to: i === 0 ? ([segment.to[0] + by, segment.to[1]] as const) : segment.to,
        })),
      })),
    ),
  });

  test.each([
    { name: "a box", blocks: [box("b", [300, 200, 100])] },
    { name: "a drum", blocks: [cylinder("b", 300, 200)] },
    { name: "a frustum", blocks: [frustum("b", 300, 200, 250)] },
    {
      name: "a bay pad",
      blocks: [
        prism(
          "b",
          [
            [0, 0],
            [1200, 0],
            [1110, 420],
            [90, 420],
          ],
          80,
        ),
      ],
    },
  ])("fails for $name when a corner is two millimetres out", ({ blocks }) => {
    const { panels, graph } = sewPanels(blocks);
    expect(refoldPanels(panels, graph).ok).toBe(true);
    const wrong = panels.map((panel, i) => (i === 0 ? moved(panel, 2) : panel));
    expect(refoldPanels(wrong, graph).ok).toBe(false);
  });

  test("fails when a fold is bent the wrong way", () => {
    const { panels, graph } = sewPanels(blockSeat);
    const wrong = panels.map((panel) => ({
      ...panel,
      folds: panel.folds.map((fold) => ({ ...fold, turn: -fold.turn })),
    }));
    expect(panels.some(({ folds }) => folds.length > 0)).toBe(true);
    expect(refoldPanels(wrong, graph).ok).toBe(false);
  });
});
