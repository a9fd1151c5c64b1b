import type { Count, Mm } from "../plane/types.ts";

/**
 * Strips cut straight across the cloth to make up a length, and the cloth they take. Each join
 * loses `join` (both allowances); a length of 0 needs no strip.
 *
 * @source upholsterers' forum, welt strips on 54 in cloth,
 * https://forum.upholster.com/index.php?action=printpage&topic=10184.0
 */
export function straightStrips(
  length: Mm,
  width: Mm,
  cloth: { readonly width: Mm; readonly join: Mm },
): { readonly strips: Count; readonly joins: Count; readonly clothLength: Mm } {
  if (length <= 0) return { strips: 0, joins: 0, clothLength: 0 };
  const strips = Math.max(1, Math.ceil((length - cloth.join) / (cloth.width - cloth.join) - 1e-9));
  return { strips, joins: strips - 1, clothLength: strips * width };
}
