import type { Figure } from "../drawing/types.ts";
import type { Mm } from "../plane/types.ts";
import type { Step } from "../steps/types.ts";
import { drawClear, pageRoom } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { StepText } from "./pages.ts";

/**
 * Room beside the words of a step; the tall ones only beside words as tall.
 * @source our choice: leaves 50 characters a line on A4 and Letter
 */
const besideRooms: readonly FigureRoom[] = [
  { width: 60, height: 34 },
  { width: 72, height: 40 },
  { width: 72, height: 55 },
];
const tallRooms: readonly FigureRoom[] = [
  { width: 72, height: 72 },
  { width: 72, height: 90 },
];
/** Room beside the words of a step of few actions. */
const wideRooms: readonly FigureRoom[] = [
  { width: 98, height: 45 },
  { width: 98, height: 60 },
];
/** Room below the words, so that words and figure share a page. */
const belowRooms: readonly FigureRoom[] = [
  { width: 165, height: 45 },
  { width: 165, height: 60 },
  { width: 165, height: 80 },
  { width: 165, height: 110 },
  { width: 165, height: 150 },
];

/** The drawing of a step in the least room in which its labels keep clear; none where no room will do. */
export function chooseStepFigure(
  step: Step,
  figures: FigureSource,
): Pick<StepText, "figure" | "arrangement"> {
  const id = step.figure;
  if (id === null || !figures.ids.includes(id)) return { figure: null, arrangement: "bare" };
  const words = actionsHeight(step, columnBeside(72));
  const rooms = [...besideRooms, ...tallRooms.filter(({ height }) => height <= words)];
  const beside = drawClear(figures, id, rooms, isLegible);
  const isShort = step.actions.length <= fewActions && step.notes.length === 0;
  const wide = isShort && beside === null ? drawClear(figures, id, wideRooms, isLegible) : null;
  const figure = wide ?? beside;
  if (figure !== null) {
    // Are the actions by themselves about as tall as the figure?
    const isTall = actionsHeight(step, columnBeside(figure.width)) >= figure.height * 0.8;
    const place = wide === null ? "beside" : "beside-wide";
    return { figure, arrangement: isShort && !isTall ? `${place}-all` : place };
  }
  const below = drawClear(figures, id, belowRooms, isLegible);
  if (below === null) return { figure: null, arrangement: "bare" };
  // A long list may run on to the next page: then the figure has to come before it.
  const isLong = step.actions.length > manyActions;
  return { figure: below, arrangement: isLong ? "above" : "below" };
}

/** What a figure of this width leaves for the words: the page's width less the gap of 6 mm. */
const columnBeside = (width: Mm): Mm => pageRoom.width - width - 6;

/** Height of the actions in a column, near enough to choose by. */
function actionsHeight({ actions }: Step, column: Mm): Mm {
  const perLine = Math.max(10, (column - indent) / character);
  return actions.reduce((sum, { length }) => sum + Math.ceil(length / perLine) * lineHeight, 0);
}

/** Mean width of a character and height of a line of the body text, 11 pt at 1.4. @source measured on a print */
const [character, lineHeight]: readonly [Mm, Mm] = [1.85, 5.4];
/** Room that the numbers of a list take. */
const indent: Mm = 5;

/** So few actions leave room beside the figure for the check too. @source our choice */
const fewActions = 5;

/** So many actions may not end on the page they begin on. @source our choice */
const manyActions = 12;

/** A piece drawn shorter than this shows nothing but its labels. @source our choice */
const isLegible = ({ drawn = Infinity }: Figure): boolean => drawn >= 20;
