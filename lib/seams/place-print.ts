import { loopBounds } from "../plane/loop-bounds.ts";
import { placePoint } from "../plane/place.ts";
import { add, distance, scale, subtract, wholeTurn } from "../plane/points.ts";
import type { Mm, Point } from "../plane/types.ts";
import { facesNamed } from "../panels/find-face.ts";
import type { Panel } from "../panels/types.ts";
import { graphSolid, placeNeighbour, sideKey } from "../panels/unfold-panel.ts";
import type { FabricStock, Fault, PrintSpec } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";
import { hiddenFace } from "./name-edges.ts";

export interface PlacedPrint {
  /** For each panel under orders, the point of its cut plane that lies where a repeat starts. */
  readonly origins: ReadonlyMap<string, Point>;
  readonly faults: readonly Fault[];
}

/** Prints nearer than this meet, in mm. @source our choice */
const meets: Mm = 1;

/**
 * Where each panel has to lie in the repeat of the print: the middle of a named face half a repeat past
 * its start, and panels on both sides of a matched seam so that the print runs on across it. For that the
 * neighbour is laid flat across the seam: how far its own drawing then stands from there is how far apart
 * the two panels lie on the cloth, but for whole repeats.
 *
 * Seam lines meet, so both panels are matched on the seam line and not on the cut line.
 */
export function placePrint(
  { centre, match }: PrintSpec,
  solid: Solid,
  panels: readonly Panel[],
  { cloth, field }: { readonly cloth: FabricStock; readonly field: string },
): PlacedPrint {
  const origins = new Map<string, Point>();
  if (centre.length + match.length === 0) return { origins, faults: [] };
  if (cloth.repeat === null) return { origins, faults: [needsRepeat(field, cloth)] };
  const faults: Fault[] = [];
  const repeat: Point = [cloth.repeat.across, cloth.repeat.along];
  const enlarge = 1 / (1 - cloth.shrink);
  const holders = (name: string) =>
    facesNamed(solid, name).flatMap((face) =>
      panels.flatMap((panel) => {
        const placed = panel.faces.find((one) => one.face === face.id);
        return placed === undefined ? [] : [{ panel, face, placement: placed.placement }];
      }),
    );
  /** Give a panel its origin; false where it has another one already. */
  const settle = (panel: string, origin: Point): boolean => {
    const known = origins.get(panel);
    if (known === undefined) origins.set(panel, origin);
    return known === undefined || isSame(known, origin, repeat);
  };
  centre.forEach((name, i) => {
    const held = holders(name)[0];
    if (held === undefined) {
      faults.push(hiddenFace(`${field}.centre.${i}`, name));
      return;
    }
    const { min, max } = loopBounds(held.face.shape.outer);
    const middle = placePoint(scale(add(min, max), 0.5), held.placement);
    if (!settle(held.panel.id, subtract(scale(middle, enlarge), scale(repeat, 0.5))))
      faults.push(cannotMeet(`${field}.centre.${i}`, name));
  });
  const graph = graphSolid(solid);
  const links = match.flatMap(([a, b], i) => {
    const at = `${field}.match.${i}`;
    const hidden = [a, b].filter((name) => holders(name).length === 0);
    faults.push(...hidden.map((name) => hiddenFace(at, name)));
    if (hidden.length > 0) return [];
    const [met] = holders(a).flatMap((one) =>
      holders(b).flatMap((other) =>
        solid.edges
          .filter(
            ({ faces, isStraight }) =>
              isStraight && faces.includes(one.face.id) && faces.includes(other.face.id),
          )
          .map((edge) => ({ one, other, edge })),
      ),
    );
    if (met === undefined) {
      faults.push(noSeam(at, a, b));
      return [];
    }
    const { one, other, edge } = met;
    // A fold carries the print over by itself.
    if (one.panel.folds.some((fold) => fold.edge === edge.id)) return [];
    if (one.panel === other.panel) {
      faults.push(selfSeam(at, a, b));
      return [];
    }
    const side = [true, false]
      .map((isForward) => graph.sides.get(sideKey(edge.id, isForward))!)
      .find(({ face }) => face === one.face.id)!;
    const across = placeNeighbour(graph, side, one.placement);
    if (Math.abs(Math.sin(wholeTurn(across.turn - other.placement.turn) / 2)) > 1e-6) {
      faults.push(standsTurned(at, a, b));
      return [];
    }
    const apart = subtract(placePoint([0, 0], across), placePoint([0, 0], other.placement));
    return [{ one: one.panel.id, other: other.panel.id, apart: scale(apart, enlarge), at, b }];
  });
  const waiting = [...links];
  while (waiting.length > 0) {
    const known = waiting.findIndex(({ one, other }) => origins.has(one) || origins.has(other));
    const [link] = waiting.splice(Math.max(0, known), 1);
    const { one, other, apart, at, b } = link!;
    if (known < 0)
      origins.set(
        one,
        cutCorner(
          panels.find(({ id }) => id === one)!,
          enlarge,
        ),
      );
    const isMet = origins.has(one)
      ? settle(other, subtract(origins.get(one)!, apart))
      : settle(one, add(origins.get(other)!, apart));
    if (!isMet) faults.push(cannotMeet(at, b));
  }
  return { origins, faults };
}

/** A panel with nothing to meet starts its repeat at the corner of its seam line. */
function cutCorner({ shape }: Panel, enlarge: number): Point {
  return scale(loopBounds(shape.outer).min, enlarge);
}

function isSame(a: Point, b: Point, repeat: Point): boolean {
  const off = ([0, 1] as const).map((axis) => {
    const step = repeat[axis];
    const gap = a[axis] - b[axis];
    return step === 0 ? 0 : gap - step * Math.round(gap / step);
  }) as [Mm, Mm];
  return distance(off, [0, 0]) <= meets;
}

const needsRepeat = (field: string, { id }: FabricStock): Fault => ({
  field,
  fault: `needs the repeat of ${id}, which is not given`,
  fix: `Write repeat: {along: …, across: …} under stock.${id}`,
});

const noSeam = (field: string, a: string, b: string): Fault => ({
  field,
  fault: `names ${a} and ${b}, which do not meet in a straight edge`,
  fix: "Name two faces that share one",
});

const selfSeam = (field: string, a: string, b: string): Fault => ({
  field,
  fault: `cannot match ${b} to ${a}: both lie in one panel that is sewn to itself there`,
  fix: "List them in two panels, or match another seam",
});

const standsTurned = (field: string, a: string, b: string): Fault => ({
  field,
  fault: `cannot match ${b} to ${a}: the print stands turned on one of them`,
  fix: "Match faces whose print runs the same way, or turn one with up",
});

const cannotMeet = (field: string, face: string): Fault => ({
  field,
  fault: `cannot be met on ${face} together with what is named before it`,
  fix: "Take one of them out: a panel can lie in one place of the repeat only",
});
