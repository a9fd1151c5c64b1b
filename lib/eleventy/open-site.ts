import { readFileSync } from "node:fs";
import { basename, resolve } from "node:path";
import { buildBooklet } from "../booklet/build-booklet.ts";
import type { FigureSource } from "../booklet/figure-source.ts";
import type { Booklet } from "../booklet/pages.ts";
import { choosePaper, otherPaper } from "../booklet/paper.ts";
import type { Plan } from "../booklet/types.ts";
import type { Project } from "../project/types.ts";
import { codeFiles, displayPath, guardContent, listFiles } from "./guard-content.ts";
import { realStages } from "./real-stages.ts";
import type { Stages } from "./stages.ts";

/** One booklet with everything its pages print from, computed once. */
export interface SiteBooklet {
  readonly slug: string;
  /** Source file; a variant shares it with the project it varies. */
  readonly file: string;
  readonly project: Project;
  readonly plan: Plan;
  readonly figures: FigureSource;
  /** In the paper of the project's country or unit. */
  readonly booklet: Booklet;
  /** The same in the other everyday paper. */
  readonly otherBooklet: Booklet;
}

/** A content folder, read, checked and computed. */
export interface Site {
  readonly booklets: readonly SiteBooklet[];
  /** One line for each fault of every file. */
  readonly faults: readonly string[];
  /** Files that are not built. */
  readonly refused: readonly string[];
  readonly schemas: Readonly<Record<string, object>>;
}

/** Read every project under a folder and work out its plan. Bad files give fault lines, not errors. */
export async function openSite(content = "content", stages: Stages = realStages): Promise<Site> {
  const faults: string[] = [...guardContent(content)];
  const refused: string[] = [...codeFiles(content)];
  const booklets: SiteBooklet[] = [];
  for (const file of projectFiles(content)) {
    const name = displayPath(file);
    const read = await stages.readProjects(readFileSync(file, "utf8"), name);
    const opened = read.faults.length > 0 ? [] : await openProjects(read.projects, file, stages);
    const own = [...read.faults, ...opened.flatMap(({ plan }) => geometryFaults(plan))];
    faults.push(...own);
    if (own.length > 0) refused.push(file);
    else booklets.push(...opened);
  }
  const clashes = clashingSlugs(booklets);
  return {
    booklets: booklets.filter(({ slug }) => !clashes.has(slug)),
    faults: [...faults, ...[...clashes].map((slug) => clashLine(slug, booklets))],
    refused: [
      ...refused,
      ...booklets.filter(({ slug }) => clashes.has(slug)).map(({ file }) => file),
    ],
    schemas: { project: stages.projectSchema() },
  };
}

/** Project files, in a stable order. A name that starts with `_` is left alone. */
export const projectFiles = (content: string): readonly string[] =>
  listFiles(resolve(content)).filter(
    (file) => file.endsWith(".md") && !basename(file).startsWith("_"),
  );

async function openProjects(
  projects: readonly Project[],
  file: string,
  stages: Stages,
): Promise<readonly SiteBooklet[]> {
  const opened: SiteBooklet[] = [];
  for (const project of projects) {
    const plan = await stages.computePlan(project);
    const figures = remember(stages.figuresOf(plan));
    const paper = choosePaper(project);
    opened.push({
      slug: project.slug,
      file,
      project,
      plan,
      figures,
      booklet: buildBooklet(plan, figures, { paper }),
      otherBooklet: buildBooklet(plan, figures, { paper: otherPaper(paper) }),
    });
  }
  return opened;
}

/** Each figure is drawn once, however many pages show it. */
function remember({ ids, draw }: FigureSource): FigureSource {
  const drawn = new Map<string, ReturnType<typeof draw>>();
  return {
    ids,
    draw: (id, room) => {
      const key = `${id} ${room?.width} ${room?.height}`;
      const figure = drawn.get(key) ?? draw(id, room);
      drawn.set(key, figure);
      return figure;
    },
  };
}

/** Faults that only geometry could find, with the line of their field. */
const geometryFaults = ({ faults, project }: Plan): readonly string[] =>
  faults.map(({ field, fault, fix }) => {
    const line = project.lines[field];
    return `${project.file}${line === undefined ? "" : `:${line}`} ${field}: ${fault}. ${fix}`;
  });

function clashingSlugs(booklets: readonly SiteBooklet[]): ReadonlySet<string> {
  const seen = new Set<string>();
  return new Set(
    booklets.map(({ slug }) => slug).filter((slug) => seen.has(slug) || !seen.add(slug)),
  );
}

function clashLine(slug: string, booklets: readonly SiteBooklet[]): string {
  const files = [
    ...new Set(booklets.filter((each) => each.slug === slug).map(({ file }) => displayPath(file))),
  ];
  return `${files.join(", ")}: more than one booklet is called ${slug}. Rename a file or a variant.`;
}
