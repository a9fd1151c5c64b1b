import { placeFault } from "../project/place-fault.ts";
import { type OpenOptions, type SiteBooklet, openProject } from "./open-project.ts";
import { type PlanCache, noCache } from "./plan-cache.ts";
import { type Content, readContent } from "./read-content.ts";
import { realStages } from "./real-stages.ts";
import { siteAddress } from "./site-address.ts";
import type { FileFault, Stages } from "./stages.ts";

export type { SiteBooklet } from "./open-project.ts";

/** A content folder, read, checked and computed. */
export interface Site {
  readonly booklets: readonly SiteBooklet[];
  /** One line for each fault of every file. */
  readonly faults: readonly string[];
  /** Files that are not built, as the author knows them. */
  readonly refused: readonly string[];
  readonly schemas: Readonly<Record<string, object>>;
}

/**
 * Read every project under a folder and work out its plan. Bad files give fault lines, not errors.
 * `address` is where the site will stand on the web, if anywhere; `cache` holds what earlier builds
 * have worked out.
 */
export function openSite(
  content = "content",
  stages: Stages = realStages,
  address: string | null = siteAddress(),
  cache: PlanCache = noCache,
): Site {
  return openContent(readContent(content, stages), stages, { address, cache });
}

/** Work out the plans of a folder that has been read. */
export function openContent(content: Content, stages: Stages, options: OpenOptions): Site {
  const tried = content.projects.map((project) => openProject(project, stages, options));
  const opened = tried.filter((each) => "plan" in each);
  const broken = tried.filter((each) => "message" in each);
  const geometry = opened.flatMap(({ project, plan }) =>
    plan.faults.map((fault): FileFault => placeFault(project, fault)),
  );
  const faults: readonly FileFault[] = [...content.faults, ...geometry, ...broken];
  const refused = new Set(faults.map(({ file }) => file));
  return {
    booklets: opened.filter(({ project }) => !refused.has(project.file)),
    faults: [...new Set(faults.map(({ message }) => message))],
    refused: [...refused],
    schemas: { project: stages.projectSchema() },
  };
}
