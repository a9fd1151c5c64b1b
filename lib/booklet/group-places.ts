import { evenRuns } from "../packing/even-runs.ts";
import { sectionAt } from "../packing/section-at.ts";
import type { Lay, LayPlace } from "../packing/types.ts";

/** So many places at even steps up the cloth share a row. @source our choice */
const fewestEven = 3;

/**
 * The places of a class set from the start of the cloth on, like pieces above one another at even
 * steps together, as blocks of sets repeat. Which copy lies where does not matter to whoever chalks it.
 */
export function groupPlaces(lay: Lay): readonly (readonly [LayPlace, ...LayPlace[]])[] {
  const columnOf = (place: LayPlace): string => {
    const { piece, x, turn, flipped } = place;
    const { section } = sectionAt(lay, place);
    return [piece, Math.round(x * 1e3), turn, flipped, section?.start].join(" ");
  };
  const columns = new Map<string, LayPlace[]>();
  for (const place of lay.places) {
    const name = columnOf(place);
    columns.set(name, [...(columns.get(name) ?? []), place]);
  }
  const runs = [...columns.values()].flatMap((places) =>
    evenRuns(
      places.toSorted((a, b) => a.y - b.y),
      { kind: columnOf, at: ({ y }) => y, fewest: fewestEven },
    ),
  );
  return runs.toSorted(([a], [b]) => a.y - b.y || a.x - b.x);
}
