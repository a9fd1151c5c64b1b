import type { Point } from "../plane/types.ts";
import { hideLines } from "./hide-lines.ts";
import { meshLines } from "./mesh-lines.ts";
import type { Scene } from "./mesh-scene.ts";
import { pathOf } from "./paper-path.ts";
import type { PathInk } from "./types.ts";

/** The lines of a body that the viewer sees: sharp edges and the sides of round things. */
export function drawBody(scene: Scene): PathInk {
  const lines = meshLines(scene);
  const wanted = [...lines.features, ...lines.silhouettes];
  const seen = hideLines(wanted, scene, lines).filter(({ isVisible }) => isVisible);
  const paths = joinRuns(seen.map(({ from, to }): [Point, Point] => [from, to])).map((run) =>
    pathOf(run),
  );
  return { kind: "path", className: "line edge", paths, isObstacle: true };
}

/** Link stretches that meet end to end in line, so that dashes and joins look right. */
export function joinRuns(stretches: readonly [Point, Point][]): Point[][] {
  const runs: Point[][] = [];
  const open = new Map<string, Point[]>();
  for (const [from, to] of stretches) {
    if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 0.01) continue;
    const run = open.get(endKey(from)) ?? open.get(endKey(to));
    const isForward = run === open.get(endKey(from));
    const [near, far] = isForward ? [from, to] : [to, from];
    if (run) {
      open.delete(endKey(near));
      run.push(far);
      open.set(endKey(far), run);
    } else {
      const fresh = [from, to];
      runs.push(fresh);
      open.set(endKey(to), fresh);
    }
  }
  return runs;
}

function endKey([x, y]: Point): string {
  return `${Math.round(x * 50)},${Math.round(y * 50)}`;
}
