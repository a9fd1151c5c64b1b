import { isStockFile } from "./is-stock-file.ts";
import { ProjectError } from "./project-error.ts";

const pictures = /\.(jpe?g|png|webp|avif|svg|gif)$/i;

/**
 * Refuse every file under content/ that is not a project, a stock file, a picture or a README, before the site
 * builder starts: data files and templates beside a project would be run as code.
 *
 * Names starting with `_` are ignored, except those the builder would still run.
 *
 * @param paths as the author knows them, such as `content/seat.md`
 */
export function checkContentFiles(paths: readonly string[]): readonly ProjectError[] {
  return paths.flatMap((path) => {
    const name = path.split(/[\\/]/).at(-1) ?? "";
    const fault = isStockFile(path) ? null : faultOf(name);
    if (fault === null) return [];
    const fix =
      "Move it out of content; only project files (.md), pictures and a README belong there";
    return [new ProjectError({ file: path, line: 1, field: "file" }, fault, fix)];
  });
}

function faultOf(name: string): string | null {
  if (/\.11tydata\./i.test(name)) return "is a data file that the site builder would run";
  if (/\.(js|cjs|mjs|jsx|ts|cts|mts|tsx)$/i.test(name)) return "is a program";
  if (name.startsWith("_")) return null;
  if (/\.(njk|html?|liquid|hbs|ejs|pug|mustache|webc|haml|astro|vue)$/i.test(name)) {
    return "is a template";
  }
  const isWelcome = /\.md$/.test(name) || pictures.test(name) || /^README(\.\w+)?$/.test(name);
  return isWelcome || name === ".gitkeep" ? null : "is not a project, a picture or a README";
}
