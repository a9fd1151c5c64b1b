import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";

/** Kinds of file that Eleventy would run as code. @source our choice: content can run no code */
const codeFile =
  /\.11tydata\.[^.]+$|\.11ty\.[^.]+$|\.(?:js|cjs|mjs|jsx|ts|cts|mts|tsx|njk|liquid|html?)$/i;

/** Every file under the content folder that could run code. */
export const codeFiles = (content: string): readonly string[] =>
  listFiles(content).filter((file) => codeFile.test(file));

/** The same as a fault line each. */
export const guardContent = (content: string): readonly string[] =>
  codeFiles(content).map(
    (file) =>
      `${displayPath(file)}: is program code. Content can run none: move it to lib or delete it.`,
  );

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
