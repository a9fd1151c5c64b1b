import MarkdownIt from "markdown-it";
import type Token from "markdown-it/lib/token.mjs";
import type { Count } from "../plane/types.ts";
import { shorten } from "./describe.ts";
import type { LinedFault } from "./read-tree.ts";

/** Raw HTML is let through here only to be found; no page is ever made with this reader. */
const reader = new MarkdownIt({ html: true });
reader.validateLink = () => true;

/** Refuse raw HTML, links that could run something, and pictures that are not beside the file. */
export function checkMarkdown(markdown: string, firstLine: Count): readonly LinedFault[] {
  return reader.parse(markdown, {}).flatMap((token) => {
    const line = firstLine + (token.map?.[0] ?? 0);
    if (token.type === "html_block") return [rawHtml(token.content, line)];
    return token.type === "inline" ? checkInline(token.children ?? [], line) : [];
  });
}

function checkInline(children: readonly Token[], firstLine: Count): readonly LinedFault[] {
  let line = firstLine;
  return children.flatMap((token) => {
    const here = line;
    if (token.type === "softbreak" || token.type === "hardbreak") line += 1;
    if (token.type === "html_inline") {
      line += token.content.split("\n").length - 1;
      if (token.content.startsWith("</")) return []; // told at its opening tag
      return [rawHtml(token.content, here)];
    }
    if (token.type === "link_open") return checkLink(token.attrGet("href") ?? "", here);
    if (token.type === "image") return checkPicture(token, here);
    return [];
  });
}

function rawHtml(content: string, line: Count): LinedFault {
  const [first = ""] = content.trim().split("\n");
  const fix = "Write it in Markdown; write \\< for a plain less-than sign";
  return { line, field: "text", fault: `holds raw HTML: ${shorten(first)}`, fix };
}

/** A web address, a mail address, a place on the page, or a file beside this one. */
function checkLink(href: string, line: Count): readonly LinedFault[] {
  if (/^(https?:\/\/[^/]|mailto:[^/]|#)/i.test(href) || isBeside(href)) return [];
  const fault = `links to ${shorten(href) || "nothing"}, which is not a web address`;
  return [
    { line, field: "text", fault, fix: "Write https://… or the name of a file beside this one" },
  ];
}

function checkPicture(token: Token, line: Count): readonly LinedFault[] {
  const source = token.attrGet("src") ?? "";
  if (source.startsWith("figure:")) {
    const fault = `places ${shorten(source)} inside a line`;
    return [{ line, field: "text", fault, fix: "Put the figure on a line of its own" }];
  }
  if (!isBeside(source) || !/\.(jpe?g|png|webp|avif|svg)$/i.test(source)) {
    const fault = `shows ${shorten(source) || "nothing"}, which is not a picture beside this file`;
    return [
      { line, field: "text", fault, fix: "Put the picture beside the file and write its name" },
    ];
  }
  if (token.content.trim() !== "") return [];
  const fix = "Write ![what it shows](name.jpg)";
  return [{ line, field: "text", fault: "shows a picture without words for it", fix }];
}

/** A plain path that does not leave the folder. */
function isBeside(path: string): boolean {
  return /^[\w%][\w%.-]*(\/[\w%][\w%.-]*)*(#[\w-]+)?$/.test(path) && !/%(2e|2f|5c|0)/i.test(path);
}
