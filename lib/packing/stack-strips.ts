import type { Count, Mm } from "../plane/types.ts";
import type { Strip } from "./strip-types.ts";

/**
 * The same strip laid `copies` times, one after another, each starting at a multiple of `step`
 * (0 for anywhere). Copies of one kind of item follow one another, as `counts` lists them.
 */
export function stackStrips(
  strip: Strip,
  counts: readonly Count[],
  copies: Count,
  step: Mm,
): Strip {
  const pitch = step > 0 ? Math.ceil(strip.length / step - 1e-9) * step : strip.length;
  let from = 0;
  const places = counts.flatMap((count) => {
    const own = strip.places.slice(from, from + count);
    from += count;
    return Array.from({ length: copies }, (_, copy) =>
      own.map((place) => ({ ...place, y: place.y + copy * pitch })),
    ).flat();
  });
  return { places, length: copies === 0 ? 0 : (copies - 1) * pitch + strip.length };
}
