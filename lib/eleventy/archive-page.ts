import { readFileSync } from "node:fs";
import { extname, join } from "node:path";

const types: Readonly<Record<string, string>> = {
  ".woff2": "font/woff2",
  ".jpg": "image/jpeg",
  ".jpeg": "image/jpeg",
  ".png": "image/png",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".svg": "image/svg+xml",
};

/**
 * The screen page of a booklet as one file that needs no other: fonts and photo inside it, links to
 * other files taken out, the project file and plan.json at its end for whoever finds it.
 */
export function archivePage(
  folder: string,
  { source, plan }: { readonly source: string; readonly plan: string },
): string {
  const html = readFileSync(join(folder, "index.html"), "utf8");
  const inlined = html
    .replace(/url\((["']?)(?!data:|#)([^"')]+)\1\)/g, (_, __, file: string) => {
      return `url(${dataOf(join(folder, file))})`;
    })
    .replace(/(<img[^>]*\ssrc=")(?!data:)([^"]+)"/g, (_, head: string, file: string) => {
      return `${head}${dataOf(join(folder, file))}"`;
    })
    .replace(/<header class="bar">[\s\S]*?<\/header>/, "");
  const attached =
    `<section class="page"><h2>Project file</h2><pre>${escape(source)}</pre></section>` +
    `<script type="application/json" id="plan">${plan.trim().replaceAll("<", "\\u003c")}</script>`;
  return inlined.replace("</main>", () => `${attached}</main>`);
}

function dataOf(file: string): string {
  const type = types[extname(file).toLowerCase()];
  if (type === undefined) throw new Error(`${file} is of no kind that an archive can hold`);
  return `data:${type};base64,${readFileSync(file).toString("base64")}`;
}

const escape = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
