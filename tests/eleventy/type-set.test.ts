import { describe, expect, test } from "vitest";
import { setType, setTypeInHtml } from "../../lib/eleventy/type-set.ts";
import { embedFigure } from "../../lib/eleventy/embed-figure.ts";
import { renderMarkdown } from "../../lib/eleventy/render-markdown.ts";
import { boxFigure } from "../fixtures/small-figures.ts";

const part = (top: number, bottom: number): string =>
  `<span class="fraction">${top}\u2044${bottom}</span>`;

describe("setting type", () => {
  test.each([
    ["17 3/8 in", `17\u00a0${part(3, 8)}\u00a0in`],
    ["17 17/32 in", `17\u00a0${part(17, 32)}\u00a0in`],
    ["1/2 in", `${part(1, 2)}\u00a0in`],
    ["62.5 cm", "62.5\u00a0cm"],
    ["45 × 40 × 8 cm", "45\u00a0×\u00a040\u00a0×\u00a08\u00a0cm"],
    ["2 in each", "2\u00a0in each"],
    ["2 inner", "2 inner"],
    ["12/03/2026", "12/03/2026"],
    ["a < b & c", "a &lt; b &amp; c"],
    ["Name it under `open`.", "Name it under <code>open</code>."],
    ["`at: 1/2` is 1/2 in", `<code>at: 1/2</code> is ${part(1, 2)}\u00a0in`],
  ])("%s", (text, html) => {
    expect(setType(text)).toBe(html);
  });

  test("leaves tags alone", () => {
    expect(setTypeInHtml('<a href="x/1/2">1/2</a>')).toBe(`<a href="x/1/2">${part(1, 2)}</a>`);
  });
});

describe("the author's Markdown", () => {
  test("lets no HTML and no script link through", () => {
    expect(renderMarkdown("<script>alert(1)</script>")).not.toContain("<script");
    expect(renderMarkdown("[x](javascript:alert(1))")).not.toContain("href");
  });

  test("begins its headings below those of the page", () => {
    expect(renderMarkdown("# One")).toContain("<h3>One</h3>");
  });
});

test("a figure shown twice repeats no id", () => {
  const ids = ["a", "b"].flatMap((place) =>
    [...embedFigure(boxFigure("solid/pad"), place).matchAll(/\sid="([^"]+)"/g)].map(
      (match) => match[1],
    ),
  );
  expect(new Set(ids).size).toBe(ids.length);
  expect(embedFigure(boxFigure("solid/pad"), "a")).toContain(
    'aria-labelledby="a-solid-pad-title a-solid-pad-desc"',
  );
});
