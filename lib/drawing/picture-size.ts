import type { Degrees, Mm } from "../plane/types.ts";
import { boxOfPoints } from "./boxes.ts";
import { makeScene, type SceneMesh } from "./mesh-scene.ts";
import { spaceView } from "./space-view.ts";

/** Width and height of a projected body at full size. */
export function pictureSize(
  meshes: readonly SceneMesh[],
  [azimuth, elevation]: readonly [Degrees, Degrees],
): readonly [Mm, Mm] {
  const scene = makeScene(meshes, spaceView(azimuth, elevation));
  const box = boxOfPoints(scene.triangles.flatMap(({ paper }) => paper));
  return [box.right - box.left, box.bottom - box.top];
}
