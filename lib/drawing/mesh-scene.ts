import type { Mm, Point } from "../plane/types.ts";
import type { Point3, SolidMesh } from "../solids/types.ts";
import { nearness, project, type SpaceView } from "./space-view.ts";

/** A mesh as the viewer sees it. */
export interface Scene {
  readonly view: SpaceView;
  readonly triangles: readonly SceneTriangle[];
}

export interface SceneTriangle {
  /** Which mesh it came from; edges of different bodies are never joined. */
  readonly body: string;
  readonly face: string;
  readonly corners: readonly [Point3, Point3, Point3];
  readonly paper: readonly [Point, Point, Point];
  readonly near: readonly [number, number, number];
  readonly isFront: boolean;
  readonly bounds: readonly [left: Mm, top: Mm, right: Mm, bottom: Mm];
}

/** One mesh of a scene; a named body may be shifted and its faces are called `<body>:<face>`. */
export interface SceneMesh {
  readonly mesh: SolidMesh;
  readonly body?: string;
  readonly shift?: Point3;
}

/** Project meshes for drawing. */
export function makeScene(meshes: readonly SceneMesh[], view: SpaceView): Scene {
  const triangles = meshes.flatMap(({ mesh, shift = [0, 0, 0], body = "" }) =>
    mesh.triangles.flatMap((indices, index) => {
      const corners = indices.map((i): Point3 => {
        const [x, y, z] = mesh.points[i] ?? [0, 0, 0];
        return [x + shift[0], y + shift[1], z + shift[2]];
      });
      const [a, b, c] = corners;
      if (!a || !b || !c) return [];
      const face = mesh.faces[index] ?? "";
      return [sceneTriangle({ body, face: body ? `${body}:${face}` : face }, [a, b, c], view)];
    }),
  );
  return { view, triangles };
}

function sceneTriangle(
  name: { readonly body: string; readonly face: string },
  corners: readonly [Point3, Point3, Point3],
  view: SpaceView,
): SceneTriangle {
  const [a, b, c] = corners;
  const paper = [project(view, a), project(view, b), project(view, c)] as const;
  const near = [nearness(view, a), nearness(view, b), nearness(view, c)] as const;
  const [p, q, r] = paper;
  // Counter-clockwise from outside; the paper's y points down, so a front is negative here.
  const twice = (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return {
    ...name,
    corners,
    paper,
    near,
    isFront: twice < -1e-9 * view.scale * view.scale,
    bounds: [
      Math.min(p[0], q[0], r[0]),
      Math.min(p[1], q[1], r[1]),
      Math.max(p[0], q[0], r[0]),
      Math.max(p[1], q[1], r[1]),
    ],
  };
}

/** How near a triangle is at a point of the paper, or null where it does not cover the point. */
export function nearnessAt(triangle: SceneTriangle, [x, y]: Point, slack = 0): number | null {
  const [left, top, right, bottom] = triangle.bounds;
  if (x < left - slack || x > right + slack || y < top - slack || y > bottom + slack) return null;
  const [p, q, r] = triangle.paper;
  const area = (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  if (area === 0) return null;
  const v = ((x - p[0]) * (r[1] - p[1]) - (y - p[1]) * (r[0] - p[0])) / area;
  const w = ((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / area;
  const u = 1 - v - w;
  const least = -slack;
  if (u < least || v < least || w < least) return null;
  return u * triangle.near[0] + v * triangle.near[1] + w * triangle.near[2];
}
