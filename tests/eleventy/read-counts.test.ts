import { expect, test } from "vitest";
import { readCounts } from "../../lib/eleventy/read-counts.ts";

const otherwise = { runs: 300, seed: 1 };

test("words of a bench give whole numbers, and the rest stay as they are", () => {
  expect(readCounts([], otherwise)).toEqual({ runs: 300, seed: 1 });
  expect(readCounts(["--seed", "7"], otherwise)).toEqual({ runs: 300, seed: 7 });
  expect(readCounts(["--seed", "7", "--runs", "5"], otherwise)).toEqual({ runs: 5, seed: 7 });
});

test.each([
  { words: ["300", "1"], message: "bench does not know 300; it takes --runs and --seed" },
  { words: ["--ruins", "5"], message: "bench does not know --ruins; it takes --runs and --seed" },
  { words: ["--runs"], message: "--runs needs a whole number" },
  { words: ["--runs", "2.5"], message: "--runs needs a whole number" },
  { words: ["--seed", "0"], message: "--seed needs a whole number" },
])("$words is refused: $message", ({ words, message }) => {
  expect(() => readCounts(words, otherwise)).toThrow(message);
});
