import { type Site, openSite } from "./open-site.ts";
import { diskCache } from "./plan-cache.ts";
import { realStages } from "./real-stages.ts";
import { siteAddress } from "./site-address.ts";

/** Where the commands keep plans and drawings from one build to the next. */
const planFolder = ".cache/plans";

/** The site of the content folder, unchanged projects as the last build left them. */
export const openKept = (content = "content"): Site =>
  openSite(content, realStages, siteAddress(), diskCache(planFolder));
