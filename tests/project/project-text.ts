import { readFileSync } from "node:fs";
import { readProject } from "../../lib/project/read-project.ts";
import type { Project, SourceFile } from "../../lib/project/types.ts";

/** A fixture as the program would be given it. */
export function fixture(name: string): SourceFile {
  const text = readFileSync(new URL(`../fixtures/projects/${name}.md`, import.meta.url), "utf8");
  return { file: `content/${name}.md`, text };
}

/** A small sound project; each line can be swapped by its key, and lines added. */
const sound: Readonly<Record<string, string>> = {
  title: "Pad",
  units: "cm",
  dimensions: "{length: 120, depth: 42}",
  stock:
    "{foam: {kind: slab, size: [200, 60, 8]}, print: {kind: fabric, width: 140}, ply: {kind: sheet, size: [122, 61], thickness: 1.2}, lath: {kind: board, section: [3, 2], length: 240}, zip: {kind: zip, lengths: [40]}}",
  solids: "{pad: {foam: foam, blocks: {slab: {box: [length, depth, 8]}}, cover: {fabric: print}}}",
  pieces: "{strap: {stock: print, size: [24, 9]}}",
};

/** Text of the small project with some lines changed. `null` takes a line out. */
export function projectText(
  changes: Readonly<Record<string, string | null>> = {},
  body = "Words.",
): string {
  const lines = Object.entries({ ...sound, ...changes })
    .filter(([, value]) => value !== null)
    .map(([key, value]) => `${key}: ${value ?? ""}`);
  return ["---", ...lines, "---", body].join("\n");
}

/** Messages of every fault of a text. */
export function faultsOf(text: string, file = "content/pad.md"): readonly string[] {
  return readProject({ file, text }).faults.map(({ message }) => message);
}

/** The one sound project of a text, or its faults thrown at the test. */
export function projectOf(text: string, file = "content/pad.md"): Project {
  const { projects, faults } = readProject({ file, text });
  const [project] = projects;
  if (project === undefined) throw new Error(faults.map(({ message }) => message).join("\n"));
  return project;
}
