import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Unit } from "../project/types.ts";
import { measureText } from "./measure-text.ts";
import { pathOf } from "./paper-path.ts";
import type { Ink } from "./types.ts";

/** Steps between figures that a tape shows well, in the unit. */
const steps: Readonly<Record<Unit, readonly number[]>> = {
  in: [1, 2, 3, 6, 12, 18, 36, 72],
  cm: [1, 2, 5, 10, 20, 50, 100, 200],
  mm: [10, 20, 50, 100, 200, 500, 1000, 2000],
};
const unitLength: Readonly<Record<Unit, Mm>> = { in: 25.4, cm: 10, mm: 1 };

export interface Ruler {
  /** Where nought lies on the paper, and the way lengths run. */
  readonly from: Point;
  readonly along: Point;
  /** Side on which ticks and figures stand, of length one. */
  readonly out: Point;
  readonly length: Mm;
  readonly scale: Ratio;
  readonly unit: Unit;
}

/** A ruler in the project's unit along one edge of a drawing. */
export function drawRuler({ from, along, out, length, scale, unit }: Ruler): Ink[] {
  const one = unitLength[unit];
  const isLevel = Math.abs(along[0]) > 0.5;
  const widest = measureText(String(Math.round(length / one)), "label");
  const room = isLevel ? widest + 3 : 7;
  const step = steps[unit].find((value) => value * one * scale >= room) ?? 500;
  const half = step / 2;
  const place = (value: number, reach: Mm): Point => [
    from[0] + along[0] * value * one * scale + out[0] * reach,
    from[1] + along[1] * value * one * scale + out[1] * reach,
  ];
  const last = length / one;
  const ticks = [pathOf([place(0, 1), place(last, 1)])];
  const texts: Ink[] = [];
  for (let index = 0; index * half <= last + 1e-6; index += 1) {
    const value = index * half;
    const isWhole = index % 2 === 0;
    ticks.push(pathOf([place(value, 1), place(value, isWhole ? 3 : 2)]));
    if (!isWhole) continue;
    const anchor = isLevel ? "middle" : out[0] < 0 ? "end" : "start";
    const at = place(value, isLevel ? 5.6 : 4);
    texts.push({
      kind: "text",
      style: "label",
      text: String(value),
      at,
      anchor,
      isUpright: false,
      isGrounded: true,
      hasHalo: true,
    });
  }
  return [{ kind: "path", className: "line measure", paths: ticks, isObstacle: true }, ...texts];
}
