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
  partStillJoined(solid, shifts, gap);
  for (const joint of solid.joints) {
    const [a, b] = joint.blocks;
    const away = jointNormal(joint, find(solid, a), find(solid, b));
    const apart = dot(between(shifts, joint.blocks), away);
    joints.push(
      apart >= 0
        ? { joint, moved: b, away }
        : { joint, moved: a, away: [-away[0], -away[1], -away[2]] },
    );
  }
  return { shifts, joints };
}

/** Blocks that moved together are parted at their own joint: the one with most such joints moves. */
function partStillJoined(solid: Solid, shifts: Map<string, Point3>, gap: Mm): void {
  for (let round = 0; round < solid.joints.length; round += 1) {
    const together = solid.joints.filter(({ blocks }) => {
      const [x, y, z] = between(shifts, blocks);
      return Math.hypot(x, y, z) < gap / 2;
    });
    const [joint] = together;
    if (!joint) return;
    const count = (id: string) => together.filter(({ blocks }) => blocks.includes(id)).length;
    const [a, b] = joint.blocks;
    const [still, moved] = count(a) > count(b) ? [b, a] : [a, b];
    const away = jointNormal(joint, find(solid, still), find(solid, moved));
    const base = shifts.get(moved) ?? [0, 0, 0];
    shifts.set(moved, [base[0] + away[0] * gap, base[1] + away[1] * gap, base[2] + away[2] * gap]);
  }
}

/** How far the second of two blocks has moved from the first. */
function between(shifts: ReadonlyMap<string, Point3>, [a, b]: readonly [string, string]): Point3 {
  const [p, q] = [shifts.get(a) ?? [0, 0, 0], shifts.get(b) ?? [0, 0, 0]];
  return [q[0] - p[0], q[1] - p[1], q[2] - p[2]];
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
