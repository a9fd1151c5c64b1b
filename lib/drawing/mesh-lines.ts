import type { Point3 } from "../solids/types.ts";
import type { Scene, SceneTriangle } from "./mesh-scene.ts";

/** A straight stretch in space. */
export interface SpaceLine {
  readonly from: Point3;
  readonly to: Point3;
}

export interface MeshLines {
  /** Sharp edges between faces. */
  readonly features: readonly SpaceLine[];
  /** Where the surface turns away from the viewer, sharp or not. */
  readonly contours: readonly SpaceLine[];
  /** Contours that are not sharp edges: the sides of round things. */
  readonly silhouettes: readonly SpaceLine[];
}

/**
 * Edges that turn more sharply than this are drawn.
 *
 * @source our choice: facets of a round side turn by less, any corner worth a seam by more
 */
const SHARP = Math.cos((14 * Math.PI) / 180);

/** Find the lines of a mesh that are worth drawing from this view. Corners are matched by place. */
export function meshLines(scene: Scene): MeshLines {
  const pairs = new Map<string, { line: SpaceLine; sides: SceneTriangle[] }>();
  for (const triangle of scene.triangles) {
    const [a, b, c] = triangle.corners;
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      const [k, l] = [placeKey(from), placeKey(to)];
      const key = triangle.body + (k < l ? `${k}|${l}` : `${l}|${k}`);
      const pair = pairs.get(key) ?? { line: { from, to }, sides: [] };
      pair.sides.push(triangle);
      pairs.set(key, pair);
    }
  }
  const features: SpaceLine[] = [];
  const contours: SpaceLine[] = [];
  const silhouettes: SpaceLine[] = [];
  for (const { line, sides } of pairs.values()) {
    const isSharp = sides.length !== 2 || isSharpEdge(sides);
    const isContour = sides.length !== 2 || sides[0]?.isFront !== sides[1]?.isFront;
    if (isSharp) features.push(line);
    if (isContour) contours.push(line);
    if (isContour && !isSharp) silhouettes.push(line);
  }
  return { features, contours, silhouettes };
}

function isSharpEdge([a, b]: readonly SceneTriangle[]): boolean {
  if (!a || !b || a.face === b.face) return false;
  const [n, m] = [normal(a), normal(b)];
  return n[0] * m[0] + n[1] * m[1] + n[2] * m[2] < SHARP;
}

function normal({ corners: [a, b, c] }: SceneTriangle): Point3 {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const n: Point3 = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(...n) || 1;
  return [n[0] / length, n[1] / length, n[2] / length];
}

function placeKey([x, y, z]: Point3): string {
  return `${Math.round(x * 1000)},${Math.round(y * 1000)},${Math.round(z * 1000)}`;
}
