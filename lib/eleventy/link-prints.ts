import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { editions } from "../booklet/editions.ts";
import { papers } from "../booklet/paper.ts";
import { titleOf } from "../booklet/open-hyphens.ts";

const place = /<!-- prints -->[\s\S]*?<!-- \/prints -->/;

/** Link the screen page of a booklet to the PDFs that lie beside it, and to no others. */
export function linkPrints(output: string, slug: string): void {
  const file = join(output, slug, "index.html");
  if (!existsSync(file)) return;
  const links = readdirSync(join(output, slug))
    .filter((name) => name.endsWith(".pdf"))
    .toSorted()
    .map((name) => `<a href="${name}">${printName(name, slug)} (PDF)</a>`);
  const html = readFileSync(file, "utf8");
  const linked = html.replace(place, () => `<!-- prints -->${links.join("\n")}<!-- /prints -->`);
  if (linked !== html) writeFileSync(file, linked);
}

/** What a PDF is, from its name: "Large print on Letter". */
export function printName(file: string, slug: string): string {
  let rest = file.slice(slug.length).replace(/\.pdf$/, "");
  const take = (words: readonly string[]): string | undefined => {
    const found = words.find((word) => rest === `-${word}` || rest.startsWith(`-${word}-`));
    if (found !== undefined) rest = rest.slice(found.length + 1);
    return found;
  };
  const form = take([...Object.keys(editions), "patterns"]);
  const paper = take(Object.keys(papers));
  const name = Object.values(editions).find((edition) => edition.name === (form ?? "booklet"));
  const label = name?.label ?? "Patterns";
  const on = Object.values(papers).find((each) => each.name === paper);
  const kinds = rest === "" ? "" : `, ${titleOf(rest.slice(1)).toLowerCase()}`;
  return `${label}${on === undefined ? "" : ` on ${on.label}`}${kinds}`;
}
