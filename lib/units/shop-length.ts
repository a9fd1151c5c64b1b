import type { Mm } from "../plane/types.ts";
import { formatFigure } from "./format-length.ts";
import type { Unit } from "./types.ts";

/**
 * The step cloth is sold by.
 *
 * @source common practice, no source: shops cut to the tenth of a metre, or to the eighth of a yard
 */
export const shopStep: Readonly<Record<Unit, Mm>> = { in: 914.4 / 8, cm: 100, mm: 100 };

/** Round a length up to what a shop sells. A length that already is one stays. */
export function roundUpForShop(mm: Mm, units: Unit): Mm {
  const step = shopStep[units];
  const steps = Math.ceil(mm / step - 1e-6); // a hair of arithmetic must not cost a step
  return Math.max(0, Math.round(steps * step * 1e6) / 1e6);
}

/** Print a length as a shop says it: "1.6 m" or "1 3/8 yd". */
export function formatShopLength(mm: Mm, units: Unit): string {
  if (units !== "in") return `${Number((mm / 1000).toFixed(2))} m`;
  // Eighths of a yard set like eighths of an inch: one yard stands in for one inch.
  return `${formatFigure((mm / 914.4) * 25.4, { units: "in", round: 1 / 8 })} yd`;
}
