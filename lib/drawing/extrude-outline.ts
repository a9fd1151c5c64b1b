import { Clipper, type PathsD } from "clipper2-ts";
import type { Mm, Polygon } from "../plane/types.ts";
import type { Axis } from "../project/types.ts";
import type { Point3, SolidMesh } from "../solids/types.ts";

/** How a flat part stands in space: the axes its outline's x, y and its thickness run along. */
export interface Standing {
  readonly across: Axis;
  readonly up: Axis;
  readonly thin: Axis;
  readonly thickness: Mm;
  readonly at: Point3;
}

const indexOf: Readonly<Record<Axis, 0 | 1 | 2>> = { x: 0, y: 1, z: 2 };

/** Give an outline with holes a thickness and stand it in space. Rings of either direction will do. */
export function extrudeOutline(rings: readonly Polygon[], standing: Standing): SolidMesh {
  const { across, up, thin, thickness, at } = standing;
  const points: Point3[] = [];
  const triangles: (readonly [number, number, number])[] = [];
  const faces: string[] = [];
  const place = (x: Mm, y: Mm, depth: Mm): number => {
    const point: [number, number, number] = [at[0], at[1], at[2]];
    point[indexOf[across]] += x;
    point[indexOf[up]] += y;
    point[indexOf[thin]] += depth;
    return points.push(point) - 1;
  };
  // A left-handed choice of axes turns every triangle over.
  const order = `${across}${up}${thin}`;
  const isTurned = !["xyz", "yzx", "zxy"].includes(order);
  const add = (a: number, b: number, c: number, face: string) => {
    triangles.push(isTurned ? [a, c, b] : [a, b, c]);
    faces.push(face);
  };
  const paths: PathsD = orient(rings).map((ring) => ring.map(([x, y]) => ({ x, y })));
  for (const triangle of Clipper.triangulateD(paths, 3).solution) {
    const corners = Clipper.areaD(triangle) < 0 ? [...triangle].reverse() : triangle;
    const [p, q, r] = corners;
    if (!p || !q || !r) continue;
    const [a, b, c] = [p, q, r].map(({ x, y }) => place(x, y, thickness));
    add(a ?? 0, b ?? 0, c ?? 0, "over");
    const [d, e, f] = [p, q, r].map(({ x, y }) => place(x, y, 0));
    add(d ?? 0, f ?? 0, e ?? 0, "under");
  }
  orient(rings).forEach((ring, number) => {
    ring.forEach(([ax, ay], index) => {
      const [bx, by] = ring[(index + 1) % ring.length] ?? [ax, ay];
      const [a, b] = [place(ax, ay, 0), place(bx, by, 0)];
      const [c, d] = [place(bx, by, thickness), place(ax, ay, thickness)];
      add(a, b, c, `edge-${number}-${index}`);
      add(a, c, d, `edge-${number}-${index}`);
    });
  });
  return { points, triangles, faces };
}

/** Outer ring counter-clockwise, holes clockwise. */
function orient(rings: readonly Polygon[]): Polygon[] {
  return rings.map((ring, index) => {
    const area = ring.reduce((sum, [x, y], i) => {
      const [nx, ny] = ring[(i + 1) % ring.length] ?? [x, y];
      return sum + x * ny - nx * y;
    }, 0);
    return area > 0 === (index === 0) ? ring : [...ring].reverse();
  });
}
