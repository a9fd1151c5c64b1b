import type { Project } from "../project/types.ts";

/** The author's words for a loose piece, or the id with its strokes opened. */
export function partLabel(part: string, project: Project): string {
  return project.pieces.find(({ id }) => id === part)?.label ?? part.replaceAll("/", " ");
}
