import { lineOf } from "./place-fault.ts";
import { ProjectError } from "./project-error.ts";
import { readProject } from "./read-project.ts";
import type { ReadProject } from "./read-project.ts";
import { isStockFile, stockFileName } from "./is-stock-file.ts";
import { readStockFile } from "./read-stock-file.ts";
import type { Shelf } from "./resolve-project.ts";
import type { Project, SourceFile } from "./types.ts";

/**
 * Read every project file, and the stock files they name. All faults of all files come back together, file by file; the projects of
 * the files without faults come back beside them.
 */
export function readProjects(files: readonly SourceFile[]): ReadProject {
  const stocked = files
    .filter(({ file }) => isStockFile(file))
    .map((file) => ({ name: stockFileName(file.file), ...readStockFile(file) }));
  const shelf: Shelf = new Map(stocked.map(({ name, stock }) => [name, stock]));
  const read = files
    .filter(({ file }) => !isStockFile(file))
    .map((file) => readProject(file, shelf));
  const taken = new Map<string, Project>();
  const projects: Project[] = [];
  const twice: ProjectError[] = [];
  for (const project of read.flatMap((each) => each.projects)) {
    const before = taken.get(project.slug);
    if (before === undefined) {
      taken.set(project.slug, project);
      projects.push(project);
      continue;
    }
    const field = project.variant === null ? "title" : `variants.${project.variant}`;
    const at = { file: project.file, line: lineOf(project.lines, field), field };
    const fault = `builds the booklet ${project.slug}, which ${before.file} builds too`;
    twice.push(new ProjectError(at, fault, "Rename the file or the variant"));
  }
  const faults = [...stocked, ...read].flatMap((each) => each.faults);
  return { projects, faults: [...faults, ...twice] };
}
