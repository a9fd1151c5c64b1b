import { readFileSync } from "node:fs";
import { relative, resolve } from "node:path";
import type { UserConfig } from "@11ty/eleventy";
import { parse } from "yaml";
import { addFilters } from "./add-filters.ts";
import { addOutputs } from "./add-outputs.ts";
import { displayPath } from "./list-files.ts";
import type { Site, SiteBooklet } from "./open-site.ts";
import type { PrintRequest } from "./print-request.ts";

export interface Folders {
  /** Where the project files lie. */
  readonly content: string;
  readonly output: string;
  /** Prints whose pages are to be written beside the usual ones. */
  readonly requests?: readonly PrintRequest[];
}

const refusedKeys = [
  "templateEngineOverride",
  "eleventyComputed",
  "pagination",
  "permalink",
  "layout",
];

/**
 * Set Eleventy up for a site that is already read and computed: front matter reaches the layouts by
 * Eleventy's own data cascade, the filters are thin names over the plan.
 */
export function configure(
  eleventy: UserConfig,
  site: Site,
  { content, output, requests = [] }: Folders = { content: "content", output: "_site" },
): object {
  refuseCode(eleventy);
  site.refused.forEach((file) => eleventy.ignores.add(file));
  eleventy.ignores.add(`${displayPath(resolve(content))}/**/_*.md`);
  // How long a filter took on a busy machine is no news to an author.
  Object.values(eleventy.benchmarks).forEach((group) => group.setMinimumThresholdMs(0));
  eleventy.setUseGitIgnore(false);
  eleventy.setNunjucksEnvironmentOptions({ throwOnUndefined: true, autoescape: true });
  eleventy.addGlobalData("layout", "screen.njk");
  eleventy.addGlobalData("root", "../");
  eleventy.addGlobalData("eleventyComputed", computedData(site));
  eleventy.addGlobalData("shelf", new Map(site.booklets.map((each) => [each.slug, each])));
  addFilters(eleventy);
  addOutputs(eleventy, site, requests);
  for (const watched of ["./lib/", "./layouts/", "./shared/", "./content/"]) {
    eleventy.addWatchTarget(watched, { resetConfig: true });
  }
  const fromContent = (folder: string): string => relative(resolve(content), resolve(folder));
  return {
    dir: {
      input: content,
      output,
      includes: fromContent("layouts"),
      layouts: fromContent("layouts"),
      data: fromContent("shared/data"),
    },
    markdownTemplateEngine: false,
    htmlTemplateEngine: "njk",
    templateFormats: ["md", "njk"],
  };
}

/** Content runs no code: no engine but YAML, no raw HTML, no template keys in front matter. */
function refuseCode(eleventy: UserConfig): void {
  eleventy.setDataFileSuffixes([]);
  const refuse = (): never => {
    throw new Error("Front matter that is a program is refused: use YAML");
  };
  eleventy.setFrontMatterParsingOptions({
    engines: {
      yaml: { parse: (text: string) => parse(text) as object },
      js: refuse,
      javascript: refuse,
      node: refuse,
    },
  });
  eleventy.amendLibrary("md", (markdown: { set(options: object): void }) =>
    markdown.set({ html: false }),
  );
  // The author's text reaches the page cut into parts, by way of the project; see render-markdown.ts.
  eleventy.addPreprocessor("words", "md", (data: { page: { inputPath: string } }) => {
    const keys = refusedIn(data.page.inputPath);
    if (keys.length > 0)
      throw new Error(`${data.page.inputPath}: ${keys.join(", ")} may not stand in front matter`);
    return " ";
  });
}

function refusedIn(file: string): readonly string[] {
  const front = /^---\r?\n([\s\S]*?)\r?\n---/.exec(readFileSync(file, "utf8"))?.[1] ?? "";
  const data = parse(front) as Record<string, unknown> | null;
  return refusedKeys.filter((key) => Object.hasOwn(data ?? {}, key));
}

type PageData = {
  readonly booklet?: string;
  readonly address?: string;
  readonly page: { readonly inputPath: string };
};

/** What each page knows beyond its front matter: its project, and where it goes. */
function computedData(site: Site): object {
  const find = (data: PageData): SiteBooklet | undefined =>
    site.booklets.find(({ slug, project }) =>
      data.booklet === undefined
        ? project.variant === null && displayPath(data.page.inputPath) === project.file
        : slug === data.booklet,
    );
  return {
    project: (data: PageData) => find(data)?.project,
    permalink: (data: PageData) => data.address ?? `${find(data)?.slug}/index.html`,
  };
}
