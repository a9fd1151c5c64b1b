export { configure } from "./configure.ts";
export { openSite } from "./open-site.ts";
export { reportSite } from "./report-site.ts";
