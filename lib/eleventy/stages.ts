import type { FigureSource } from "../booklet/figure-source.ts";
import type { Plan } from "../booklet/types.ts";
import type { Project, SourceFile } from "../project/types.ts";

/** What reading project files gives: the projects of good files (variants too), and every fault. */
export interface ReadFiles {
  readonly projects: readonly Project[];
  readonly faults: readonly FileFault[];
}

export interface FileFault {
  readonly file: string;
  /** One line that ends with how to mend it. */
  readonly message: string;
}

/** The stages that a site is built with. Tests put their own in their place. */
export interface Stages {
  readonly readProjects: (files: readonly SourceFile[]) => ReadFiles;
  readonly computePlan: (project: Project) => Plan;
  readonly figuresOf: (plan: Plan) => FigureSource;
  /** JSON Schema of the front matter. */
  readonly projectSchema: () => object;
}
