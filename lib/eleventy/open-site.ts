import { readFileSync } from "node:fs";
import { buildBooklet } from "../booklet/build-booklet.ts";
import type { FigureSource } from "../booklet/figure-source.ts";
import type { Booklet } from "../booklet/pages.ts";
import { choosePaper, otherPaper } from "../booklet/paper.ts";
import type { Plan } from "../booklet/types.ts";
import { checkContentFiles } from "../project/check-content-files.ts";
import { isProjectFile } from "../project/is-project-file.ts";
import { isStockFile } from "../project/is-stock-file.ts";
import { placeFault } from "../project/place-fault.ts";
import type { Figure } from "../drawing/types.ts";
import type { Project } from "../project/types.ts";
import { displayPath, listFiles } from "./list-files.ts";
import { type PlanCache, asKept, noCache } from "./plan-cache.ts";
import { realStages } from "./real-stages.ts";
import { siteAddress } from "./site-address.ts";
import type { FileFault, Stages } from "./stages.ts";

/** One booklet with everything its pages print from, computed once. */
export interface SiteBooklet {
  readonly slug: string;
  readonly project: Project;
  readonly plan: Plan;
  readonly figures: FigureSource;
  /** Where the booklet's page will stand on the web, if anywhere. */
  readonly address: string | null;
  /** In the paper of the project's country or unit. */
  readonly booklet: Booklet;
  /** The same in the other everyday paper. */
  readonly otherBooklet: Booklet;
  /** Keep what has been drawn since for the next build. */
  readonly keep?: () => void;
}

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
  const paths = listFiles(content).map(displayPath);
  const stray = checkContentFiles(paths);
  const sources = paths
    .filter((path) => isProjectFile(path) || isStockFile(path))
    .map((file) => ({ file, text: readFileSync(file, "utf8") }));
  const read = stages.readProjects(sources);
  const unread = new Set(read.faults.map(({ file }) => file));
  const tried = read.projects
    .filter(({ file }) => !unread.has(file))
    .map((project) => tryProject(project, stages, { address, cache }));
  const opened = tried.filter((each) => "plan" in each);
  const broken = tried.filter((each) => "message" in each);
  const geometry = opened.flatMap(({ project, plan }) =>
    plan.faults.map((fault): FileFault => placeFault(project, fault)),
  );
  const faults: readonly FileFault[] = [...stray, ...read.faults, ...geometry, ...broken];
  const refused = new Set(faults.map(({ file }) => file));
  return {
    booklets: opened.filter(({ project }) => !refused.has(project.file)),
    faults: [...new Set(faults.map(({ message }) => message))],
    refused: [...refused],
    schemas: { project: stages.projectSchema() },
  };
}

interface OpenOptions {
  readonly address: string | null;
  readonly cache: PlanCache;
}

/** A project that the program itself fails on is one fault line, so that the others are still built. */
function tryProject(
  project: Project,
  stages: Stages,
  options: OpenOptions,
): SiteBooklet | FileFault {
  try {
    return openProject(project, stages, options);
  } catch (error) {
    if (process.env["DEBUG"] !== undefined) console.error(error);
    const reason = error instanceof Error ? error.message : String(error);
    const { file, slug } = project;
    const help = "This is a fault of the program, not of the file: please report it with the file";
    return { file, message: `${file}: ${slug} could not be worked out: ${reason}. ${help}.` };
  }
}

/** Work out one project and both its booklets, or take them from the cache. */
function openProject(
  project: Project,
  stages: Stages,
  { address: site, cache }: OpenOptions,
): SiteBooklet {
  const kept = cache.open(project);
  const plan = kept.plan ?? asKept(stages.computePlan(project));
  const drawn = new Map(kept.figures);
  const figures = remember(stages.figuresOf(plan), drawn);
  const paper = choosePaper(project);
  const address = site === null ? null : `${site}/${project.slug}/`;
  const booklet = buildBooklet(plan, figures, { paper, address });
  const otherBooklet = buildBooklet(plan, figures, { paper: otherPaper(paper), address });
  const keep = (): void => kept.keep(plan, drawn);
  keep();
  return { slug: project.slug, project, plan, figures, address, booklet, otherBooklet, keep };
}

/** Each figure is drawn once for its room, however many pages show it. */
function remember({ ids, draw }: FigureSource, drawn: Map<string, Figure>): FigureSource {
  return {
    ids,
    draw: (id, room) => {
      const key = `${id} ${room?.width} ${room?.height}`;
      const figure = drawn.get(key) ?? asKept(draw(id, room));
      drawn.set(key, figure);
      return figure;
    },
  };
}
