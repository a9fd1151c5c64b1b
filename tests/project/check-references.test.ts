import { expect, test } from "vitest";
import { checkReferences } from "../../lib/project/check-references.ts";
import { projectOf, projectText } from "./project-text.ts";

const known = { figures: ["blocks", "solid/pad", "lay/print"], steps: ["cut-foam", "sew-a"] };
const check = (body: string) =>
  checkReferences(projectOf(projectText({}, body)), known).map(({ message }) => message);

test("figures and steps that exist are let through", () => {
  const body =
    "![x](figure:solid/pad)\n::: step cut-foam\nCut.\n:::\n::: before sew-a Pin it\nPin.\n:::";
  expect(check(body)).toEqual([]);
});

test("one that does not is told with the nearest, and all there are", () => {
  expect(check("\n![x](figure:solid/pda)\n\n::: step glue\nGlue.\n:::")).toEqual([
    "content/pad.md:10 text: names the figure solid/pda, which this project does not have. Write solid/pad if that was meant. There are blocks, solid/pad, lay/print.",
    "content/pad.md:13 text: names the step glue, which this project does not have. There are cut-foam, sew-a.",
  ]);
});
