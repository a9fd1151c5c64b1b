import type { Count } from "../plane/types.ts";
import { intersect, regionArea, unite } from "../plane/clip-polygons.ts";
import type { BlockMesh } from "./mesh-block.ts";
import { flattenPoint, liftPoint } from "./lift-point.ts";
import { dot3 } from "./points3.ts";
import { distanceFrom, normalOf } from "./surfaces.ts";
import type { Joint, Surface } from "./types.ts";

/** Glued areas smaller than this, in mm², are corners that only touch. */
const leastJoint = 1;

/** Flat sides of different blocks that lie face to face, with the area they share. */
export function findJoints(ids: readonly string[], blocks: readonly BlockMesh[]): Joint[] {
  const joints: Joint[] = [];
  blocks.forEach((block, a) =>
    blocks.forEach((other, b) => {
      if (b <= a) return;
      const shared = block.sides.flatMap((side, i) =>
        other.sides.flatMap((mate, j) =>
          isFaceToFace(side.surface, mate.surface)
            ? [
                {
                  surface: side.surface,
                  region: intersect(
                    flatSide(block, i, side.surface),
                    flatSide(other, j, side.surface),
                  ),
                },
              ]
            : [],
        ),
      );
      const area = shared.reduce((sum, { region }) => sum + regionArea(region), 0);
      if (area < leastJoint) return;
      const outlines = shared.flatMap(({ surface, region }) =>
        region.map((loop) => loop.map((point) => liftPoint(surface, point))),
      );
      joints.push({ blocks: [ids[a]!, ids[b]!], area, outlines });
    }),
  );
  return joints;
}

function isFaceToFace(a: Surface, b: Surface): boolean {
  if (a.kind !== "plane" || b.kind !== "plane") return false;
  const facing = dot3(normalOf(a, a.origin), normalOf(b, b.origin));
  return facing < -1 + 1e-7 && Math.abs(distanceFrom(a, b.origin)) < 1e-3;
}

const flatSide = (block: BlockMesh, side: Count, surface: Surface) =>
  unite(
    block.triangles
      .filter((triangle) => triangle.side === side)
      .map(({ corners }) =>
        counterClockwise(corners.map((i) => flattenPoint(surface, block.points[i]!))),
      ),
  );

/** Triangles of the facing side come mirrored: turn them round so that they add up. */
function counterClockwise<T extends readonly (readonly [number, number])[]>(corners: T): T {
  const [a, b, c] = corners as unknown as [[number, number], [number, number], [number, number]];
  const turn = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  return turn < 0 ? ([...corners].reverse() as unknown as T) : corners;
}
