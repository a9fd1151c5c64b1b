import type { Point3 } from "../solids/types.ts";
import { hideLines } from "./hide-lines.ts";
import { drawArrow } from "./mark-arrow.ts";
import type { Scene } from "./mesh-scene.ts";
import { pathOf } from "./paper-path.ts";
import { project } from "./space-view.ts";
import type { Ink } from "./types.ts";

/** An arrow through space, the way a part moves; what other parts cover of it is left out. */
export function drawMotion(from: Point3, to: Point3, scene: Scene): Ink[] {
  const tip = project(scene.view, to);
  const seen = hideLines([{ from, to }], scene).filter(({ isVisible }) => isVisible);
  return seen.flatMap((line): Ink[] => {
    const isWhole = tip.every((value, i) => Math.abs(value - (line.to[i] ?? 0)) < 0.3);
    if (isWhole) return drawArrow(line.from, line.to, "motion");
    const paths = [pathOf([line.from, line.to])];
    return [{ kind: "path", className: "line motion", paths, isObstacle: true }];
  });
}
