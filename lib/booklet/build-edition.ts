import type { Step } from "../steps/types.ts";
import { buildBooklet } from "./build-booklet.ts";
import { buildHandout } from "./build-handout.ts";
import { editions, textWidth } from "./editions.ts";
import type { Edition, EditionName } from "./editions.ts";
import { drawClear, pageRoom } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import { fitFigures } from "./fit-figures.ts";
import type { Booklet, PlacedPage, StepText } from "./pages.ts";
import { choosePaper } from "./paper.ts";
import type { Paper } from "./paper.ts";
import type { Plan } from "./types.ts";

export interface EditionOptions {
  /** Paper in the printer; the project's own unless given. */
  readonly paper?: Paper;
  readonly address?: string | null;
}

/** One edition of a booklet: the same plan, in other sizes or as other pages. */
export function buildEdition(
  plan: Plan,
  figures: FigureSource,
  name: EditionName,
  { paper = choosePaper(plan.project), address = null }: EditionOptions = {},
): Booklet {
  const edition = editions[name];
  const page = edition.page(paper);
  const options = { paper: page, address };
  switch (name) {
    case "booklet":
      return buildBooklet(plan, figures, options);
    case "folded": {
      const booklet = buildBooklet(plan, fitFigures(figures, narrowed(edition, page)), options);
      return { ...booklet, edition: name, pages: booklet.pages.map(narrowSteps) };
    }
    case "large-print": {
      const large = fitFigures(figures, { magnify: edition.magnify, room: tallRoom });
      const booklet = buildBooklet(plan, large, options);
      const pages = booklet.pages.map((each) => putBelow(each, plan.steps, large));
      return { ...booklet, edition: name, pages };
    }
    case "handout":
    case "answers": {
      const larger = fitFigures(figures, { magnify: edition.magnify, room: (asked) => asked });
      const handout = buildHandout(plan, larger, { paper: page, hasAnswers: name === "answers" });
      return { ...handout, pages: handout.pages.map(narrowSteps) };
    }
  }
}

/** All room shrinks with the width of the page. */
function narrowed({ magnify, margins }: Edition, page: Paper) {
  const by = textWidth(page, margins) / pageRoom.width;
  return {
    magnify,
    room: ({ width, height }: FigureRoom): FigureRoom => ({
      width: width * by,
      height: height * by,
    }),
  };
}

/** Where words are large or the page small, a wide figure leaves no room for words beside it. */
function narrowSteps(page: PlacedPage): PlacedPage {
  const narrow = <T extends StepText>(step: T): T =>
    step.arrangement === "beside-wide" ? { ...step, arrangement: "below" } : step;
  if (page.kind === "steps") return { ...page, steps: page.steps.map(narrow) };
  return page.kind === "lesson" ? { ...page, steps: page.steps.map(narrow) } : page;
}

/** A figure of large print may take most of a page, for its labels need the room. */
const tallest = 200;
const tallRoom = ({ width, height }: FigureRoom): FigureRoom => ({
  width,
  height: Math.max(height, Math.min(tallest, height * 2)),
});

/** Large words leave no room beside a figure: it goes below them, as large as it needs to be. */
function putBelow(page: PlacedPage, steps: readonly Step[], figures: FigureSource): PlacedPage {
  if (page.kind !== "steps") return page;
  return {
    ...page,
    steps: page.steps.map((text): StepText => {
      const asked = steps[text.number - 1]?.figure ?? null;
      const figure = text.figure ?? drawBelow(asked, figures);
      return { ...text, figure, arrangement: figure === null ? "bare" : "below" };
    }),
  };
}

const belowRooms: readonly FigureRoom[] = [45, 60, 75, 100].map((height) => ({
  width: pageRoom.width,
  height,
}));

const drawBelow = (id: string | null, figures: FigureSource) =>
  id === null || id.startsWith("lay/") || !figures.ids.includes(id)
    ? null
    : drawClear(figures, id, belowRooms);
