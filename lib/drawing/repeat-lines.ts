import type { Lay } from "../packing/types.ts";
import type { FabricStock } from "../project/types.ts";
import { pathOf } from "./paper-path.ts";
import type { Ink, PaperPath, ToPaper } from "./types.ts";

/** The grid of the print's repeat, from the left selvedge and the start of the cloth. */
export function repeatLines({ repeat }: FabricStock, lay: Lay, toPaper: ToPaper): Ink[] {
  if (!repeat) return [];
  const { selvedge, width, length } = lay;
  const paths: PaperPath[] = [];
  if (repeat.across > 0)
    for (let x = selvedge + repeat.across; x < width - selvedge - 1; x += repeat.across)
      paths.push(pathOf([toPaper([x, 0]), toPaper([x, length])]));
  if (repeat.along > 0)
    for (let y = repeat.along; y < length - 1; y += repeat.along)
      paths.push(pathOf([toPaper([selvedge, y]), toPaper([width - selvedge, y])]));
  return [{ kind: "path", className: "line ghost repeat", paths, isObstacle: false }];
}
