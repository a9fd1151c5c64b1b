import { polygonArea } from "../plane/polygon-area.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import { offsetLoop } from "../plane/offset-loop.ts";
import { crossesItself } from "../plane/crosses-itself.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { BlockSpec, SolidSpec } from "../project/types.ts";
import { liftPoint } from "./lift-point.ts";
import type { Face, Solid } from "./types.ts";

/** Play all round, so that the pad drops in between back and arms. @source our choice */
export const padPlay: Mm = 5;

/**
 * A loose pad that holds the cloth down in the inward corners of a seat: the outline of the largest
 * level face that ends at one, a little smaller all round. It is a solid of its own, with a cover in the
 * same cloth, closed by hand. Null where no level face ends at an inward corner.
 */
export function designPad(solid: Solid, spec: SolidSpec, thickness: Mm): SolidSpec | null {
  const seat = seatOf(solid);
  if (seat === null || spec.cover === null) return null;
  const grown = offsetLoop(
    seat.shape.outer,
    seat.shape.outer.map(() => -padPlay),
  );
  if (crossesItself(grown)) return null;
  const corners = flattenLoop(grown, 0.5).map((point): Point => {
    const [x, y] = liftPoint(seat.surface, point);
    return [x, y];
  });
  const left = Math.min(...corners.map(([x]) => x));
  const front = Math.min(...corners.map(([, y]) => y));
  return {
    id: `${spec.id}-pad`,
    padOf: spec.id,
    foam: spec.foam,
    blocks: [
      padBlock(
        corners.map(([x, y]): Point => [x - left, y - front]),
        thickness,
      ),
    ],
    cover: {
      ...spec.cover,
      panels: "auto",
      open: null,
      hinge: null,
      closing: { kind: "hand-sewn", stock: null },
      piping: null,
      attach: [],
      up: {},
      anchor: null,
      print: { centre: [], match: [] },
    },
  };
}

/** A plain box where the outline is a rectangle: it needs no marking out, and its sides have plain names. */
function padBlock(outline: readonly Point[], thickness: Mm): BlockSpec {
  const own = { id: "pad", at: [0, 0, 0], foam: null } as const;
  const width = Math.max(...outline.map(([x]) => x));
  const depth = Math.max(...outline.map(([, y]) => y));
  const isFull = Math.abs(polygonArea(outline) - width * depth) < 1e-3;
  return isFull
    ? { ...own, kind: "box", size: [width, depth, thickness] }
    : { ...own, kind: "prism", outline, height: thickness, along: "z" };
}

/** The largest level face that looks up and ends at an inward corner. */
function seatOf(solid: Solid): Face | null {
  const inward = new Set(
    solid.edges.filter(({ bend }) => bend === "inward").flatMap(({ faces }) => faces),
  );
  const level = solid.faces.filter(
    ({ id, surface, normal }) => inward.has(id) && surface.kind === "plane" && normal[2] > 0.999,
  );
  return level.toSorted((a, b) => b.area - a.area)[0] ?? null;
}
