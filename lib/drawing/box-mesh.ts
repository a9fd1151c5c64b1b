import type { Point3, SolidMesh } from "../solids/types.ts";

/** Corners of each side of a box, counter-clockwise from outside, by the bits x 1, y 2, z 4. */
const sides: readonly (readonly [
  name: string,
  corners: readonly [number, number, number, number],
])[] = [
  ["underside", [0, 2, 3, 1]],
  ["top", [4, 5, 7, 6]],
  ["front", [0, 1, 5, 4]],
  ["back", [2, 6, 7, 3]],
  ["left", [0, 4, 6, 2]],
  ["right", [1, 3, 7, 5]],
];

/** An upright box from its lowest corner, its faces called by their sides. */
export function boxMesh(min: Point3, size: Point3): SolidMesh {
  const points = Array.from({ length: 8 }, (_, i): Point3 => [
    min[0] + (i & 1 ? size[0] : 0),
    min[1] + (i & 2 ? size[1] : 0),
    min[2] + (i & 4 ? size[2] : 0),
  ]);
  return {
    points,
    triangles: sides.flatMap(([, [a, b, c, d]]) => [[a, b, c] as const, [a, c, d] as const]),
    faces: sides.flatMap(([name]) => [name, name]),
  };
}
