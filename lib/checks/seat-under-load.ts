import type { Mm, Ratio } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import type { Solid, SolidBlock } from "../solids/types.ts";
import { seatMiddle, type Seat } from "./find-seat.ts";
import { pressOf, sinkShare, workingThickness } from "./sink-share.ts";
import type { Sitter } from "./sitter-for.ts";

/** A seat with somebody on it. */
export interface LoadedSeat {
  /** How far it sinks, least and most. */
  readonly sinks: readonly [least: Mm, most: Mm];
  /** Height of the seat then, highest and lowest. */
  readonly height: readonly [highest: Mm, lowest: Mm];
  /** Share by which the softest foam under the seat is pressed together, least and most. */
  readonly share: readonly [least: Ratio, most: Ratio];
}

/** How far a seat sinks under a sitter, or null where the hardness of a foam under it is unknown. */
export function seatUnderLoad(
  seat: Seat,
  {
    solid,
    project,
    sitter,
  }: {
    readonly solid: Solid;
    readonly project: Project;
    readonly sitter: Sitter;
  },
): LoadedSeat | null {
  const press = pressOf(sitter);
  const column = columnUnder(seat, solid).filter(({ foam }) => foam !== null);
  const shares = column.flatMap(({ foam }) => {
    const hardness = hardnessOf(foam, project);
    return hardness === null ? [] : [sinkShare(press, hardness)];
  });
  if (column.length === 0 || shares.length < column.length) return null;
  const whole = column.reduce((sum, { size }) => sum + size[2], 0);
  const working = whole === 0 ? 0 : workingThickness(whole, press.area) / whole;
  const sink = (end: "least" | "most") =>
    column.reduce(
      (sum, { size }, index) => sum + size[2] * working * (shares[index]?.[end] ?? 0),
      0,
    );
  const sinks = [sink("least"), sink("most")] as const;
  return {
    sinks,
    height: [seat.height - sinks[0], seat.height - sinks[1]],
    share: [
      Math.max(...shares.map(({ least }) => least)),
      Math.max(...shares.map(({ most }) => most)),
    ],
  };
}

/** The blocks below the place where somebody sits, the topmost first. */
export function columnUnder(seat: Seat, solid: Solid): SolidBlock[] {
  const [x, y] = seatMiddle(seat, solid);
  const top = solid.min[2] + seat.height;
  return solid.blocks
    .filter(
      ({ min, size }) =>
        min[2] < top - 1 &&
        x >= min[0] &&
        x <= min[0] + size[0] &&
        y >= min[1] &&
        y <= min[1] + size[1],
    )
    .toSorted((one, other) => other.min[2] - one.min[2]);
}

/** Hardness of a slab stock, null where it is unknown. */
export function hardnessOf(foam: string | null, { stock }: Project): number | null {
  const slab = stock.find(({ id }) => id === foam);
  return slab?.kind === "slab" ? slab.hardness : null;
}
