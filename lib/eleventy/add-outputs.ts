import type { UserConfig } from "@11ty/eleventy";
import { workWords } from "../booklet/build-card.ts";
import { listRules } from "../checks/rules.ts";
import { planJsonSchema } from "../booklet/plan-schema.ts";
import { copyAssets, copyPhotos } from "./copy-assets.ts";
import type { Site, SiteBooklet } from "./open-site.ts";
import { isAlwaysBuilt, pageOf, requestFor } from "./print-request.ts";
import type { PrintRequest } from "./print-request.ts";

/**
 * Everything beside the screen pages of the project files themselves, which Eleventy makes from
 * content/*.md: the print pages, the plans, the front page, schemas, fonts, scripts and photos. Pages
 * of other editions are written only where they are asked for.
 */
export function addOutputs(
  eleventy: UserConfig,
  site: Site,
  requests: readonly PrintRequest[] = [],
): void {
  for (const entry of site.booklets) {
    addBooklet(eleventy, entry);
    requests
      .filter((request) => request.slug === entry.slug && !isAlwaysBuilt(entry, request))
      .forEach((request) => addPrint(eleventy, entry, request));
  }
  addPage(eleventy, "index", {
    layout: "index.njk",
    address: "index.html",
    root: "",
    works: workWords,
  });
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
  eleventy.on("eleventy.after", ({ directories }) => {
    copyAssets(directories.output);
    copyPhotos(site, directories.output);
  });
}

function addBooklet(eleventy: UserConfig, entry: SiteBooklet): void {
  const { slug, project, booklet, otherBooklet } = entry;
  if (project.variant !== null) {
    const address = `${slug}/index.html`;
    addPage(eleventy, `${slug}/screen`, {
      layout: "screen.njk",
      address,
      root: "../",
      booklet: slug,
    });
  }
  for (const form of ["booklet", "patterns"] as const) {
    for (const { name } of [booklet.paper, otherBooklet.paper]) {
      addPrint(eleventy, entry, requestFor(entry, form, name));
    }
  }
  const address = `${slug}/plan.json`;
  addPage(eleventy, `${slug}/plan`, { layout: "plan.njk", address, booklet: slug });
}

/** A page to print, an edition or pattern sheets. */
function addPrint(eleventy: UserConfig, entry: SiteBooklet, request: PrintRequest): void {
  const { form, paper, patterns, slug } = request;
  const address = pageOf(entry, request);
  addPage(eleventy, address.replace(/\/index\.html$/, ""), {
    booklet: slug,
    layout: form === "patterns" ? "patterns.njk" : "print.njk",
    address,
    root: "../".repeat(address.split("/").length - 1),
    paperName: paper,
    edition: form === "patterns" ? "booklet" : form,
    patternOptions: patterns,
  });
}

/** A page that stands for no file: its layout and its data are all there is to it. */
const addPage = (eleventy: UserConfig, name: string, data: object): void =>
  eleventy.addTemplate(`${name}.njk`, " ", data);
