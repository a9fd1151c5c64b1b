import type { Count } from "../plane/types.ts";

/** A project file cut at its fences. Lines are counted from 1. */
export interface SplitSource {
  readonly frontMatter: string;
  readonly frontMatterLine: Count;
  readonly body: string;
  readonly bodyLine: Count;
}

export interface SplitFault {
  readonly line: Count;
  readonly fault: string;
  readonly fix: string;
}

const longestFile = 200_000; // characters, a long book chapter

/** Part the front matter from the text. Only plain `---` fences are taken, so no other language runs. */
export function splitSource(text: string): SplitSource | SplitFault {
  if (text.length > longestFile) {
    return { line: 1, fault: "the file has more than 200000 characters", fix: "Split it up" };
  }
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\r|\n/);
  const [first = ""] = lines;
  const language = /^---+\s*(\S.*)$/.exec(first)?.[1];
  if (language !== undefined) {
    return {
      line: 1,
      fault: `front matter in ${JSON.stringify(language.trim())} is not taken`,
      fix: "Start the file with --- alone, and write YAML",
    };
  }
  if (first.trimEnd() !== "---") {
    return {
      line: 1,
      fault: "the file does not start with front matter",
      fix: "Put --- on the first line, then title: and units:, then --- again",
    };
  }
  const close = lines.findIndex((line, index) => index > 0 && line.trimEnd() === "---");
  if (close < 0) {
    return { line: 1, fault: "the front matter has no end", fix: "Put --- on a line after it" };
  }
  return {
    frontMatter: lines.slice(1, close).join("\n"),
    frontMatterLine: 2,
    body: lines.slice(close + 1).join("\n"),
    bodyLine: close + 2,
  };
}
