import type { Mm, Point } from "../plane/types.ts";
import type { Point3 } from "../solids/types.ts";
import { type MeshLines, meshLines, type SpaceLine } from "./mesh-lines.ts";
import { nearnessAt, type Scene, type SceneTriangle } from "./mesh-scene.ts";
import { nearness, project } from "./space-view.ts";

/** Part of a line as the viewer sees it, on the paper. */
export interface SeenLine {
  readonly from: Point;
  readonly to: Point;
  readonly isVisible: boolean;
}

/**
 * Real millimetres by which something must stand in front to hide a line.
 *
 * @source our choice: well above the strays of flattened arcs, well below any foam block
 */
const IN_FRONT: Mm = 1;

/**
 * Cut lines in space into what the viewer sees and what is hidden.
 *
 * A line's visibility changes only where it passes behind a contour, so it is split where the two
 * cross on the paper and each part is tested once, at its middle.
 *
 * @source Appel, "The notion of quantitative invisibility", 1967 (splitting at contours)
 */
export function hideLines(
  lines: readonly SpaceLine[],
  scene: Scene,
  { contours }: Pick<MeshLines, "contours"> = meshLines(scene),
): SeenLine[] {
  const fronts = scene.triangles.filter(({ isFront }) => isFront);
  const edges = contours.map(({ from, to }): [Point, Point] => [
    project(scene.view, from),
    project(scene.view, to),
  ]);
  return lines.flatMap((line) => {
    const cuts = [0, ...crossings(line, edges, scene), 1].sort((a, b) => a - b);
    const seen: SeenLine[] = [];
    cuts.forEach((start, index) => {
      const end = cuts[index + 1];
      if (end === undefined || end - start < 1e-6) return;
      const middle = between(line, (start + end) / 2);
      seen.push({
        from: project(scene.view, between(line, start)),
        to: project(scene.view, between(line, end)),
        isVisible: !isHidden(middle, fronts, scene),
      });
    });
    return joinAlike(seen);
  });
}

/** Shares of the line at which it meets contours on the paper. */
function crossings(line: SpaceLine, edges: readonly [Point, Point][], { view }: Scene): number[] {
  const [a, b] = [project(view, line.from), project(view, line.to)];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const shares: number[] = [];
  for (const [c, d] of edges) {
    const [ex, ey] = [d[0] - c[0], d[1] - c[1]];
    const across = dx * ey - dy * ex;
    if (Math.abs(across) < 1e-12) continue;
    const share = ((c[0] - a[0]) * ey - (c[1] - a[1]) * ex) / across;
    const other = ((c[0] - a[0]) * dy - (c[1] - a[1]) * dx) / across;
    if (share > 1e-6 && share < 1 - 1e-6 && other > -1e-6 && other < 1 + 1e-6) shares.push(share);
  }
  return shares;
}

function isHidden(point: Point3, fronts: readonly SceneTriangle[], { view }: Scene): boolean {
  const at = project(view, point);
  const own = nearness(view, point);
  return fronts.some((triangle) => {
    const near = nearnessAt(triangle, at);
    return near !== null && near > own + IN_FRONT;
  });
}

function between({ from, to }: SpaceLine, share: number): Point3 {
  return [
    from[0] + (to[0] - from[0]) * share,
    from[1] + (to[1] - from[1]) * share,
    from[2] + (to[2] - from[2]) * share,
  ];
}

/** Neighbouring parts that are seen alike become one. */
function joinAlike(parts: readonly SeenLine[]): SeenLine[] {
  const joined: SeenLine[] = [];
  for (const part of parts) {
    const last = joined[joined.length - 1];
    if (last && last.isVisible === part.isVisible)
      joined[joined.length - 1] = { ...last, to: part.to };
    else joined.push(part);
  }
  return joined;
}
