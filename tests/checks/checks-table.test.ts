import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { checksTable } from "../../lib/checks/checks-table.ts";

const file = "lib/checks/README.md";
const marked = /(<!-- checks -->\n)[\s\S]*?(<!-- \/checks -->)/;

test("the README lists every check with the limit and the source the code reads", () => {
  const text = readFileSync(file, "utf8");
  const wanted = text.replace(
    marked,
    (_, open: string, end: string) => `${open}${checksTable()}\n${end}`,
  );
  if (process.env["SLIPCASE_UPDATE_GOLDENS"] === "1") writeFileSync(file, wanted);
  expect(marked.test(text)).toBe(true);
  expect(readFileSync(file, "utf8")).toBe(wanted);
});
