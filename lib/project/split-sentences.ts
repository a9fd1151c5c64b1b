import MarkdownIt from "markdown-it";
import type { Count } from "../plane/types.ts";

export interface Sentence {
  readonly text: string;
  readonly line: Count;
  /** Which sentence of its paragraph or list item it is, from 0. */
  readonly place: Count;
}

const reader = new MarkdownIt();

/** Cut Markdown into sentences, each with the line it starts on. Headings, tables and code are passed over. */
export function splitSentences(markdown: string, firstLine: Count): readonly Sentence[] {
  const tokens = reader.parse(markdown, {});
  return tokens.flatMap((token, index) => {
    if (token.type !== "inline" || tokens[index - 1]?.type !== "paragraph_open") return [];
    const text = (token.children ?? [])
      .map(({ type, content }) => {
        if (type === "softbreak" || type === "hardbreak") return "\n";
        return type === "text" || type === "code_inline" ? content : "";
      })
      .join("");
    return cut(text, firstLine + (token.map?.[0] ?? 0));
  });
}

function cut(text: string, firstLine: Count): readonly Sentence[] {
  const sentences: Sentence[] = [];
  // A full stop ends a sentence when a gap and a capital, a digit or a quote follow.
  for (const { 0: whole, index } of text.matchAll(
    /\S[\s\S]*?(?:[.!?]["”’)]*(?=\s+["“‘(]?[\p{Lu}\d])|$)/gu,
  )) {
    const line = firstLine + text.slice(0, index).split("\n").length - 1;
    sentences.push({ text: whole.replace(/\s+/g, " ").trim(), line, place: sentences.length });
  }
  return sentences;
}
