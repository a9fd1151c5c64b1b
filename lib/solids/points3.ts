import type { Mm } from "../plane/types.ts";
import type { Direction, Point3 } from "./types.ts";

export const add3 = (a: Point3, b: Point3): Point3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract3 = (a: Point3, b: Point3): Point3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale3 = (a: Point3, by: number): Point3 => [a[0] * by, a[1] * by, a[2] * by];
export const dot3 = (a: Point3, b: Point3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross3 = (a: Point3, b: Point3): Point3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length3 = (a: Point3): Mm => Math.hypot(a[0], a[1], a[2]);
export const distance3 = (a: Point3, b: Point3): Mm => length3(subtract3(a, b));
/** A vector of length one; a vector of no length is returned as it is. Tiny parts become 0. */
export function unit3(a: Point3): Direction {
  const length = length3(a);
  if (length === 0) return a;
  const [x, y, z] = scale3(a, 1 / length).map((part) => (Math.abs(part) < 1e-12 ? 0 : part));
  return [x!, y!, z!];
}
/** What is left of `a` after taking off its part along the direction. */
export const flatten3 = (a: Point3, along: Direction): Point3 =>
  subtract3(a, scale3(along, dot3(a, along)));
