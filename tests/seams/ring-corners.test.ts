import { describe, expect, test } from "vitest";
import { cylinder, frustum } from "../fixtures/blocks.ts";
import { makeCover } from "../fixtures/make-cover.ts";

describe("a ring of cloth round a circle", () => {
  // What broke: the ends of the flat side of a cone stand aslant to one another, and that was taken for a
  // corner to clip and to pivot at, though the strip is joined end to end before.
  test.each([
    { name: "the side of a cone", blocks: [frustum("foot", 320, 240, 200)] },
    {
      name: "a cone under a wider disc",
      blocks: [
        frustum("foot", 320, 240, 200, [20, 20, 0]),
        cylinder("disc", 360, 80, "z", [0, 0, 200]),
      ],
    },
  ])("has no corner: $name", ({ blocks }) => {
    const { cover } = makeCover(blocks, { closing: { kind: "zip", stock: null } });
    for (const { corners } of cover.seams) expect(corners).toEqual([]);
    for (const { clips } of cover.pieces) expect(clips).toEqual([]);
  });
});
