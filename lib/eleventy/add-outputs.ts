import type { UserConfig } from "@11ty/eleventy";
import { listRules } from "../checks/rules.ts";
import { planJsonSchema } from "../booklet/plan-schema.ts";
import { copyAssets } from "./copy-assets.ts";
import type { Site, SiteBooklet } from "./open-site.ts";

/**
 * Everything beside the screen pages of the project files themselves, which Eleventy makes from
 * content/*.md: the print pages, the plans, the front page, schemas, fonts and scripts.
 */
export function addOutputs(eleventy: UserConfig, site: Site): void {
  site.booklets.forEach((each) => addBooklet(eleventy, each));
  addPage(eleventy, "index", { layout: "index.njk", address: "index.html", root: "" });
  addPage(eleventy, "checks", {
    layout: "checks.njk",
    address: "checks/index.html",
    root: "../",
    rules: listRules(),
  });
  for (const [name, schema] of Object.entries({ ...site.schemas, plan: planJsonSchema() })) {
    const address = `schema/${name}.json`;
    addPage(eleventy, `schema-${name}`, { layout: "schema.njk", address, schema });
  }
  eleventy.on("eleventy.after", ({ directories }) => copyAssets(directories.output));
}

function addBooklet(
  eleventy: UserConfig,
  { slug, project, booklet, otherBooklet }: SiteBooklet,
): void {
  const add = (name: string, data: object): void =>
    addPage(eleventy, `${slug}/${name}`, { booklet: slug, ...data });
  const own = booklet.paper.name;
  const other = otherBooklet.paper.name;
  if (project.variant !== null) {
    add("screen", { layout: "screen.njk", address: `${slug}/index.html`, root: "../" });
  }
  for (const kind of ["print", "patterns"]) {
    const layout = `${kind}.njk`;
    add(kind, { layout, address: `${slug}/${kind}/index.html`, root: "../../", paperName: own });
    const address = `${slug}/${kind}/${other}/index.html`;
    add(`${kind}-${other}`, { layout, address, root: "../../../", paperName: other });
  }
  add("plan", { layout: "plan.njk", address: `${slug}/plan.json` });
}

/** A page that stands for no file: its layout and its data are all there is to it. */
const addPage = (eleventy: UserConfig, name: string, data: object): void =>
  eleventy.addTemplate(`${name}.njk`, " ", data);
