import type { Count } from "../plane/types.ts";
import { nearestWord } from "../units/nearest-word.ts";
import { dropFaulty } from "./drop-faulty.ts";
import { lineOf } from "./place-fault.ts";
import { ProjectError } from "./project-error.ts";
import type { LinedFault, Tree } from "./read-tree.ts";
import { readTree } from "./read-tree.ts";
import { readText } from "./read-text.ts";

import { type Shelf, resolveProject } from "./resolve-project.ts";
import type { RawProject } from "./schema.ts";
import { isSlug, slugOf } from "./slug-of.ts";
import type { SplitSource } from "./split-source.ts";
import { splitSource } from "./split-source.ts";
import type { Fault, Project, SourceFile } from "./types.ts";

export interface ReadProject {
  /** The project and each of its variants; none when there is any fault. */
  readonly projects: readonly Project[];
  /** Every fault of the file, by line. */
  readonly faults: readonly ProjectError[];
}

/** Read one project file, with the stock files it may name. Pure: the same texts give the same result. */
export function readProject({ file, text }: SourceFile, shelf: Shelf = new Map()): ReadProject {
  const split = splitSource(text);
  if ("fault" in split) {
    const { line, fault, fix } = split;
    return { projects: [], faults: [new ProjectError({ file, line, field: "file" }, fault, fix)] };
  }
  const tree = readTree(split.frontMatter, split.frontMatterLine);
  const form = tree.isSound ? readForm(tree, split, { file, shelf }) : readBrokenForm(tree, split);
  const faults = [...checkSlug(file), ...form.faults];
  if (faults.length > 0) return { projects: [], faults: inOrder(file, faults) };
  return { projects: form.projects, faults: [] };
}

interface FormResult {
  readonly projects: readonly Project[];
  readonly faults: readonly LinedFault[];
}

/** Broken YAML has no values, but the text below it can still be checked. */
function readBrokenForm(tree: Tree, { body, bodyLine }: SplitSource): FormResult {
  const words = readText(body, bodyLine, { units: "mm", round: 1 / 8, names: null });
  return { projects: [], faults: [...tree.faults, ...words.faults] };
}

function readForm(
  tree: Tree,
  { body, bodyLine }: SplitSource,
  { file, shelf }: { readonly file: string; readonly shelf: Shelf },
): FormResult {
  const { raw, faults: form, dropped } = dropFaulty(tree.value);
  const alreadyTold = (field: string) =>
    tree.faults.some((told) => told.field === field || told.field.startsWith(`${field}.`));
  const at = (fault: Fault): LinedFault => ({ ...fault, line: lineOf(tree.lines, fault.field) });
  const told = [
    ...tree.faults,
    ...form
      .filter(({ field }) => !alreadyTold(field))
      .map(({ field, fault, fix }) => at({ field, fault, fix })),
  ];
  if (raw === null) return { projects: [], faults: told };
  const gone = new Set([...dropped, ...tree.faults.map(({ field }) => field)]);
  const setting = { slug: slugOf(file), file, lines: tree.lines, dropped: gone, shelf };
  const read = (variant: string | null) => {
    const { project, names, faults } = resolveProject(raw, { ...setting, variant });
    const words = readText(body, bodyLine, { ...project, names });
    return { project: { ...project, words: words.words }, faults, words: words.faults };
  };
  const base = read(null);
  const bad = [...told, ...base.faults.map(at), ...base.words, ...checkVariants(raw).map(at)];
  const variants = Object.keys(raw.variants ?? {}).map((name) => ({ name, ...read(name) }));
  if (bad.length > 0) return { projects: [], faults: bad };
  return {
    projects: [base.project, ...variants.map(({ project }) => project)],
    faults: variants.flatMap(({ name, faults, words }) => [
      ...faults.map((fault) => at(inVariant(name, fault))),
      ...words.map((fault) => at(inVariant(name, fault))),
    ]),
  };
}

/** A fault that only a variant has is told at the variant. */
function inVariant(name: string, { field, fault, fix }: Fault): Fault {
  return { field: `variants.${name}`, fault: `does not go with ${field}: ${fault}`, fix };
}

function checkVariants(raw: RawProject): readonly Fault[] {
  const known = Object.keys(raw.dimensions ?? {});
  return Object.entries(raw.variants ?? {}).flatMap(([variant, sizes]) =>
    Object.keys(sizes)
      .filter((name) => !known.includes(name))
      .map((name) => {
        const nearest = nearestWord(name, known);
        const fix =
          nearest === null
            ? "Use a name listed in dimensions"
            : `Write ${nearest} if that was meant`;
        return {
          field: `variants.${variant}.${name}`,
          fault: "is not a name listed in dimensions",
          fix,
        };
      }),
  );
}

function checkSlug(file: string): readonly LinedFault[] {
  if (isSlug(slugOf(file))) return [];
  const fix = "Use small letters, digits and single hyphens, such as bay-pad.md";
  return [{ line: 1, field: "file", fault: "has a name that cannot be an address", fix }];
}

/** By line, each said once. */
function inOrder(file: string, faults: readonly LinedFault[]): readonly ProjectError[] {
  const seen = new Set<string>();
  return faults
    .map(({ line, field, fault, fix }) => new ProjectError({ file, line, field }, fault, fix))
    .filter(({ message }) => !seen.has(message) && seen.add(message))
    .sort((a: { readonly line: Count }, b: { readonly line: Count }) => a.line - b.line);
}
