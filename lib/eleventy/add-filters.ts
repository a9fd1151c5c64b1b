import type { FilterContext, UserConfig } from "@11ty/eleventy";
import nunjucks from "nunjucks";
import { buildCard } from "../booklet/build-card.ts";
import { editions } from "../booklet/editions.ts";
import type { EditionName } from "../booklet/editions.ts";
import { makeFormat } from "../units/make-format.ts";
import type { Booklet } from "../booklet/pages.ts";
import type { PaperName } from "../booklet/paper.ts";
import { patternSheets } from "../booklet/pattern-sheets.ts";
import type { PatternOptions } from "../booklet/pattern-sheets.ts";
import { writePlanJson } from "../booklet/plan-json.ts";
import type { Plan } from "../booklet/types.ts";
import type { Figure } from "../drawing/types.ts";
import type { Project } from "../project/types.ts";
import { editionOf } from "./edition-of.ts";
import { embedFigure } from "./embed-figure.ts";
import type { SiteBooklet } from "./open-site.ts";
import { readShared } from "./read-shared.ts";
import { renderMarkdown } from "./render-markdown.ts";
import { setType } from "./type-set.ts";

const safe = (html: string): unknown => new nunjucks.runtime.SafeString(html);

/** All booklets by slug. A map, because Eleventy would copy a plain object for every page. */
export type Shelf = ReadonlyMap<string, SiteBooklet>;

/**
 * Filters for the layouts. Each is a thin name over a function of lib; none computes a plan. They find
 * the booklet on the page's own data, so that a layout kept from an earlier build shows nothing old.
 */
export function addFilters(eleventy: UserConfig): void {
  eleventy.addFilter("plan", function (project: Project) {
    return onShelf(this, project).plan;
  });
  eleventy.addFilter("booklet", function (plan: Plan, paper?: PaperName, edition?: EditionName) {
    return editionOf(onShelf(this, plan.project), edition, paper);
  });
  eleventy.addFilter("card", (plan: Plan, booklet: Booklet) => buildCard(plan, booklet));
  eleventy.addFilter("editionForm", (name: EditionName) => editions[name]);
  eleventy.addFilter("pages", function (plan: Plan) {
    return onShelf(this, plan.project).booklet.pages;
  });
  eleventy.addFilter("figure", function (plan: Plan, id: string) {
    return onShelf(this, plan.project).figures.draw(id);
  });
  eleventy.addFilter("patterns", (plan: Plan, paper: PaperName, options: PatternOptions) =>
    patternSheets(plan, paper, options),
  );
  eleventy.addFilter("planJson", (plan: Plan) => safe(writePlanJson(plan)));
  eleventy.addFilter("length", function (value: number | readonly unknown[] | string) {
    if (typeof value !== "number") return value.length;
    return safe(setType(makeFormat(this.ctx["project"] as Project).length(value)));
  });
  eleventy.addFilter("type", (text: string) => safe(setType(text)));
  eleventy.addFilter("markdown", (text: string) => safe(renderMarkdown(text)));
  eleventy.addFilter("svg", (figure: Figure, place: string) => safe(embedFigure(figure, place)));
  eleventy.addFilter("drawn", (svg: string) => safe(svg));
  eleventy.addFilter("inlined", (file: string) => safe(readShared(file)));
  eleventy.addFilter("json", (value: unknown) => safe(JSON.stringify(value, null, 1)));
}

function onShelf({ ctx }: FilterContext, { slug }: Project): SiteBooklet {
  const found = (ctx["shelf"] as Shelf).get(slug);
  if (found === undefined) throw new Error(`there is no booklet called ${slug}`);
  return found;
}
