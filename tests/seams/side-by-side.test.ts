import { describe, expect, test } from "vitest";
import { box } from "../fixtures/blocks.ts";
import { listPanels, makeCover } from "../fixtures/make-cover.ts";

/** To a millionth of a millimetre: arithmetic leaves no more. */
const round = (size: number) => Math.round(size * 1e6) / 1e6;

describe("sizes side by side", () => {
  // Worked by hand: a pad of 500 × 400 × 80 in a cover 10, 20 and 5 smaller, seams of 12, no shrinkage.
  const { cover } = makeCover([box("b", [500, 400, 80])], {
    panels: listPanels(["b/back", "b/top"], ["b/underside"]),
    ease: [-10, -20, -5],
    seamAllowance: 12,
  });

  test("of a panel are those on the foam, finished and cut", () => {
    const [panel] = cover.panels;
    expect(cover.foamPanels[0]).toEqual({ panel: panel!.id, size: [500, 480] });
    expect(panel!.size.map(round)).toEqual([490, 380 + 75]);
    expect(cover.pieces[0]!.cutSize.map(round)).toEqual([490 + 24, 380 + 75 + 24]);
  });

  test("of a block are the foam and the room it has", () => {
    expect(cover.blockRoom).toEqual([{ block: "b", size: [490, 380, 75] }]);
  });

  test("fall together where the cover fits exactly", () => {
    const exact = makeCover([box("b", [500, 400, 80])], { panels: "plain" }).cover;
    for (const { panel, size } of exact.foamPanels)
      expect(size).toEqual(exact.panels.find(({ id }) => id === panel)!.size);
  });
});
