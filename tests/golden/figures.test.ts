import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { drawFigure } from "../../lib/drawing/index.ts";
import { samples } from "../fixtures/drawing/samples.ts";

/** One of each kind: enough to see any change of look, few enough to look at. */
const goldens: readonly (readonly [sample: string, id: string])[] = [
  ["solids", "solid/lounger"],
  ["solids", "solid/chair/behind"],
  ["solids", "glue/chair"],
  ["chair", "map/chair"],
  ["chair", "panel/P2"],
  ["chair", "seam/chair/A"],
  ["chair", "opening/chair"],
  ["chair", "ways/chair/named"],
  ["pieces", "panel/P1"],
  ["pieces", "panel/top"],
  ["shapes", "block/lounger/base"],
  ["stocks", "lay/print"],
  ["stocks", "slab/grey/1"],
  ["stocks", "slab/grey/2"],
  ["wood", "sheet/birch/1"],
  ["wood", "board/batten"],
  ["wood", "pieces/all"],
];

/** One mark a line, so that a change reads as a change. */
const normalise = (svg: string) => `${svg.replace(/></g, ">\n<")}\n`;

test.each(goldens)("%s %s looks as it did", (sample, id) => {
  const drawn = normalise(drawFigure(samples[sample]!, id)?.svg ?? "");
  const name = `tests/golden/${sample}-${id.replaceAll("/", "-")}`;
  const [golden, changed] = [`${name}.svg`, `${name}-changed.svg`];
  if (process.env["SLIPCASE_UPDATE_GOLDENS"] === "1") writeFileSync(golden, drawn);
  const isSame = existsSync(golden) && readFileSync(golden, "utf8") === drawn;
  if (isSame) rmSync(changed, { force: true });
  else writeFileSync(changed, drawn);
  expect(isSame, `${changed} differs from ${golden}: look at both`).toBe(true);
});
