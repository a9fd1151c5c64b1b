import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkContentFiles } from "../../lib/project/check-content-files.ts";
import { isProjectFile } from "../../lib/project/is-project-file.ts";
import { readProject } from "../../lib/project/read-project.ts";
import { faultsOf, projectOf, projectText } from "./project-text.ts";

const told = (line: string) => [`content/pad.md:${line}`];

describe("front matter that tries something", () => {
  test.each(["js", "javascript", "json", "toml", "coffee", " js"])(
    "---%s is refused",
    (language) => {
      expect(faultsOf(`---${language}\n{}\n---\nWords.`)).toEqual(
        told(
          `1 file: front matter in ${JSON.stringify(language.trim())} is not taken. Start the file with --- alone, and write YAML.`,
        ),
      );
    },
  );

  test.each(["__proto__", "constructor", "prototype"])("the key %s is refused anywhere", (key) => {
    const fix = "is not a key that can be used. Write a plain word before the colon.";
    expect(faultsOf(projectText({ [key]: "{title: x}" }))).toEqual(told(`8 ${key}: ${fix}`));
    expect(faultsOf(projectText({ variants: `{${key}: {length: 3}}` }))).toEqual(
      told(`8 variants.${key}: ${fix}`),
    );
    expect(faultsOf(projectText({ dimensions: `{length: 120, depth: 42, ${key}: 3}` }))).toEqual(
      told(`4 dimensions.${key}: ${fix}`),
    );
    expect(Object.hasOwn(Object.prototype, "title")).toBe(false);
  });

  test("names every object has are not names of dimensions, stock, pieces or blocks", () => {
    for (const name of ["toString", "hasOwnProperty", "valueOf"]) {
      const solids = `{pad: {foam: ${name}, blocks: {slab: {box: [${name}, depth, 8]}}, cover: {fabric: print, open: [${name}/top]}}}`;
      expect(
        faultsOf(projectText({ solids })).map((line) => line.split(":")[2]?.trim()),
      ).toHaveLength(3);
    }
  });

  test("a dimension may still be called toString", () => {
    const project = projectOf(projectText({ dimensions: "{length: 120, depth: 42, toString: 3}" }));
    expect(Object.entries(project.dimensions)).toContainEqual(["toString", 30]);
  });

  test("anchors, aliases and merges are refused, so no file can blow up", () => {
    const bomb = ["a: &a [x, x]", "b: &b [*a, *a]", "c: &c [*b, *b]", "d: [*c, *c]"].join("\n");
    const text = `---\ntitle: Pad\nunits: cm\n${bomb}\n---\n`;
    expect(faultsOf(text).slice(0, 2)).toEqual([
      "content/pad.md:1 solids: is missing, and so is pieces. Describe a solid or a piece to make.",
      "content/pad.md:4 a: uses an anchor (&). Write the value out, or use a dimension.",
    ]);
    expect(faultsOf(projectText({ summary: "*length" }))).toEqual(
      told("8 summary: uses an alias (*). Write the value out, or use a dimension."),
    );
    expect(faultsOf(projectText({ "<<": "{copies: 3}" }))).toEqual(
      told("8 <<: is not a plain key. Write a plain word before the colon."),
    );
  });

  test("tags are refused", () => {
    expect(faultsOf(projectText({ summary: "!!js/function 'return 1'" }))).toEqual(
      told("8 summary: uses the tag tag:yaml.org,2002:js/function. Write the plain value."),
    );
  });

  test("what is not a number is not a length", () => {
    for (const value of [".inf", "-.inf", ".nan"]) {
      expect(faultsOf(projectText({ dimensions: `{length: ${value}, depth: 42}` }))).toEqual(
        told(`4 dimensions.length: is ${value}, not a number. Write a number.`),
      );
    }
    expect(faultsOf(projectText({ dimensions: "{length: 1e300, depth: 42}" }))).toEqual(
      told(
        "4 dimensions.length: expected a length such as 1.5 cm or 1/2 in, got 1e+300. Check the unit and the figures, because the length is more than 100 m.",
      ),
    );
  });

  test("numbers in quotes, dates and words like no stay what they are", () => {
    const project = projectOf(
      projectText({
        dimensions: '{length: "120", depth: "42"}',
        made: "{date: 2026-03-14}",
        version: "1.20",
        summary: "no",
        time: "12:30",
      }),
    );
    expect(project.dimensions).toEqual({ length: 1200, depth: 420 });
    expect(project.made?.date).toBe("2026-03-14");
    expect([project.version, project.summary, project.time]).toEqual(["1.20", "no", "12:30"]);
  });

  test("brackets thousands deep are refused without running out of room", () => {
    const text = projectText({ buy: "[".repeat(20_000) + "]".repeat(20_000) });
    expect(faultsOf(text)).toHaveLength(1);
    expect(faultsOf(projectText({ buy: "[".repeat(30) + "1" + "]".repeat(30) }))[0]).toContain(
      "is nested too deep. Write it flatter.",
    );
  });

  test("a very long file is refused", () => {
    expect(faultsOf(projectText({}, "a ".repeat(150_000)))).toEqual(
      told("1 file: the file has more than 200000 characters. Split it up."),
    );
  });

  test("control characters are refused", () => {
    expect(faultsOf(projectText({ summary: '"a\\u0000b"' }))).toEqual(
      told("8 summary: holds a control character. Take it out."),
    );
  });

  test.each([
    [
      "Words.",
      "the file does not start with front matter. Put --- on the first line, then title: and units:, then --- again",
    ],
    [
      "",
      "the file does not start with front matter. Put --- on the first line, then title: and units:, then --- again",
    ],
    ["---\ntitle: x\n", "the front matter has no end. Put --- on a line after it"],
  ])("a file without its fences is refused", (text, fault) => {
    expect(faultsOf(text)).toEqual(told(`1 file: ${fault}.`));
  });

  test("a byte order mark and line ends of other systems change nothing", () => {
    const plain = readProject({ file: "content/pad.md", text: projectText() });
    const other = `\uFEFF${projectText().replace(/\n/g, "\r\n")}`;
    expect(readProject({ file: "content/pad.md", text: other })).toEqual(plain);
  });

  test.each([
    [
      "units: cm\nunits: mm",
      "9 front matter: a key is given twice. Take one of the two lines out.",
    ],
    [
      "summary: a: b",
      "8 front matter: a value holds a colon followed by a gap. Put quotes around the value.",
    ],
    ["\tcopies: 2", "8 front matter: a line is set in with a tab. Use spaces."],
    [
      "buy: [1, 2",
      "8 front matter: a line is set in by the wrong amount, or a bracket is not closed. Set it in like its neighbours, and close every bracket.",
    ],
  ])("broken YAML, %j, is told in plain words", (line, message) => {
    const text = projectText().replace("\n---\nWords.", `\n${line}\n---\nWords.`);
    const faults = faultsOf(text);
    expect(faults).toContain(`content/pad.md:${message}`);
  });

  test("reading never throws, whatever the file holds", () => {
    const pieces = fc.constantFrom(
      "---",
      "\n",
      ": ",
      "[",
      "]",
      "{",
      "}",
      "title",
      "units",
      "in",
      "&a",
      "*a",
      "!!x",
      "|",
      ">",
      "'",
      '"',
      "- ",
      "#",
      "<<",
      "::: tip",
      "{{",
      "}}",
      "<b>",
      "solids",
      "\t",
      "1/2",
      "__proto__",
    );
    const text = fc.array(fc.oneof(pieces, fc.string({ maxLength: 5 })), { maxLength: 40 });
    fc.assert(
      fc.property(text, (parts) => {
        const read = readProject({
          file: "content/x.md",
          text: `---\n${parts.join("")}\n---\n${parts.join("")}`,
        });
        return read.projects.length === 0 && read.faults.length > 0;
      }),
      { numRuns: 300, seed: 5 },
    );
  });
});

