import type { Mm, Point } from "../plane/types.ts";
import { pathOf } from "./paper-path.ts";
import type { Ink, LineRole } from "./types.ts";

/** Length of an arrowhead on the paper and half its width. @source ISO 129-1: closed and filled, about 15° */
const HEAD: readonly [length: Mm, half: Mm] = [2.6, 0.45];
const BROAD_HEAD: readonly [length: Mm, half: Mm] = [3.6, 1.3];

/** A filled arrowhead on the paper with its point at `tip`, pointing away from `from`. */
export function arrowHead(tip: Point, from: Point, isBroad = false): Ink {
  const [length, half] = isBroad ? BROAD_HEAD : HEAD;
  const reach = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
  const along: Point = [(tip[0] - from[0]) / reach, (tip[1] - from[1]) / reach];
  const base: Point = [tip[0] - along[0] * length, tip[1] - along[1] * length];
  const wing = (side: number): Point => [
    base[0] - along[1] * half * side,
    base[1] + along[0] * half * side,
  ];
  const paths = [pathOf([tip, wing(1), wing(-1)], true)];
  return { kind: "path", className: "head", paths, isObstacle: isBroad };
}

/** An arrow on the paper. */
export function drawArrow(from: Point, tip: Point, role: LineRole, isBroad = true): Ink[] {
  const reach = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
  const [length] = isBroad ? BROAD_HEAD : HEAD;
  const share = Math.max(0, 1 - length / reach);
  const neck: Point = [from[0] + (tip[0] - from[0]) * share, from[1] + (tip[1] - from[1]) * share];
  return [
    { kind: "path", className: `line ${role}`, paths: [pathOf([from, neck])], isObstacle: true },
    arrowHead(tip, from, isBroad),
  ];
}
