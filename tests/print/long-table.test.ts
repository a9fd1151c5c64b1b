import { afterAll, beforeAll, expect, test } from "vitest";
import { type SpoiltPrint, spoilPrint } from "../fixtures/spoil-print.ts";

let pad: SpoiltPrint;

beforeAll(async () => {
  pad = await spoilPrint();
});
afterAll(() => pad.remove());

// Each length of table ends its pages at other heights: the head that is repeated must be counted in.
test.each([60, 97, 150])("a table of %i rows that runs over pages loses none", async (rows) => {
  const printed = await pad.printWith((page) => {
    const long = page.replace(/<tr id="(materials-list)-1">(.*?)<\/tr>/s, (row, id: string) =>
      Array.from({ length: rows }, (_, i) =>
        i === 0 ? row : row.replace(`"${id}-1"`, `"${id}-more-${i}"`),
      ).join("\n"),
    );
    expect(long).toContain(`materials-list-more-${rows - 1}`);
    return long;
  });
  expect(printed.problems).toEqual([]);
  expect(printed.pages).toBeGreaterThan(3);
});
