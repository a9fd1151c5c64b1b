import { describe, expect, test } from "vitest";
import { loopBounds } from "../../lib/plane/loop-bounds.ts";
import { enlargePiece } from "../../lib/seams/enlarge-piece.ts";
import { box } from "../fixtures/blocks.ts";
import { listPanels, makeCover, pieceNamed } from "../fixtures/make-cover.ts";

// What broke: on full-size sheets of a cloth that is cut before it is washed the cut line was enlarged, but
// the seam line, notches and marks were not: up to 3 % of their way off at the far end.
describe("a piece on cloth that is still to shrink", () => {
  const panels = listPanels(["b/top"], ["b/underside"]);
  const [allowance, shrink] = [15, 0.03];
  const { cover } = makeCover(
    [box("b", [1000, 600, 80])],
    { panels, seamAllowance: allowance },
    { shrink },
  );
  const plain = pieceNamed(cover, "b/top");
  const grown = enlargePiece(plain, shrink);

  test("has its seam line one allowance inside the cut line all round, both enlarged alike", () => {
    const [cut, seam] = [grown.outline.outer, grown.finished.outer].map(loopBounds);
    const wide = allowance / (1 - shrink);
    for (const axis of [0, 1] as const) {
      expect(seam!.min[axis] - cut!.min[axis]).toBeCloseTo(wide, 9);
      expect(cut!.max[axis] - seam!.max[axis]).toBeCloseTo(wide, 9);
    }
  });

  test("shrinks back to the notches of the finished piece", () => {
    expect(grown.notches.length).toBe(plain.notches.length);
    grown.notches.forEach(({ at }, i) =>
      at.forEach((part, axis) =>
        expect(part * (1 - shrink)).toBeCloseTo(plain.notches[i]!.at[axis]!, 9),
      ),
    );
  });

  test("of cloth that does not shrink is left alone", () => {
    expect(enlargePiece(plain, 0)).toBe(plain);
  });
});
