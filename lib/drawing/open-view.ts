import type { Degrees } from "../plane/types.ts";
import type { Face, Point3, Solid, SolidEdge } from "../solids/types.ts";
import { hideLines } from "./hide-lines.ts";
import type { SpaceLine } from "./mesh-lines.ts";
import { makeScene } from "./mesh-scene.ts";
import { dot, spaceView } from "./space-view.ts";

/** Views tried for an opening: the first that shows most of it wins. */
const views: readonly (readonly [Degrees, Degrees])[] = [
  [32, 26],
  [-32, 26],
  [212, 26],
  [148, 26],
  [32, -24],
  [212, -24],
];

/** Outward from the face with most of its rim open: the foam goes in the other way. */
export function pushAxis(solid: Solid, edges: readonly SolidEdge[]): Point3 {
  const openRim = (face: Face) =>
    edges.reduce((sum, { faces, length }) => sum + (faces.includes(face.id) ? length : 0), 0);
  const rim = (face: Face) =>
    solid.edges.reduce((sum, { faces, length }) => sum + (faces.includes(face.id) ? length : 0), 0);
  const share = (face: Face) => openRim(face) / Math.max(1, rim(face)) + openRim(face) / 1e6;
  const [best] = [...solid.faces].sort((a, b) => share(b) - share(a));
  const normal = best?.normal ?? [0, 0, 0];
  return Math.hypot(...normal) > 0.5 ? normal : [0, -1, 0];
}

/** The angles that show most of some edges, the side they open to in front. */
export function bestView(
  edges: readonly SolidEdge[],
  away: Point3,
  solid: Solid,
): readonly [Degrees, Degrees] {
  const scored = views.map((angles) => {
    const view = spaceView(angles[0], angles[1]);
    const scene = makeScene([{ mesh: solid.mesh }], view);
    const seen = hideLines(edges.flatMap(edgeLines), scene)
      .filter(({ isVisible }) => isVisible)
      .reduce((sum, { from, to }) => sum + Math.hypot(from[0] - to[0], from[1] - to[1]), 0);
    return { angles, score: seen * (1 + 0.5 * Math.max(0, dot(away, view.towards))) };
  });
  const [best] = scored.sort((a, b) => b.score - a.score);
  return best?.angles ?? [32, 26];
}

/** An edge as straight stretches. */
export function edgeLines({ path }: SolidEdge): SpaceLine[] {
  return path.flatMap((from, index) => {
    const to = path[index + 1];
    return to ? [{ from, to }] : [];
  });
}
