export { configure } from "./configure.ts";
export { openSite } from "./open-site.ts";
