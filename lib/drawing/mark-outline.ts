import type { Loop, Polygon, Shape } from "../plane/types.ts";
import { pathOf, pathOfLoop } from "./paper-path.ts";
import type { LineRole, Mark } from "./types.ts";

/** The outline of a shape and its holes, arcs kept as arcs. */
export const markShape =
  (shape: Shape, role: LineRole): Mark =>
  (toPaper) => [
    {
      kind: "path",
      className: `line ${role}`,
      paths: [shape.outer, ...shape.holes].map((loop) => pathOfLoop(loop, toPaper)),
      isObstacle: role !== "ghost",
    },
  ];

/** A closed run of corners. */
export const markPolygon =
  (corners: Polygon, role: LineRole): Mark =>
  (toPaper) => [
    {
      kind: "path",
      className: `line ${role}`,
      paths: [pathOf(corners.map(toPaper), true)],
      isObstacle: role !== "ghost",
    },
  ];

/** Part of an outline, arcs kept as arcs; `className` may add emphasis. */
export const markSegments =
  (segments: Loop, className: string): Mark =>
  (toPaper) => [
    {
      kind: "path",
      className: `line ${className}`,
      paths: [pathOfLoop(segments, toPaper, false)],
      isObstacle: true,
    },
  ];
