import type { Mm, Point, Radians, Ratio } from "../plane/types.ts";
import { cross, distance, dot } from "../plane/points.ts";
import { directionAlong } from "../plane/segments.ts";
import type { Panel, PanelSide } from "../panels/types.ts";
import { sideKey } from "../panels/unfold-panel.ts";
import { seamLetter } from "./name-edges.ts";
import type { Seam, SeamCorner } from "./types.ts";

export interface SeamRun {
  /** Sides of the first panel in the order of its outline. */
  readonly first: readonly PanelSide[];
  /** Their partners, in the same order; each runs the other way. */
  readonly second: readonly PanelSide[];
  readonly state: Seam["state"];
  readonly isPiped: boolean;
}

export interface SeamChoices {
  readonly open: ReadonlySet<string>;
  readonly openState: "closing" | "open";
  readonly piped: ReadonlySet<string>;
}

/** A turn smaller than this is no corner. */
const corner: Radians = (3 * Math.PI) / 180;

/**
 * Put edges that are sewn in one go together: those that follow one another round both panels and
 * share their fate (sewn, closed by zip or hand, piped).
 */
export function findSeamRuns(panels: readonly Panel[], choices: SeamChoices): SeamRun[] {
  const all = panels.flatMap(({ loops }) => loops.flat());
  const byKey = new Map(all.map((side) => [sideKey(side.edge, side.isForward), side]));
  const twin = (side: PanelSide): PanelSide => byKey.get(sideKey(side.edge, !side.isForward))!;
  const [next, before] = neighbours(panels);
  const taken = new Set<string>();
  const isOneSeam = (a: PanelSide, b: PanelSide): boolean =>
    twin(a).panel === twin(b).panel &&
    before.get(twin(a)) === twin(b) &&
    choices.open.has(a.edge) === choices.open.has(b.edge) &&
    choices.piped.has(a.edge) === choices.piped.has(b.edge) &&
    // A panel sewn to itself turns back where its two sides meet: that is the end of the dart.
    a.edge !== b.edge;
  const runs: SeamRun[] = [];
  for (const start of all) {
    if (taken.has(start.edge)) continue;
    taken.add(start.edge);
    const first = [start];
    for (
      let side = next.get(start)!;
      !taken.has(side.edge) && isOneSeam(first.at(-1)!, side);
      side = next.get(side)!
    ) {
      taken.add(side.edge);
      first.push(side);
    }
    for (
      let side = before.get(start)!;
      !taken.has(side.edge) && isOneSeam(side, first[0]!);
      side = before.get(side)!
    ) {
      taken.add(side.edge);
      first.unshift(side);
    }
    const state = choices.open.has(start.edge) ? choices.openState : "sewn";
    runs.push({ first, second: first.map(twin), state, isPiped: choices.piped.has(start.edge) });
  }
  return runs;
}

function neighbours(
  panels: readonly Panel[],
): [Map<PanelSide, PanelSide>, Map<PanelSide, PanelSide>] {
  const next = new Map<PanelSide, PanelSide>();
  const before = new Map<PanelSide, PanelSide>();
  panels
    .flatMap(({ loops }) => loops)
    .forEach((loop) =>
      loop.forEach((side, i) => {
        const after = loop[(i + 1) % loop.length]!;
        next.set(side, after);
        before.set(after, side);
      }),
    );
  return [next, before];
}

export const runLength = (sides: readonly PanelSide[]): Mm =>
  sides.reduce((sum, { length }) => sum + length, 0);

/** Letter the runs and say where each turns a corner. */
export const describeSeam = (
  run: SeamRun,
  index: number,
  isRing: boolean,
): Omit<Seam, "order" | "makes"> => ({
  id: seamLetter(index),
  panels: [run.first[0]!.panel, run.second[0]!.panel],
  edges: run.first.map(({ edge }) => edge),
  length: [runLength(run.first), runLength(run.second)],
  state: run.state,
  corners: findCorners(run, isRing),
  isRing,
  isPiped: run.isPiped,
});

/** Whether a seam's end meets its start on both panels. */
export const closesOnItself = ({ first, second }: SeamRun): boolean => {
  const closed = meets(first.at(-1)!.segments.at(-1)!.to, first[0]!.segments[0]!.from);
  const other = meets(second[0]!.segments.at(-1)!.to, second.at(-1)!.segments[0]!.from);
  return closed || other;
};

const meets = (a: Point, b: Point): boolean => distance(a, b) < 1e-6;

function findCorners({ first, second }: SeamRun, isRing: boolean): SeamCorner[] {
  let along: Mm = 0;
  return first.flatMap((side, i): SeamCorner[] => {
    const at = along;
    along += side.length;
    if (i === 0 && !isRing) return [];
    const before = (i + first.length - 1) % first.length;
    const own = turnBetween(first[before]!, side);
    const other = turnBetween(second[i]!, second[before]!);
    if (Math.max(Math.abs(own), Math.abs(other)) < corner) return [];
    const sameTurn = Math.abs(own - other) < corner;
    const clip = sameTurn && own > 0 ? null : own < other ? side.panel : second[i]!.panel;
    return [{ along: at, clip, turn: Math.abs(own) > Math.abs(other) ? own : other }];
  });
}

/**
 * Ends of a seam that no corner marks on one of its panels, as where the open stretch of a round seam
 * stops: shares 0 and 1 of its length.
 */
export function bareEnds({ first, second }: SeamRun, panels: readonly Panel[]): readonly Ratio[] {
  const [next, before] = neighbours(panels);
  const isBare = (a: PanelSide, b: PanelSide) => Math.abs(turnBetween(a, b)) < corner;
  const [from, to] = [first[0]!, first.at(-1)!];
  const starts = isBare(before.get(from)!, from) || isBare(second[0]!, next.get(second[0]!)!);
  const last = second.at(-1)!;
  const ends = isBare(to, next.get(to)!) || isBare(before.get(last)!, last);
  return [...(starts ? [0] : []), ...(ends ? [1] : [])];
}

/**
 * Turn of an outline from one side into the next, positive to the left: outward corners. A strip whose
 * two ends are sewn together first runs on there without a turn.
 */
function turnBetween(a: PanelSide, b: PanelSide): Radians {
  if (!meets(a.segments.at(-1)!.to, b.segments[0]!.from)) return 0;
  const [ahead, away] = [directionAlong(a.segments.at(-1)!, 1), directionAlong(b.segments[0]!, 0)];
  return Math.atan2(cross(ahead, away), dot(ahead, away));
}
