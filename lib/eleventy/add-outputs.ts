import type { UserConfig } from "@11ty/eleventy";
import { planJsonSchema } from "../booklet/plan-schema.ts";
import type { Site, SiteBooklet } from "./open-site.ts";

const fontFolder = "node_modules/@fontsource/source-sans-3";
const fonts = ["latin-400", "latin-600", "latin-ext-400", "latin-ext-600"];

/**
 * Everything beside the screen pages of the project files themselves, which Eleventy makes from
 * content/*.md: the print pages, the plans, the front page, schemas, fonts and scripts.
 */
export function addOutputs(eleventy: UserConfig, site: Site): void {
  site.booklets.forEach((each) => addBooklet(eleventy, each));
  addPage(eleventy, "index", { layout: "index.njk", permalink: "index.html", root: "" });
  for (const [name, schema] of Object.entries({ ...site.schemas, plan: planJsonSchema() })) {
    const permalink = `schema/${name}.json`;
    addPage(eleventy, `schema-${name}`, { layout: "schema.njk", permalink, schema });
  }
  eleventy.addPassthroughCopy({
    ...Object.fromEntries(
      fonts.map((font) => [fontFile(font), `fonts/source-sans-3-${font}.woff2`]),
    ),
    [`${fontFolder}/LICENSE`]: "fonts/LICENSE.txt",
    "node_modules/pagedjs/dist/paged.polyfill.min.js": "scripts/paged.polyfill.min.js",
    "node_modules/pagedjs/LICENSE.md": "scripts/paged.LICENSE.md",
    "shared/scripts/paginate.js": "scripts/paginate.js",
  });
}

const fontFile = (font: string): string => `${fontFolder}/files/source-sans-3-${font}-normal.woff2`;

function addBooklet(
  eleventy: UserConfig,
  { slug, project, booklet, otherBooklet }: SiteBooklet,
): void {
  const add = (name: string, data: object): void =>
    addPage(eleventy, `${slug}/${name}`, { booklet: slug, ...data });
  const own = booklet.paper.name;
  const other = otherBooklet.paper.name;
  if (project.variant !== null) {
    add("screen", { layout: "screen.njk", permalink: `${slug}/index.html`, root: "../" });
  }
  for (const kind of ["print", "patterns"]) {
    const layout = `${kind}.njk`;
    add(kind, { layout, permalink: `${slug}/${kind}/index.html`, root: "../../", paperName: own });
    const permalink = `${slug}/${kind}/${other}/index.html`;
    add(`${kind}-${other}`, { layout, permalink, root: "../../../", paperName: other });
  }
  add("plan", { layout: "plan.njk", permalink: `${slug}/plan.json` });
}

/** A page that stands for no file: its layout and its data are all there is to it. */
const addPage = (eleventy: UserConfig, name: string, data: object): void =>
  eleventy.addTemplate(`${name}.njk`, " ", data);
