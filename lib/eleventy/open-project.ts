import { buildBooklet } from "../booklet/build-booklet.ts";
import type { FigureSource } from "../booklet/figure-source.ts";
import type { Booklet } from "../booklet/pages.ts";
import { choosePaper, otherPaper } from "../booklet/paper.ts";
import type { Plan } from "../booklet/types.ts";
import type { Figure } from "../drawing/types.ts";
import type { Project } from "../project/types.ts";
import { type PlanCache, asKept } from "./plan-cache.ts";
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

export interface OpenOptions {
  /** Where the site will stand on the web, if anywhere. */
  readonly address: string | null;
  /** What earlier builds, or other threads of this one, have worked out. */
  readonly cache: PlanCache;
}

/**
 * Work out one project and both its booklets, or take them from the cache. A project that the program
 * itself fails on is one fault line, so that the others are still built.
 */
export function openProject(
  project: Project,
  stages: Stages,
  options: OpenOptions,
): SiteBooklet | FileFault {
  try {
    return workOut(project, stages, options);
  } catch (error) {
    if (process.env["DEBUG"] !== undefined) console.error(error);
    const reason = error instanceof Error ? error.message : String(error);
    const { file, slug } = project;
    const help = "This is a fault of the program, not of the file: please report it with the file";
    return { file, message: `${file}: ${slug} could not be worked out: ${reason}. ${help}.` };
  }
}

function workOut(
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
