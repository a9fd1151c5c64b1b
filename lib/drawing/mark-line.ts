import type { Point } from "../plane/types.ts";
import { pathOf } from "./paper-path.ts";
import type { LineRole, Mark } from "./types.ts";

/** A run of straight stretches. */
export const markLine =
  (points: readonly Point[], role: LineRole): Mark =>
  (toPaper) => [
    {
      kind: "path",
      className: `line ${role}`,
      paths: [pathOf(points.map(toPaper))],
      isObstacle: role !== "ghost",
    },
  ];
