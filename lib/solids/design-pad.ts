import { flattenLoop } from "../plane/flatten-loop.ts";
import { offsetLoop } from "../plane/offset-loop.ts";
import { crossesItself } from "../plane/crosses-itself.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { SolidSpec } from "../project/types.ts";
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
      {
        kind: "prism",
        id: "pad",
        outline: corners.map(([x, y]) => [x - left, y - front] as const),
        height: thickness,
        along: "z",
        at: [0, 0, 0],
        foam: null,
      },
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
