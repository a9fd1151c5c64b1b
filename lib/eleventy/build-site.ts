import Eleventy from "@11ty/eleventy";
import { mkdtempSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { configure } from "./configure.ts";
import type { Folders } from "./configure.ts";
import { linkPrints } from "./link-prints.ts";
import type { Site } from "./open-site.ts";
import { swapIn } from "./swap-in.ts";

/**
 * Write a site that has been read and computed. It is built beside the old one and put in its place
 * only when it is whole; booklets whose file is at fault keep the pages they had.
 */
export async function buildSite(
  site: Site,
  { content = "content", output = "_site", requests = [] }: Partial<Folders> = {},
): Promise<void> {
  mkdirSync(content, { recursive: true });
  mkdirSync(".cache", { recursive: true });
  const fresh = mkdtempSync(join(".cache", "build-"));
  try {
    const folders: Folders = { content, output: fresh, requests };
    const eleventy = new Eleventy(content, fresh, {
      configPath: ".eleventy.js",
      quietMode: true,
      config: (config) => {
        config.slipcase = { configure, site, folders };
      },
    });
    eleventy.disableLogger();
    await eleventy.init();
    await eleventy.write();
    site.booklets.forEach(({ keep }) => keep?.());
    swapIn(fresh, output, site);
    site.booklets.forEach(({ slug }) => linkPrints(output, slug));
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}
