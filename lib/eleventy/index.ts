export { configure } from "./configure.ts";
export { openKept } from "./open-kept.ts";
export { openSite } from "./open-site.ts";
export { reportSite } from "./report-site.ts";
