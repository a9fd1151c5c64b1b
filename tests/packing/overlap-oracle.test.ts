import { expect, test } from "vitest";
import type { Point, Polygon } from "../../lib/plane/types.ts";
import { sharedArea, worstOverlap } from "./overlap-oracle.ts";

const square = (x: number, y: number, size = 100): Polygon => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];

test("two squares set 40 across and 30 up from each other share 60 × 70", () => {
  expect(sharedArea(square(0, 0), square(40, 30))).toBeCloseTo(4200, 6);
});

// An unrounded lay of thirty copies once brought the library down: corners a hair apart.
test("fans of triangles that meet along turned sides share nothing, a hair more or less", () => {
  const corner = (turn: number, hair: number): Point => [
    1234.567 + 180 * Math.cos(turn) + hair,
    7654.321 + 180 * Math.sin(turn) - hair,
  ];
  const fan = Array.from({ length: 30 }, (_, i): Polygon => {
    const [from, to] = [(i * Math.PI) / 15, ((i + 1) * Math.PI) / 15];
    return [[1234.567, 7654.321], corner(from, i * 1e-13), corner(to, -i * 1e-13)];
  });
  expect(worstOverlap(fan)).toBeLessThan(1e-3);
});
