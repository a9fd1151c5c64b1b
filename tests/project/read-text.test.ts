import { describe, expect, test } from "vitest";
import { readText } from "../../lib/project/read-text.ts";

const names = new Map<string, number | null>([
  ["depth", 420],
  ["length", 1200],
  ["bad", null],
]);
const read = (body: string) => readText(body, 10, { units: "cm", round: 1 / 8, names });
const faults = (body: string) =>
  read(body).faults.map(({ line, fault, fix }) => `${line}: ${fault}. ${fix}.`);

describe("the author's text", () => {
  test("comes apart at figures and boxes", () => {
    const body = [
      "First words.",
      "",
      "More words.",
      "",
      "![Where it goes](figure:solid/pad)",
      "::: caution",
      "Mind the blade.",
      ":::",
      "::: tip",
      "",
      "Chalk brushes off.",
      "",
      ":::",
      "::: step cut-foam",
      "Cut it.",
      ":::",
      "::: before cut-foam Let it rest",
      "Wait.",
      ":::",
      "Last words.",
    ].join("\n");
    expect(read(body)).toEqual({
      faults: [],
      words: [
        { kind: "prose", markdown: "First words.\n\nMore words.", line: 10 },
        { kind: "figure", figure: "solid/pad", caption: "Where it goes", line: 14 },
        { kind: "caution", markdown: "Mind the blade.", line: 16 },
        { kind: "tip", markdown: "Chalk brushes off.", line: 20 },
        { kind: "step", step: "cut-foam", markdown: "Cut it.", line: 24 },
        { kind: "before", step: "cut-foam", title: "Let it rest", markdown: "Wait.", line: 27 },
        { kind: "prose", markdown: "Last words.", line: 29 },
      ],
    });
  });

  test("prints lengths", () => {
    expect(read("Cut {{ 2 * depth + 3 }}, then {{length}}.").words).toEqual([
      { kind: "prose", markdown: "Cut 87 cm, then 120 cm.", line: 10 },
    ]);
  });

  test("leaves code blocks alone: nothing in them is a box or a figure", () => {
    const body = "```\n::: tip\n![x](figure:y)\n<b>\n```";
    expect(read(body)).toEqual({
      faults: [],
      words: [{ kind: "prose", markdown: body, line: 10 }],
    });
  });

  test("a size with a fault of its own is not blamed again", () => {
    expect(faults("{{ bad * 2 }}")).toEqual([]);
  });

  test.each([
    [
      "Cut {{ dpeth }}.",
      "10: expected a length or a formula in {{ dpeth }}. Write depth if that was meant, because dpeth is not a name listed in dimensions.",
    ],
    [
      "\n{{ depth - length }}",
      "11: expected a length or a formula in {{ depth - length }}. Write a length above zero, because the length is negative.",
    ],
    [
      "{{ depth | upper }}",
      '10: expected a length or a formula in {{ depth | upper }}. Use numbers, units, names of dimensions, + - * / ( ), min and max, because "|" has no meaning in a length.',
    ],
    [
      '{{ range.constructor("return 1")() }}',
      '10: expected a length or a formula in {{ range.constructor("return 1")() }}. Use numbers, units, names of dimensions, + - * / ( ), min and max, because "." has no meaning in a length.',
    ],
    [
      "{{ depth",
      "10: holds {{, which is template code. Write {{ 2 * depth }} to print a length, or take it out.",
    ],
    [
      "a\n{% include 'x' %}",
      "11: holds {%, which is template code. Write {{ 2 * depth }} to print a length, or take it out.",
    ],
    [
      "{# note #}",
      "10: holds {#, which is template code. Write {{ 2 * depth }} to print a length, or take it out.",
    ],
    [
      "`{% raw %}`",
      "10: holds {%, which is template code. Write {{ 2 * depth }} to print a length, or take it out.",
    ],
    [
      "Some <b>bold</b> words",
      "10: holds raw HTML: <b>. Write it in Markdown; write \\< for a plain less-than sign.",
    ],
    [
      "one\ntwo <i>x</i>",
      "11: holds raw HTML: <i>. Write it in Markdown; write \\< for a plain less-than sign.",
    ],
    [
      "\n<script>alert(1)</script>",
      "11: holds raw HTML: <script>alert(1)</script>. Write it in Markdown; write \\< for a plain less-than sign.",
    ],
    [
      "<!-- note -->",
      "10: holds raw HTML: <!-- note -->. Write it in Markdown; write \\< for a plain less-than sign.",
    ],
    [
      "::: tip\n<br>\n:::",
      "11: holds raw HTML: <br>. Write it in Markdown; write \\< for a plain less-than sign.",
    ],
    [
      "[x](javascript:alert(1))",
      "10: links to javascript:alert(1), which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "[x](JaVaScRiPt:alert(1))",
      "10: links to JaVaScRiPt:alert(1), which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "[x](&#106;avascript:alert(1))",
      "10: links to javascript:alert(1), which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "[x](data:text/html,hi)",
      "10: links to data:text/html,hi, which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "[x][y]\n\n[y]: vbscript:x",
      "10: links to vbscript:x, which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "<javascript:alert(1)>",
      "10: links to javascript:alert(1), which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "[x](//example.org)",
      "10: links to //example.org, which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "[x](../../etc/passwd)",
      "10: links to ../../etc/passwd, which is not a web address. Write https://… or the name of a file beside this one.",
    ],
    [
      "![x](https://example.org/a.png)",
      "10: shows https://example.org/a.png, which is not a picture beside this file. Put the picture beside the file and write its name.",
    ],
    [
      "![x](data:image/png;base64,AA)",
      "10: shows data:image/png;base64,AA, which is not a picture beside this file. Put the picture beside the file and write its name.",
    ],
    ["![](a.png)", "10: shows a picture without words for it. Write ![what it shows](name.jpg)."],
    [
      "See ![x](figure:blocks) here",
      "10: places figure:blocks inside a line. Put the figure on a line of its own.",
    ],
    ["![](figure:blocks)", "10: a figure has no caption. Write ![words](figure:…)."],
    [
      "![x](figure:a//b)",
      "10: figure:a//b is not the name of a figure. Write figure:blocks or figure:solid/pad.",
    ],
    [
      "::: warning\nHot.\n:::",
      "10: ::: warning is not a box that is known. Write ::: and caution, tip, step <id> or before <id> <title>.",
    ],
    ["::: tip now\nHot.\n:::", "10: ::: tip takes no words after it. Put them on the next line."],
    ["::: step\nCut.\n:::", "10: ::: step needs the id of one step. Write ::: step cut-foam."],
    [
      "::: before cut-foam\nCut.\n:::",
      "10: ::: before needs the id of a step and a title. Write ::: before cut-foam Let the foam rest.",
    ],
    ["::: tip\nHot.", "10: the box is not closed. Put ::: on a line of its own after it."],
    ["::: tip\n:::", "10: the box is empty. Write something in it, or take it out."],
    ["a\n:::", "11: closes a box that was not opened. Take ::: out."],
    [
      "::: tip\na\n::: caution\nb\n:::",
      "12: a box opens inside the box of line 10. Close that box first with :::.",
    ],
    [
      "::: tip\na\n![x](figure:blocks)\n:::",
      "12: a figure stands inside the box of line 10. Close that box first with :::.",
    ],
  ])("%j is refused", (body, message) => {
    expect(faults(body)).toEqual([message]);
  });

  test.each([
    "A < B and 3 > 2, and a <3.",
    "[web](https://example.org/a?b=c#d), [mail](mailto:a@example.org), [here](#top), [file](plan.pdf)",
    "![A bench](photos/my-bench.jpg) and ![Two](photos/my%20bench.PNG)",
    "<https://example.org>",
    "| a | b |\n|---|---|\n| 1 | 2 |",
    "An \\<escaped> sign",
  ])("%j is let through", (body) => {
    expect(faults(body)).toEqual([]);
  });
});
