import type { UserConfig } from "@11ty/eleventy";
import nunjucks from "nunjucks";
import { makeFormat } from "../booklet/make-format.ts";
import type { PaperName } from "../booklet/paper.ts";
import { patternSheets } from "../booklet/pattern-sheets.ts";
import { planJson } from "../booklet/plan-json.ts";
import type { Plan } from "../booklet/types.ts";
import type { Figure } from "../drawing/types.ts";
import type { Project } from "../project/types.ts";
import { embedFigure } from "./embed-figure.ts";
import type { Site, SiteBooklet } from "./open-site.ts";
import { readShared } from "./read-shared.ts";
import { renderMarkdown } from "./render-markdown.ts";
import { setType } from "./type-set.ts";

const safe = (html: string): unknown => new nunjucks.runtime.SafeString(html);

/** Filters for the layouts. Each is a thin name over a function of lib; none computes a plan. */
export function addFilters(eleventy: UserConfig, site: Site): void {
  const ofSlug = (slug: string): SiteBooklet => {
    const found = site.booklets.find((each) => each.slug === slug);
    if (found === undefined) throw new Error(`there is no booklet called ${slug}`);
    return found;
  };
  const ofPlan = (plan: Plan): SiteBooklet => ofSlug(plan.project.slug);

  eleventy.addFilter("plan", (project: Project) => ofSlug(project.slug).plan);
  eleventy.addFilter("booklet", (plan: Plan, paper?: PaperName) => bookletIn(ofPlan(plan), paper));
  eleventy.addFilter("pages", (plan: Plan) => ofPlan(plan).booklet.pages);
  eleventy.addFilter("figure", (plan: Plan, id: string) => ofPlan(plan).figures.draw(id));
  eleventy.addFilter("patterns", (plan: Plan, paper: PaperName) => patternSheets(plan, paper));
  eleventy.addFilter("planJson", (plan: Plan) => safe(JSON.stringify(planJson(plan), null, 1)));
  eleventy.addFilter("length", function (value: number | readonly unknown[] | string) {
    if (typeof value !== "number") return value.length;
    return safe(setType(makeFormat(this.ctx["project"] as Project).length(value)));
  });
  eleventy.addFilter("type", (text: string) => safe(setType(text)));
  eleventy.addFilter("markdown", (text: string) => safe(renderMarkdown(text)));
  eleventy.addFilter("svg", (figure: Figure, place: string) => safe(embedFigure(figure, place)));
  eleventy.addFilter("inlined", (file: string) => safe(readShared(file)));
  eleventy.addFilter("json", (value: unknown) => safe(JSON.stringify(value, null, 1)));
}

const bookletIn = ({ booklet, otherBooklet }: SiteBooklet, paper?: PaperName) =>
  paper === undefined || paper === booklet.paper.name ? booklet : otherBooklet;
