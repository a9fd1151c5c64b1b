import { existsSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type SpoiltPrint, spoilPrint } from "../fixtures/spoil-print.ts";

let pad: SpoiltPrint;

beforeAll(async () => {
  pad = await spoilPrint();
});
afterAll(() => pad.remove());

// Each rule spoils the page in a way that has happened, and that a browser prints without a word.
test.each([
  {
    name: "a step whose words stand in the margin",
    rule: ".step-words { position: relative; left: -18mm; }",
    says: /stands outside the margins/,
  },
  {
    name: "a figure that what holds it cuts off",
    rule: ".drawing-box { height: 12mm; overflow: hidden; }",
    says: /is cut off/,
  },
  {
    name: "a figure drawn over the margin",
    rule: ".step figure.drawing { position: relative; left: 40mm; }",
    says: /runs over the margins/,
  },
  {
    name: "words that are not shown",
    rule: ".step .actions li:first-child { display: none; }",
    says: /is not in the print/,
  },
])("a print with $name is refused, and not put in place", async ({ rule, says }) => {
  const printed = await pad.printWith((page) =>
    page.replace("</head>", `<style data-pagedjs-ignore>${rule}</style></head>`),
  );
  expect(printed.problems.join("\n")).toMatch(says);
  expect(existsSync(printed.file)).toBe(false);
});
