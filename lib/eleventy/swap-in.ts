import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
} from "node:fs";
import { basename, join } from "node:path";
import type { Site } from "./open-site.ts";

/**
 * Put freshly built pages in the place of the old. Folders of booklets that are gone are removed; those
 * of booklets at fault are left as they were. A PDF stays only while the pages it was printed from do.
 */
export function swapIn(fresh: string, output: string, site: Site): void {
  mkdirSync(output, { recursive: true });
  const kept = new Set(site.refused.map((file) => basename(file, ".md")));
  for (const name of readdirSync(fresh)) {
    keepPrints(join(fresh, name), join(output, name));
    rmSync(join(output, name), { recursive: true, force: true });
    renameSync(join(fresh, name), join(output, name));
  }
  for (const name of readdirSync(output)) {
    const isBooklet = existsSync(join(output, name, "print", "index.html"));
    const isKnown = site.booklets.some(({ slug }) => slug === name) || isVariantOf(name, kept);
    if (isBooklet && !isKnown) rmSync(join(output, name), { recursive: true, force: true });
  }
}

const isVariantOf = (name: string, slugs: ReadonlySet<string>): boolean =>
  [...slugs].some((slug) => name === slug || name.startsWith(`${slug}-`));

/** Carry PDFs over into a fresh folder whose pages have not changed. */
function keepPrints(fresh: string, old: string): void {
  if (!existsSync(join(old, "print", "index.html"))) return;
  const isSame = ["print/index.html", "patterns/index.html", "plan.json"].every(
    (page) => readOrEmpty(join(old, page)) === readOrEmpty(join(fresh, page)),
  );
  if (!isSame) return;
  for (const name of readdirSync(old).filter((each) => each.endsWith(".pdf"))) {
    cpSync(join(old, name), join(fresh, name));
  }
}

const readOrEmpty = (file: string): string => (existsSync(file) ? readFileSync(file, "utf8") : "");
