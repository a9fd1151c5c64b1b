import type { Point, Polygon } from "../../lib/plane/types.ts";
import type { FabricStock } from "../../lib/project/types.ts";
import type { LayPiece } from "../../lib/seams/types.ts";

/** One inch in millimetres. */
export const inch = 25.4;

/** A rectangle with its lowest-left corner at the origin. */
export const rectangle = (width: number, height: number): Polygon => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

/** Plain cloth without selvedge, changed as asked. */
export const cloth = (width: number, change: Partial<FabricStock> = {}): FabricStock => ({
  kind: "fabric",
  id: "cloth",
  label: "cloth",
  width,
  selvedge: 0,
  direction: "one-way",
  repeat: null,
  have: 0,
  shrink: 0,
  price: null,
  isTwoFaced: false,
  thickness: null,
  ...change,
});

/** A piece to lay, upright unless changed. */
export const piece = (id: string, outline: Polygon, copies = 1, isUpright = true): LayPiece => ({
  id,
  label: id,
  copies,
  outline,
  isUpright,
});

/** The outline moved so that its lowest-left bound is at the origin. */
export function atOrigin(outline: Polygon): Polygon {
  const left = Math.min(...outline.map(([x]) => x));
  const low = Math.min(...outline.map(([, y]) => y));
  return outline.map(([x, y]): Point => [x - left, y - low]);
}
