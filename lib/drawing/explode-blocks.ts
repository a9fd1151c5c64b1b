import type { Mm } from "../plane/types.ts";
import type { Joint, Point3, Solid, SolidBlock } from "../solids/types.ts";
import { dot } from "./space-view.ts";

export interface ExplodedJoint {
  readonly joint: Joint;
  /** Block that moves, and the way it came, of length one. */
  readonly moved: string;
  readonly away: Point3;
}

export interface Exploded {
  /** How far each block is pulled out of its place. */
  readonly shifts: ReadonlyMap<string, Point3>;
  readonly joints: readonly ExplodedJoint[];
}

/**
 * Pull glued blocks apart along their joints: the largest stays, each of the others moves away
 * from a block it is glued to, at right angles to the joint. Blocks glued to nothing stay put.
 */
export function explodeBlocks(solid: Solid, gap: Mm): Exploded {
  const shifts = new Map<string, Point3>();
  const joints: ExplodedJoint[] = [];
  const byVolume = [...solid.blocks].sort((a, b) => b.volume - a.volume);
  for (const root of byVolume) {
    if (shifts.has(root.id)) continue;
    shifts.set(root.id, [0, 0, 0]);
    const queue = [root.id];
    for (let from = queue.shift(); from !== undefined; from = queue.shift()) {
      for (const joint of solid.joints) {
        const to = joint.blocks.find((id) => id !== from);
        if (!joint.blocks.includes(from) || to === undefined || shifts.has(to)) continue;
        const away = jointNormal(joint, find(solid, from), find(solid, to));
        const base = shifts.get(from) ?? [0, 0, 0];
        shifts.set(to, [base[0] + away[0] * gap, base[1] + away[1] * gap, base[2] + away[2] * gap]);
        queue.push(to);
      }
    }
  }
  for (const joint of solid.joints) {
    const [a, b] = joint.blocks;
    const away = jointNormal(joint, find(solid, a), find(solid, b));
    joints.push({ joint, moved: b, away });
  }
  return { shifts, joints };
}

function find(solid: Solid, id: string): SolidBlock | undefined {
  return solid.blocks.find((block) => block.id === id);
}

/** Direction of length one at right angles to a joint, from one block towards the other. */
function jointNormal(joint: Joint, from?: SolidBlock, to?: SolidBlock): Point3 {
  const outline = joint.outlines[0] ?? [];
  const sum: [number, number, number] = [0, 0, 0];
  // Newell's method: the sum of the areas seen along each axis.
  outline.forEach(([ax, ay, az], index) => {
    const [bx, by, bz] = outline[(index + 1) % outline.length] ?? [ax, ay, az];
    sum[0] += (ay - by) * (az + bz);
    sum[1] += (az - bz) * (ax + bx);
    sum[2] += (ax - bx) * (ay + by);
  });
  const length = Math.hypot(...sum) || 1;
  const normal: Point3 = [sum[0] / length, sum[1] / length, sum[2] / length];
  const [p, q] = [centre(from), centre(to)];
  const towards = dot(normal, [q[0] - p[0], q[1] - p[1], q[2] - p[2]]);
  return towards >= 0 ? normal : [-normal[0], -normal[1], -normal[2]];
}

function centre(block: SolidBlock | undefined): Point3 {
  if (!block) return [0, 0, 0];
  const { min, size } = block;
  return [min[0] + size[0] / 2, min[1] + size[1] / 2, min[2] + size[2] / 2];
}
