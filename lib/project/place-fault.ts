import type { Count } from "../plane/types.ts";
import { ProjectError } from "./project-error.ts";
import type { Fault, Project } from "./types.ts";

/** Line of a dotted field, or of the nearest thing it lies in; 1 when even that is not there. */
export function lineOf(lines: Readonly<Record<string, Count>>, field: string): Count {
  const parts = field.split(".");
  for (let length = parts.length; length > 0; length -= 1) {
    const path = parts.slice(0, length).join(".");
    if (Object.hasOwn(lines, path)) return lines[path] ?? 1;
  }
  return 1;
}

/**
 * Give a fault that was found later, such as one of geometry, its file and line. The field `words.3`
 * is the fourth part of the text.
 */
export function placeFault(project: Project, { field, fault, fix }: Fault): ProjectError {
  const { file, lines, words } = project;
  const part = /^words\.(\d+)/.exec(field)?.[1];
  const line = part === undefined ? lineOf(lines, field) : (words[Number(part)]?.line ?? 1);
  return new ProjectError({ file, line, field }, fault, fix);
}
