import type { SolidEdge } from "../solids/types.ts";
import { hideLines } from "./hide-lines.ts";
import type { Scene } from "./mesh-scene.ts";
import { edgeLines } from "./open-view.ts";
import { pathOf } from "./paper-path.ts";
import type { PathInk } from "./types.ts";

/** What the viewer sees of some edges of a solid. */
export function drawEdges(edges: readonly SolidEdge[], scene: Scene, className: string): PathInk {
  const seen = hideLines(edges.flatMap(edgeLines), scene).filter(({ isVisible }) => isVisible);
  const paths = seen.map(({ from, to }) => pathOf([from, to]));
  return { kind: "path", className, paths, isObstacle: true };
}