describe("files under content", () => {
  test("projects, pictures and a README are welcome", () => {
    expect(
      checkContentFiles([
        "content/seat.md",
        "content/README.md",
        "content/photos/seat.jpg",
        "content/a.PNG",
        "content/_notes.txt",
        "content/_half-done.md",
      ]),
    ).toEqual([]);
  });

  const fix =
    "Move it out of content; only project files (.md), pictures and a README belong there.";
  test.each([
    ["content/seat.11tydata.js", "is a data file that the site builder would run"],
    ["content/seat.11tydata.json", "is a data file that the site builder would run"],
    ["content/_x/_y.11tydata.cjs", "is a data file that the site builder would run"],
    ["content/a.js", "is a program"],
    ["content/a.cjs", "is a program"],
    ["content/a.mjs", "is a program"],
    ["content/a.ts", "is a program"],
    ["content/_a.11ty.js", "is a program"],
    ["content/a.njk", "is a template"],
    ["content/a.html", "is a template"],
    ["content/a.liquid", "is a template"],
    ["content/content.json", "is not a project, a picture or a README"],
    ["content/.env", "is not a project, a picture or a README"],
  ])("%s is refused", (path, fault) => {
    expect(checkContentFiles([path]).map(({ message }) => message)).toEqual([
      `${path}:1 file: ${fault}. ${fix}`,
    ]);
  });

  test("only Markdown that is not set aside is a project", () => {
    const paths = ["content/a.md", "content/_a.md", "content/README.md", "content/a.jpg"];
    expect(paths.filter(isProjectFile)).toEqual(["content/a.md"]);
  });
});
