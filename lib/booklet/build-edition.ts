import type { Figure } from "../drawing/types.ts";
import type { Mm, Ratio } from "../plane/types.ts";
import type { Step } from "../steps/types.ts";
import { buildBooklet } from "./build-booklet.ts";
import { buildHandout } from "./build-handout.ts";
import { editions, textWidth } from "./editions.ts";
import type { Edition, EditionName } from "./editions.ts";
import { drawClear, pageRoom } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import { fitFigures } from "./fit-figures.ts";
import type { FigureFit } from "./fit-figures.ts";
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
      const narrow = narrowed(edition, page);
      const booklet = buildBooklet(plan, fitFigures(figures, narrow), options);
      const room = { width: narrow.room(pageRoom).width, height: coverHeight.folded };
      const pages = redrawCover(booklet.pages, figures, { magnify: 1, room: () => room });
      return { ...booklet, edition: name, pages: pages.map(narrowSteps) };
    }
    case "large-print": {
      const large = fitFigures(underHeads(oneByOne(figures), edition.magnify), {
        magnify: edition.magnify,
        room: tallRoom,
        taller: wholePage,
      });
      const booklet = buildBooklet(plan, large, options);
      const full = { magnify: edition.magnify, room: (asked: FigureRoom) => asked };
      const sources: LargeSources = [
        fitFigures(figures, { ...full, least: edition.magnify }),
        large,
      ];
      const room = { width: pageRoom.width, height: coverHeight.large };
      const covered = redrawCover(booklet.pages, figures, { ...full, room: () => room });
      const pages = covered.map((each) => putBelow(each, plan.steps, sources));
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

/** What title and facts leave for the drawing of a cover. @source our choice: three lines of title, six facts */
const coverHeight = { folded: 55, large: 72 };

/** The cover's drawing made for its room: one shrunk to fit would have its labels shrunk as well. */
const redrawCover = (
  pages: readonly PlacedPage[],
  figures: FigureSource,
  fit: FigureFit,
): readonly PlacedPage[] =>
  pages.map((page) =>
    page.kind === "cover" && page.figure !== null
      ? { ...page, figure: fitFigures(figures, fit).draw(page.figure.id) }
      : page,
  );

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
    step.arrangement.startsWith("beside-wide") ? { ...step, arrangement: "below" } : step;
  if (page.kind === "steps") return { ...page, steps: page.steps.map(narrow) };
  return page.kind === "lesson" ? { ...page, steps: page.steps.map(narrow) } : page;
}

/**
 * A figure of large print takes the width of the page, for nothing stands beside it, and twice the height
 * asked for, so that its labels have room; the tallest still shares a page with the facts over it.
 */
const tallest = 150;
const tallRoom = ({ height }: FigureRoom): FigureRoom => ({
  width: pageRoom.width,
  height: Math.max(Math.min(height, tallest), Math.min(tallest, height * 2)),
});

/** Heights for a drawing that needs a page of its own, on Letter too, so that its labels keep their size. */
const wholePage: readonly Mm[] = [175, 198];

/** Tallest drawing of a piece that shares its page with the heading, the sizes and two warnings. */
const tallestPiece: Mm = 125;

/** Drawings to be magnified so much, those of pieces no taller than their heading leaves room for. */
const underHeads = ({ ids, draw }: FigureSource, by: Ratio): FigureSource => ({
  ids,
  draw: (id, asked = pageRoom) => {
    const height = id.startsWith("panel/")
      ? Math.min(asked.height, tallestPiece / by)
      : asked.height;
    return draw(id, { width: asked.width, height });
  },
});

/** Boards one by one: all on one drawing would leave no room for large labels. */
const oneByOne = ({ ids, draw }: FigureSource): FigureSource => ({
  ids: ids.filter((id) => !/^board\/[^/]+$/.test(id)),
  draw,
});

/** A source that magnifies labels in full or not at all, and one that may do with less. */
type LargeSources = readonly [FigureSource, FigureSource];

/** Large words leave no room beside a figure: it goes below them, as large as its labels need it. */
function putBelow(page: PlacedPage, steps: readonly Step[], sources: LargeSources): PlacedPage {
  if (page.kind !== "steps") return page;
  return {
    ...page,
    steps: page.steps.map((text): StepText => {
      const asked = steps[text.number - 1]?.figure ?? null;
      const figure = drawBelow(asked, sources) ?? text.figure;
      return { ...text, figure, arrangement: figure === null ? "bare" : "below" };
    }),
  };
}

const belowRooms: readonly FigureRoom[] = [60, 75, 100, 125, tallest, ...wholePage].map(
  (height) => ({
    width: pageRoom.width,
    height,
  }),
);
/** A large drawing whose thing is smaller than this shows nothing but its labels. @source our choice */
const leastDrawn = 32;

/** The first clear drawing: labels in full and the thing large, labels in full, then labels as they come. */
function drawBelow(id: string | null, [full, lenient]: LargeSources): Figure | null {
  if (id === null || id.startsWith("lay/") || !full.ids.includes(id)) return null;
  const isLarge = ({ drawn = Infinity }: Figure): boolean => drawn >= leastDrawn;
  return (
    drawClear(full, id, belowRooms, isLarge) ??
    drawClear(full, id, belowRooms) ??
    drawClear(lenient, id, belowRooms, isLarge)
  );
}
