import type { Mm, Radians } from "../plane/types.ts";
import { cross, dot } from "../plane/points.ts";
import { directionAlong } from "../plane/segments.ts";
import type { Panel, PanelSide } from "../panels/types.ts";
import type { SeamRun } from "./find-seams.ts";

/**
 * One of the two edges of a seam. Banks are numbered: seam `i` has bank `2 i` on its first panel and
 * `2 i + 1` on its second, so that the partner of bank `b` is `b ^ 1`.
 */
export interface Banks {
  readonly panelOf: readonly number[];
  /** The bank that follows on the same panel, and the angle of cloth in the corner between them. */
  readonly after: readonly number[];
  readonly before: readonly number[];
  readonly angleAfter: readonly Radians[];
  readonly length: readonly Mm[];
  /** Seam by seam, whether it joins the ends of two strips. */
  readonly isJoin: readonly boolean[];
}

/** A seam across less than this share of both its panels joins them end to end. @source our choice */
const joinShare = 0.5;

/** The edges of all seams, and how they follow one another round their panels. */
export function listBanks(panels: readonly Panel[], runs: readonly SeamRun[]): Banks {
  const bankOf = new Map<PanelSide, number>();
  runs.forEach(({ first, second }, i) => {
    first.forEach((side) => bankOf.set(side, 2 * i));
    second.forEach((side) => bankOf.set(side, 2 * i + 1));
  });
  const count = 2 * runs.length;
  const panelOf = new Array<number>(count).fill(-1);
  const after = new Array<number>(count).fill(-1);
  const before = new Array<number>(count).fill(-1);
  const angleAfter = new Array<Radians>(count).fill(Math.PI);
  panels.forEach(({ loops }, panel) =>
    loops.forEach((loop) =>
      loop.forEach((side, i) => {
        const next = loop[(i + 1) % loop.length]!;
        const [own, following] = [bankOf.get(side)!, bankOf.get(next)!];
        panelOf[own] = panel;
        // Within a bank, sides follow one another; where it ends the next bank begins.
        if (own === following && !isLastOf(side, own, runs)) return;
        after[own] = following;
        before[following] = own;
        angleAfter[own] = Math.PI - turnInto(side, next);
      }),
    ),
  );
  const length = runs.flatMap(({ first, second }) => [total(first), total(second)]);
  const isJoin = runs.map((_, i) =>
    [2 * i, 2 * i + 1].every(
      (bank) => length[bank]! <= joinShare * Math.max(...panels[panelOf[bank]!]!.size),
    ),
  );
  return { panelOf, after, before, angleAfter, length, isJoin };
}

/** Is this the last side of its bank, in the order of its panel's outline? */
function isLastOf(side: PanelSide, bank: number, runs: readonly SeamRun[]): boolean {
  const { first, second } = runs[bank >> 1]!;
  return bank % 2 === 0 ? first.at(-1) === side : second[0] === side;
}

const total = (sides: readonly PanelSide[]): Mm =>
  sides.reduce((sum, { length }) => sum + length, 0);

/** Turn of an outline from one side into the next, positive to the left: outward corners. */
function turnInto(a: PanelSide, b: PanelSide): Radians {
  const [ahead, away] = [directionAlong(a.segments.at(-1)!, 1), directionAlong(b.segments[0]!, 0)];
  return Math.atan2(cross(ahead, away), dot(ahead, away));
}
