import type { Mm, Radians } from "../plane/types.ts";
import type { Banks } from "./cloth-banks.ts";
import type { Seam } from "./types.ts";

/** What is known of a seam before it has its place in the order. */
export type Unordered = Omit<Seam, "order" | "makes">;

/** A stretch that can be sewn in one go on the work as it lies now. */
export interface Stretch {
  /** Banks on one side, in the order they are sewn; their partners run the other way. */
  readonly banks: readonly number[];
  readonly isRing: boolean;
  /** Between each bank and the next (and round to the first in a ring): cloth angle on both sides. */
  readonly joints: readonly (readonly [own: Radians, other: Radians])[];
  /** Ends at which the two edges meet already, so that the stitching runs into a corner. */
  readonly boundEnds: number;
}

/** The work at one moment: seam by seam whether it is sewn. */
export type Sewn = Readonly<Uint8Array>;

/**
 * Every stretch of neighbouring seams that lies along one raw edge on both sides: a plate against a
 * frame of joined strips is one stretch, although each strip has a seam of its own.
 */
export function listStretches(banks: Banks, seams: readonly Unordered[], sewn: Sewn): Stretch[] {
  const taken = new Uint8Array(seams.length);
  const stretches: Stretch[] = [];
  seams.forEach((seam, i) => {
    if (sewn[i] === 1 || taken[i] === 1 || seam.state === "open") return;
    const stretch = growStretch(2 * i, banks, { seams, sewn });
    stretch.banks.forEach((bank) => (taken[bank >> 1] = 1));
    stretches.push(stretch);
  });
  return stretches;
}

function growStretch(
  start: number,
  banks: Banks,
  { seams, sewn }: { readonly seams: readonly Unordered[]; readonly sewn: Sewn },
): Stretch {
  const inside = new Set([start >> 1]);
  const list = [start];
  const joints: (readonly [Radians, Radians])[] = [];
  const alike = (a: number, b: number): boolean => {
    const [one, two] = [seams[a >> 1]!, seams[b >> 1]!];
    // The zip foot sews a piped edge and a plain one alike, so a zip runs on from one into the other.
    return one.state === two.state && (one.state === "closing" || one.isPiped === two.isPiped);
  };
  /** The joint from one bank into the next, where both sides of the work run on together. */
  const joint = (bank: number, next: number): readonly [Radians, Radians] | null => {
    if (!alike(bank, next)) return null;
    const own = rawAfter(bank, banks, sewn);
    const other = rawAfter(next ^ 1, banks, sewn);
    return own.bank === next && other.bank === (bank ^ 1) ? [own.angle, other.angle] : null;
  };
  for (;;) {
    const last = list.at(-1)!;
    const next = rawAfter(last, banks, sewn).bank;
    const met = joint(last, next);
    if (met !== null && next === list[0]) {
      return { banks: list, isRing: true, joints: [...joints, met], boundEnds: 0 };
    }
    if (met === null || inside.has(next >> 1)) break;
    inside.add(next >> 1);
    list.push(next);
    joints.push(met);
  }
  for (;;) {
    const previous = rawBefore(list[0]!, banks, sewn);
    const met = inside.has(previous >> 1) ? null : joint(previous, list[0]!);
    if (met === null) break;
    inside.add(previous >> 1);
    list.unshift(previous);
    joints.unshift(met);
  }
  const [first, last] = [list[0]!, list.at(-1)!];
  const boundEnds =
    Number(rawAfter(last, banks, sewn).bank === (last ^ 1)) +
    Number(rawAfter(first ^ 1, banks, sewn).bank === first);
  return { banks: list, isRing: false, joints, boundEnds };
}

/** The next raw edge round the work, and the angle of cloth in the corner before it. */
export function rawAfter(
  bank: number,
  banks: Banks,
  sewn: Sewn,
): { readonly bank: number; readonly angle: Radians } {
  let angle = banks.angleAfter[bank]!;
  let next = banks.after[bank]!;
  while (sewn[next >> 1] === 1) {
    const across = next ^ 1;
    angle += banks.angleAfter[across]!;
    next = banks.after[across]!;
  }
  return { bank: next, angle };
}

function rawBefore(bank: number, banks: Banks, sewn: Sewn): number {
  let previous = banks.before[bank]!;
  while (sewn[previous >> 1] === 1) previous = banks.before[previous ^ 1]!;
  return previous;
}

/** The loops of raw edge left on the work, each as the banks it runs along. */
export function rawLoops(banks: Banks, sewn: Sewn): number[][] {
  const seen = new Uint8Array(banks.after.length);
  const loops: number[][] = [];
  for (let start = 0; start < seen.length; start++) {
    if (seen[start] === 1 || sewn[start >> 1] === 1) continue;
    const loop: number[] = [];
    for (let bank = start; seen[bank] === 0; bank = rawAfter(bank, banks, sewn).bank) {
      seen[bank] = 1;
      loop.push(bank);
    }
    loops.push(loop);
  }
  return loops;
}

export const lengthOf = (list: readonly number[], banks: Banks): Mm =>
  list.reduce((sum, bank) => sum + banks.length[bank]!, 0);
