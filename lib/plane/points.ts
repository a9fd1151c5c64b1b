import type { Mm, Mm2, Point, Radians } from "./types.ts";

export const add = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]];
export const subtract = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
export const scale = (a: Point, by: number): Point => [a[0] * by, a[1] * by];
export const dot = (a: Point, b: Point): Mm2 => a[0] * b[0] + a[1] * b[1];
/** Positive when b lies counter-clockwise of a (y up). */
export const cross = (a: Point, b: Point): Mm2 => a[0] * b[1] - a[1] * b[0];
export const distance = (a: Point, b: Point): Mm => Math.hypot(a[0] - b[0], a[1] - b[1]);
export const midpoint = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
/** Angle from the +x axis, in (−π, π]. */
export const angleOf = (a: Point): Radians => Math.atan2(a[1], a[0]);
export const fromAngle = (angle: Radians, length: Mm = 1): Point => [
  Math.cos(angle) * length,
  Math.sin(angle) * length,
];
/** A point turned counter-clockwise about the origin. Quarter turns are exact. */
export function rotate([x, y]: Point, by: Radians): Point {
  const [c, s] = cosSin(by);
  return [x * c - y * s, x * s + y * c];
}
/** A vector of length one; a vector of no length is returned as it is. */
export function unit(a: Point): Point {
  const length = Math.hypot(a[0], a[1]);
  return length === 0 ? a : [a[0] / length, a[1] / length];
}
/** The vector a quarter turn counter-clockwise. */
export const leftOf = (a: Point): Point => [-a[1], a[0]];

/** Cosine and sine, exact at quarter turns, so that upright things stay upright. */
export function cosSin(angle: Radians): readonly [number, number] {
  const quarters = angle / (Math.PI / 2);
  const nearest = Math.round(quarters);
  if (Math.abs(quarters - nearest) > 1e-12) return [Math.cos(angle), Math.sin(angle)];
  const table = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  return table[((nearest % 4) + 4) % 4]!;
}

/** The same angle in [0, 2π), with values a hair below 2π taken to 0. */
export function wholeTurn(angle: Radians): Radians {
  const turned = ((angle % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return 2 * Math.PI - turned < 1e-9 ? 0 : turned;
}
