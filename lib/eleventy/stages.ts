import type { FigureSource } from "../booklet/figure-source.ts";
import type { Plan } from "../booklet/types.ts";
import type { Project } from "../project/types.ts";

/** What reading one project file gives: the projects in it (variants too) or its faults, a line each. */
export interface ReadFile {
  readonly projects: readonly Project[];
  readonly faults: readonly string[];
}

/** The stages that a site is built with. Tests put their own in their place. */
export interface Stages {
  readonly readProjects: (text: string, file: string) => ReadFile | Promise<ReadFile>;
  readonly computePlan: (project: Project) => Plan | Promise<Plan>;
  readonly figuresOf: (plan: Plan) => FigureSource;
  /** JSON Schema of the front matter. */
  readonly projectSchema: () => object;
}
