import type { Mm } from "../plane/types.ts";
import type { Lay, LayPlace, LaySection } from "./types.ts";

/** The piece of cloth a place lies on, null where there is only one; and how far up it lies on that. */
export function sectionAt(
  { sections }: Pick<Lay, "sections">,
  { y }: Pick<LayPlace, "y">,
): { readonly section: LaySection | null; readonly up: Mm } {
  const section = sections?.findLast(({ start }) => y >= start - 1e-6) ?? null;
  return { section, up: y - (section?.start ?? 0) };
}
