import type { Figure } from "../drawing/types.ts";
import type { Step } from "../steps/types.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { StepText } from "./pages.ts";

/** Room beside the words of a step. @source our choice: leaves 50 characters a line on A4 and Letter */
const besideRooms: readonly FigureRoom[] = [
  { width: 72, height: 40 },
  { width: 72, height: 55 },
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
];

/** The drawing of a step in the least room in which its labels keep clear; none where no room will do. */
export function chooseStepFigure(
  step: Step,
  figures: FigureSource,
): Pick<StepText, "figure" | "arrangement"> {
  const id = step.figure;
  if (id === null || !figures.ids.includes(id)) return { figure: null, arrangement: "bare" };
  const beside = drawClear(figures, id, besideRooms, isLegible);
  const isShort = step.actions.length <= fewActions && step.notes.length === 0;
  const wide = isShort && beside === null ? drawClear(figures, id, wideRooms, isLegible) : null;
  if (wide !== null) return { figure: wide, arrangement: "beside-wide" };
  if (beside !== null) {
    return { figure: beside, arrangement: isShort ? "beside-all" : "beside" };
  }
  const below = drawClear(figures, id, belowRooms, isLegible);
  return { figure: below, arrangement: below === null ? "bare" : "below" };
}

/** So few actions leave room beside the figure for the check too. @source our choice */
const fewActions = 5;

/** A piece drawn shorter than this shows nothing but its labels. @source our choice */
const isLegible = ({ drawn = Infinity }: Figure): boolean => drawn >= 20;
