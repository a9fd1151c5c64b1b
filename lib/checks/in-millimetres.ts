import type { Mm } from "../plane/types.ts";

/**
 * A small length in millimetres to one decimal, whatever the project's unit: a limit from a
 * standard or a difference of a millimetre would be lost in rounding to eighths of an inch.
 */
export function inMillimetres(length: Mm): string {
  return `${Number(length.toFixed(1))} mm`;
}
