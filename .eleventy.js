import { tsImport } from "tsx/esm/api";

/**
 * The library is loaded inside the function, so that a change anywhere in it is seen on the next
 * reload. A command that has already read the content hands it over as `cfg.slipcase`; alone,
 * Eleventy reads it here and names the faults.
 */
export default async function (cfg) {
  const handed = cfg.slipcase;
  if (handed) return handed.configure(cfg, handed.site, handed.folders);
  const slipcase = await tsImport("./lib/eleventy/index.ts", import.meta.url);
  const site = await slipcase.openKept();
  slipcase.reportSite(site);
  return slipcase.configure(cfg, site);
}
