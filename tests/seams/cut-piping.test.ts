import { expect, test } from "vitest";
import { loopBounds } from "../../lib/plane/loop-bounds.ts";
import type { Piece } from "../../lib/seams/types.ts";
import { pipedPad } from "../fixtures/piped-pad.ts";

const stripOf = (pad: Parameters<typeof pipedPad>[0]): Piece =>
  pipedPad(pad).covers[0]!.pieces.find(({ id }) => id === "pad-piping")!;

// Worked by hand: round the pad 2 × (600 + 400), ends over each other by 50; a strip once round the
// cord and two allowances wide; the cut is larger by 1 / (1 − 5 %).
test.each([
  { shrink: "0 %", by: 1 },
  { shrink: "5 %", by: 1 / 0.95 },
])("strips for piping leave room to shrink by $shrink", ({ shrink, by }) => {
  const strip = stripOf({ shrink, cut: "straight" });
  const wide = Math.PI * 5 + 2 * 15;
  const { max } = loopBounds(strip.finished.outer);
  expect(max[1]).toBeCloseTo(wide, 9);
  expect(strip.cut).toBe(2);
  expect(2 * max[0] - 2 * 15).toBeCloseTo(2050, 9);
  expect(strip.cutSize[1]).toBeCloseTo(wide * by, 9);
  expect(strip.cutSize[0]).toBeCloseTo(max[0] * by, 9);
  expect(strip.cutSize[0]).toBeLessThanOrEqual(1400);
});

test("a bias strip keeps its slope when it is cut larger", () => {
  const [flat, larger] = [
    stripOf({ shrink: "0 %", cut: "bias" }),
    stripOf({ shrink: "10 %", cut: "bias" }),
  ];
  expect(larger.cut * larger.area).toBeGreaterThan(flat.cut * flat.area);
  const [across, rise] = larger.outline.outer[1]!.to.map(
    (value, i) => value - larger.outline.outer[1]!.from[i]!,
  ) as [number, number];
  expect(across).toBeCloseTo(rise, 9);
  expect(larger.cutSize[1]).toBeLessThanOrEqual(700 + 1e-9);
});
