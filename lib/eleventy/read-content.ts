import { readFileSync } from "node:fs";
import { checkContentFiles } from "../project/check-content-files.ts";
import { isProjectFile } from "../project/is-project-file.ts";
import { isStockFile } from "../project/is-stock-file.ts";
import type { Project } from "../project/types.ts";
import { displayPath, listFiles } from "./list-files.ts";
import type { FileFault, Stages } from "./stages.ts";

/** A content folder as it was read: the projects worth working out, and what is wrong with the rest. */
export interface Content {
  /** Those of files without a fault, variants too. */
  readonly projects: readonly Project[];
  readonly faults: readonly FileFault[];
}

/** Read every project under a folder. Bad files give faults, not errors. */
export function readContent(folder: string, stages: Stages): Content {
  const paths = listFiles(folder).map(displayPath);
  const stray = checkContentFiles(paths);
  const sources = paths
    .filter((path) => isProjectFile(path) || isStockFile(path))
    .map((file) => ({ file, text: readFileSync(file, "utf8") }));
  const read = stages.readProjects(sources);
  const unread = new Set(read.faults.map(({ file }) => file));
  return {
    projects: read.projects.filter(({ file }) => !unread.has(file)),
    faults: [...stray, ...read.faults],
  };
}
