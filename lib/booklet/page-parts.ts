import type { Figure } from "../drawing/types.ts";

// What the pages in pages.ts are made of.

/** A short label and its value. */
export interface Fact {
  readonly label: string;
  readonly value: string;
}

export interface ContentsLine {
  readonly title: string;
  readonly target: string;
}

/** One source in full. `number` is what `[1]` beside a notice points at. */
export interface Source {
  readonly id: string;
  readonly number: number;
  readonly text: string;
}

/** One solid on the page that says whether it will serve. */
export interface ServePart {
  readonly title: string | null;
  readonly facts: readonly Fact[];
  readonly figure: Figure | null;
}

/** Rows are found again in print by their ids. */
export interface Table {
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export interface Column {
  readonly title: string;
  readonly isNumber: boolean;
  /** A second entry starts here in a list set two to a row. */
  readonly startsAgain?: boolean;
}

export interface Row {
  readonly id: string;
  readonly cells: readonly string[];
}

/** A boxed message: the word and the shape say how serious it is, colour is not needed. */
export interface Notice {
  readonly id: string;
  readonly severity: "danger" | "warning" | "caution" | "note";
  readonly signal: "DANGER" | "WARNING" | "CAUTION" | "NOTICE";
  readonly paragraphs: readonly string[];
  /** What differs, where several like messages were made one. */
  readonly items: readonly string[];
  /** One short line; the full source stands in the list at the end. */
  readonly source: string | null;
  /** A reminder of a message that stood in full before: one line, no box of its own. */
  readonly isReminder: boolean;
}

/** One slab, sheet or board with its cuts. */
export interface CutSheet {
  readonly id: string;
  readonly title: string;
  readonly figure: Figure | null;
  readonly cuts: Table | null;
  readonly parts: Table;
  readonly offcuts: Table | null;
}

/** How to draw an outline with rule and chalk. */
export interface WalkText {
  readonly intro: string;
  readonly legs: readonly WalkRow[];
  readonly checks: readonly string[];
}

export interface WalkRow {
  readonly id: string;
  /** Count of the leg; empty where a second edge lies along the same leg. */
  readonly leg: string;
  readonly words: string;
  /** Where the leg ends, measured from the start: across, then up. */
  readonly across: string;
  readonly up: string;
  /** The edge that is cut there; null where the leg only turns a corner or the piece has no edges. */
  readonly edge: EdgeText | null;
}

/** What happens along one edge of a piece. */
export interface EdgeText {
  readonly seam: string;
  readonly joins: string;
  readonly length: string;
  readonly allowance: string;
}

export interface StepText {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly uses: readonly Use[];
  readonly makes: readonly string[];
  /** Before the actions; what stood in full earlier is said again in one line. */
  readonly cautions: readonly Notice[];
  readonly actions: readonly string[];
  readonly notes: readonly string[];
  readonly figure: Figure | null;
  /** A narrow figure stands beside the actions or beside all the words, a wide one below them. */
  readonly arrangement:
    "beside" | "beside-all" | "beside-wide" | "beside-wide-all" | "below" | "above" | "bare";
  readonly check: string | null;
  readonly remedy: string | null;
}

/** A thing a step needs, and the page that shows it where there is one. */
export interface Use {
  readonly words: string;
  readonly target: string | null;
}

export type WordsPart =
  | { readonly kind: "prose" | "caution" | "tip"; readonly markdown: string }
  | { readonly kind: "figure"; readonly figure: Figure; readonly caption: string };

/** A size to work out, with room for the working. */
export interface Task {
  readonly id: string;
  readonly number: number;
  readonly about: string;
  /** What is given. */
  readonly lines: readonly string[];
  readonly ask: string;
  /** Null where the pupil writes it. */
  readonly answer: string | null;
}

export interface LessonStep extends StepText {
  /** Whether its check has a size, so that the pupil writes down what was measured. */
  readonly isMeasured: boolean;
}
