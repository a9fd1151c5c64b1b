import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";

/** All files under a folder in a stable order; none when the folder is missing. */
export function listFiles(folder: string): readonly string[] {
  try {
    return readdirSync(folder, { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile() || entry.isSymbolicLink())
      .map((entry) => join(entry.parentPath, entry.name))
      .toSorted();
  } catch {
    return [];
  }
}

/** A path as the author knows it: from where the command runs, with forward strokes. */
export const displayPath = (file: string): string =>
  relative(process.cwd(), file).split(sep).join("/");
