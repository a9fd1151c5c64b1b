import { describe, expect, test } from "vitest";
import { formatNote, lintText } from "../../lib/project/lint-text.ts";
import { splitSentences } from "../../lib/project/split-sentences.ts";
import { fixture, projectOf, projectText } from "./project-text.ts";

const notes = (body: string, units = "cm") =>
  lintText(projectOf(projectText({ units }, body))).map(formatNote);
const step = (sentence: string) => `::: step cut-foam\n${sentence}\n:::`;
const verb = (word: string) =>
  `content/pad.md:10 text: a step starts with its verb, and "${word}" is not one that is known. Write an order, such as Cut or Fold.`;
const words = (count: number) =>
  `Cut ${Array.from({ length: count - 1 }, () => "foam").join(" ")}.`;

// The text starts on line 9 of these files, so a step's first sentence is on line 10.
describe("reading the author's wording", () => {
  // ASD-STE100: at most 20 words in a procedural sentence, 25 in a descriptive one.
  test.each([
    [step(words(20)), []],
    [
      step(words(21)),
      ["content/pad.md:10 text: a sentence of 21 words, and 20 are enough here. Make two of it."],
    ],
    [words(25), []],
    [
      words(26),
      ["content/pad.md:9 text: a sentence of 26 words, and 25 are enough here. Make two of it."],
    ],
  ])("counts words: %s", (body, expected) => {
    expect(notes(body)).toEqual(expected);
  });

  test.each([
    "Cut the foam.",
    "Now cut the foam.",
    "When the glue is dry, cut the foam.",
    "With the print up, carefully lay the panel down.",
    "Do not stretch the cloth.",
    "Never iron foam.",
    "Fold the left and right edges over.",
    "Mark each end, front and back.",
  ])("%s is an action", (sentence) => {
    expect(notes(step(sentence))).toEqual([]);
  });

  test.each([
    ["You cut the foam.", "you"],
    ["The foam is cut.", "the"],
    ["Cutting is next.", "cutting"],
    ["When dry the foam is cut.", "when"],
    ["It should be flat.", "it"],
  ])("%s is not an action", (sentence, word) => {
    expect(notes(step(sentence))).toEqual([verb(word)]);
  });

  test.each([
    ["Pin and sew the edge.", "sew"],
    ["Turn the cover, press the seams.", "press"],
    ["When it is dry, sand the edge and oil or paint it, wipe it.", "wipe"],
  ])("%s is two actions", (sentence, second) => {
    expect(notes(step(sentence))).toEqual([
      `content/pad.md:10 text: a step has one action a sentence. Start a new one at "${second}".`,
    ]);
  });

  test.each(["Pin the edge; it will slip.", "Pin the edge and then wait."])(
    "%s is joined",
    (sentence) => {
      expect(notes(step(sentence))).toEqual([
        "content/pad.md:10 text: a step has one action a sentence. Start a new sentence after the first.",
      ]);
    },
  );

  test("a caution stands before its action", () => {
    expect(notes(step("Cut the foam. Take care of your fingers."))).toEqual([
      "content/pad.md:10 text: a caution stands before the action. Put it first, or in ::: caution above the step.",
    ]);
    expect(notes(step("Take care of your fingers. Cut the foam."))).toEqual([]);
    expect(notes(`${step("Cut the foam.")}\n\n::: caution\nKnives cut.\n:::\n`)).toEqual([
      "content/pad.md:14 text: a caution stands before the action. Move it above the step.",
    ]);
    expect(
      notes(`${step("Cut the foam.")}\n::: caution\nGlue burns.\n:::\n${step("Glue the foam.")}`),
    ).toEqual([]);
  });

  test("units are of one system", () => {
    expect(notes("Leave 1/2 in. Then go on.")).toEqual([
      'content/pad.md:9 text: "1/2 in" is not in the unit of this booklet, cm. Write {{ … }} to have it printed in cm.',
    ]);
    expect(notes("A strip 3 inches wide.")).toHaveLength(1);
    expect(notes("Leave 15 mm.", "in")).toEqual([
      'content/pad.md:9 text: "15 mm" is not in the unit of this booklet, in. Write {{ … }} to have it printed in in.',
    ]);
    expect(notes("Put 12 in the box, and cut 2 in one go.")).toEqual([]);
    expect(notes("Leave 15 mm and {{ 1 in }}.")).toEqual([]);
  });

  test("the sound fixtures read well", () => {
    for (const name of ["seat-block", "round-pouf", "bay-pad", "batten-crate", "every-key"]) {
      const { file, text } = fixture(name);
      expect(lintText(projectOf(text, file)).map(formatNote)).toEqual([]);
    }
  });
});

describe("cutting text into sentences", () => {
  test("lines are those the sentences start on", () => {
    const text = "One is 2.5 cm long. Two\nruns on. Three?\n\n- Four.\n- Five\n\n# Heading\n\nSix.";
    expect(splitSentences(text, 20)).toEqual([
      { text: "One is 2.5 cm long.", line: 20, place: 0 },
      { text: "Two runs on.", line: 20, place: 1 },
      { text: "Three?", line: 21, place: 2 },
      { text: "Four.", line: 23, place: 0 },
      { text: "Five", line: 24, place: 0 },
      { text: "Six.", line: 28, place: 0 },
    ]);
  });
});
