import { expect, test } from "vitest";
import { repeatLines } from "../../lib/drawing/repeat-lines.ts";
import type { Lay } from "../../lib/packing/types.ts";
import type { Point } from "../../lib/plane/types.ts";
import type { FabricStock } from "../../lib/project/types.ts";

const lay = { selvedge: 10, width: 1420, length: 1000 } as Lay;
const gridOf = (repeat: FabricStock["repeat"], scale: number): number => {
  const toPaper = ([x, y]: Point): Point => [x * scale, y * scale];
  const inks = repeatLines({ repeat } as FabricStock, lay, { toPaper, keepClear: [] });
  return inks.flatMap((ink) => (ink.kind === "path" ? ink.paths : [])).length;
};

test.each([
  // 6 lines at 200 across 1400, 9 at 100 along 1000: none on the edges.
  { repeat: { across: 200, along: 100 }, scale: 0.1, lines: 15 },
  { repeat: { across: 200, along: 0 }, scale: 0.1, lines: 6 },
  // 5 mm at 1 : 10 is half a millimetre on paper: the lines would run into a grey.
  { repeat: { across: 200, along: 5 }, scale: 0.1, lines: 6 },
  { repeat: { across: 5, along: 5 }, scale: 0.1, lines: 0 },
  { repeat: { across: 0, along: 5 }, scale: 1, lines: 199 },
])("a repeat of $repeat.across × $repeat.along at $scale is drawn as $lines lines", (each) => {
  expect(gridOf(each.repeat, each.scale)).toBe(each.lines);
});
