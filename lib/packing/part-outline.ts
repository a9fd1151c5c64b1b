import type { Polygon } from "../plane/types.ts";
import type { Part } from "./types.ts";

/** The outline of a sheet part, kerf not counted. */
export const outlineOf = ({ outline, size: [length = 0, width = 0] }: Part): Polygon =>
  outline ?? [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ];
