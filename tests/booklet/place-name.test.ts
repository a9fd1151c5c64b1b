import inPolygon from "point-in-polygon-hao";
import { expect, test } from "vitest";
import { placeName } from "../../lib/booklet/place-name.ts";
import { measureText, textStyles } from "../../lib/drawing/measure-text.ts";
import type { Point } from "../../lib/plane/types.ts";

const size = 5;
const widthOf = (words: string): number =>
  (measureText(words, "label") * size) / textStyles.label.size;

/** A strip on the bias, 62 mm across on the level; the sheet has y down. */
const strip: Point[] = [
  [-331, 300],
  [-269, 300],
  [331, -300],
  [269, -300],
];

// A name that began level with the arrow ran over the cut line of a strip of piping.
test("a name keeps inside a strip that slants", () => {
  const [x, y] = placeName("piping strip", [4, 0], { outline: strip, size });
  const corners: Point[] = [0, widthOf("piping strip")].flatMap((across): Point[] => [
    [x + across, y],
    [x + across, y - size],
  ]);
  const ring = [...strip, strip[0]!].map(([px, py]) => [px, py] as [number, number]);
  for (const corner of corners) expect(inPolygon([...corner], [ring])).toBe(true);
});

test("a name with room where it is asked stays there", () => {
  const square: Point[] = [
    [-100, -100],
    [100, -100],
    [100, 100],
    [-100, 100],
  ];
  expect(placeName("top", [4, 0], { outline: square, size })).toEqual([4, 0]);
});
