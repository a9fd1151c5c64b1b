import { tsImport } from "tsx/esm/api";

/**
 * Loaded inside the function, so that a change anywhere in lib is seen on the next reload. A command
 * that has already read the content hands it over as `cfg.slipcase`; alone, Eleventy reads it here.
 */
export default async function (cfg) {
  const handed = cfg.slipcase;
  const { configure, openSite } = handed ?? (await tsImport("./lib/eleventy/index.ts", import.meta.url));
  const site = handed?.site ?? openSite();
  return configure(cfg, site, handed?.folders);
}
