import type { Point } from "../plane/types.ts";
import { cross, distance, subtract } from "../plane/points.ts";
import { polygonArea } from "../plane/polygon-area.ts";

interface OutlineFault {
  readonly fault: string;
  readonly fix: string;
}

const hair = 1e-6; // mm

/** What is wrong with an outline of straight sides, or null. Sides are counted from 1. */
export function outlineFault(corners: readonly Point[]): OutlineFault | null {
  if (corners.length < 3) {
    return {
      fault: `has ${corners.length} corners, and needs 3`,
      fix: "Give three corners or more",
    };
  }
  if (corners.length > 200) {
    return { fault: `has ${corners.length} corners`, fix: "Give 200 corners or fewer" };
  }
  const twice = corners.findIndex((corner, i) => distance(corner, at(corners, i + 1)) < hair);
  if (twice >= 0) {
    const next = ((twice + 1) % corners.length) + 1;
    const fix = "Take one of them out; the first corner is not repeated at the end";
    return { fault: `has corners ${twice + 1} and ${next} in the same place`, fix };
  }
  const crossing = crossingSides(corners);
  if (crossing !== null) {
    const [first, second] = crossing;
    const fix = "List the corners in the order you meet them going round";
    return { fault: `crosses itself: sides ${first + 1} and ${second + 1} meet`, fix };
  }
  if (Math.abs(polygonArea(corners)) < hair) {
    return {
      fault: "encloses nothing",
      fix: "List the corners in the order you meet them going round",
    };
  }
  return null;
}

function at(corners: readonly Point[], index: number): Point {
  return corners[index % corners.length] ?? [0, 0];
}

/** The first two sides that touch other than at a shared corner, counted from 0. */
function crossingSides(corners: readonly Point[]): readonly [number, number] | null {
  const count = corners.length;
  for (let i = 0; i < count; i += 1) {
    for (let j = i + 1; j < count; j += 1) {
      const [a, b] = [at(corners, i), at(corners, i + 1)];
      const [c, d] = [at(corners, j), at(corners, j + 1)];
      const isNext = j === i + 1;
      const isBefore = i === 0 && j === count - 1;
      // Neighbours share a corner; they may only not run back over one another.
      if (isNext && foldsBack(a, b, d)) return [i, j];
      if (isBefore && foldsBack(c, d, b)) return [i, j];
      if (!isNext && !isBefore && touch([a, b], [c, d])) return [i, j];
    }
  }
  return null;
}

function foldsBack(before: Point, corner: Point, after: Point): boolean {
  const [back, on] = [subtract(before, corner), subtract(after, corner)];
  const isInLine = Math.abs(cross(back, on)) < hair * Math.hypot(...back) * Math.hypot(...on);
  return isInLine && back[0] * on[0] + back[1] * on[1] > 0;
}

type Side = readonly [Point, Point];

function touch([a, b]: Side, [c, d]: Side): boolean {
  const turn = (p: Point, q: Point, r: Point) => {
    const value = cross(subtract(q, p), subtract(r, p));
    return Math.abs(value) < hair ? 0 : Math.sign(value);
  };
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && isBetween(a, b, c)) ||
    (abd === 0 && isBetween(a, b, d)) ||
    (cda === 0 && isBetween(c, d, a)) ||
    (cdb === 0 && isBetween(c, d, b))
  );
}

/** Whether a point in line with a side lies on it. */
function isBetween(a: Point, b: Point, p: Point): boolean {
  return Math.abs(distance(a, p) + distance(p, b) - distance(a, b)) < hair;
}
