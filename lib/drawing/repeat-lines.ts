import type { Lay } from "../packing/types.ts";
import { distance } from "../plane/points.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { FabricStock } from "../project/types.ts";
import { breakLines } from "./hatch-lines.ts";
import { pathOf } from "./paper-path.ts";
import type { Box, Ink, ToPaper } from "./types.ts";

/** Lines nearer than this on paper would be a grey wash, and are left out. @source our choice */
const nearest: Mm = 2;

/**
 * The grid of the print's repeat, from the left selvedge and the start of the cloth; none of the lines
 * that would stand too close to be told apart.
 */
export function repeatLines(
  { repeat }: FabricStock,
  lay: Lay,
  { toPaper, keepClear }: { readonly toPaper: ToPaper; readonly keepClear: readonly Box[] },
): Ink[] {
  if (!repeat) return [];
  const { selvedge, width, length } = lay;
  const lines: [Point, Point][] = [];
  const isClear = (by: Point): boolean => distance(toPaper([0, 0]), toPaper(by)) >= nearest;
  if (repeat.across > 0 && isClear([repeat.across, 0]))
    for (let x = selvedge + repeat.across; x < width - selvedge - 1; x += repeat.across)
      lines.push([toPaper([x, 0]), toPaper([x, length])]);
  if (repeat.along > 0 && isClear([0, repeat.along]))
    for (let y = repeat.along; y < length - 1; y += repeat.along)
      lines.push([toPaper([selvedge, y]), toPaper([width - selvedge, y])]);
  const paths = breakLines(lines, keepClear).map((line) => pathOf(line));
  if (paths.length === 0) return [];
  return [{ kind: "path", className: "line ghost repeat", paths, isObstacle: false }];
}
