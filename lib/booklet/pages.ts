import type { Figure } from "../drawing/types.ts";
import type { Unit } from "../project/types.ts";
import type { Paper } from "./paper.ts";

/** A finished booklet: pages as plain data. Every number in it is already text. */
export interface Booklet {
  readonly slug: string;
  readonly title: string;
  readonly summary: string | null;
  readonly author: string | null;
  readonly licence: string | null;
  readonly language: string;
  readonly units: Unit;
  readonly paper: Paper;
  readonly pages: readonly BookletPage[];
}

export type BookletPage =
  | CoverPage
  | StartPage
  | MaterialsPage
  | FoamPage
  | WaysPage
  | PiecePage
  | LayPage
  | CutsPage
  | StepsPage
  | FinishPage
  | WordsPage
  | RecordPage;

interface PageBase {
  /** Unique in the booklet; links and the contents point at it. */
  readonly id: string;
  readonly title: string;
}

export interface CoverPage extends PageBase {
  readonly kind: "cover";
  readonly summary: string | null;
  readonly figure: Figure | null;
  readonly sizes: readonly Fact[];
  readonly facts: readonly Fact[];
}

/** What to read before anything else. */
export interface StartPage extends PageBase {
  readonly kind: "start";
  readonly contents: readonly ContentsLine[];
  readonly notices: readonly Notice[];
  readonly tools: readonly string[];
}

export interface MaterialsPage extends PageBase {
  readonly kind: "materials";
  readonly table: Table;
  readonly notes: readonly string[];
}

export interface FoamPage extends PageBase {
  readonly kind: "foam";
  readonly blocks: Table | null;
  readonly joints: Table | null;
  readonly figures: readonly Figure[];
  readonly cuts: readonly CutSheet[];
  readonly shortfalls: readonly Notice[];
}

export interface WaysPage extends PageBase {
  readonly kind: "ways";
  readonly intro: string;
  readonly table: Table | null;
  readonly reasons: readonly string[];
  readonly figures: readonly Figure[];
  /** A small drawing of each way that was compared. */
  readonly ways: readonly Figure[];
  readonly proof: string;
}

/** One panel of a cover, or one loose piece. */
export interface PiecePage extends PageBase {
  readonly kind: "piece";
  readonly letter: string;
  readonly facts: readonly Fact[];
  readonly warnings: readonly string[];
  readonly figure: Figure | null;
  readonly walk: WalkText;
  readonly edges: Table | null;
}

export interface LayPage extends PageBase {
  readonly kind: "lay";
  readonly facts: readonly Fact[];
  readonly figure: Figure | null;
  readonly table: Table;
  readonly shortfalls: readonly Notice[];
}

export interface CutsPage extends PageBase {
  readonly kind: "cuts";
  readonly facts: readonly Fact[];
  /** All of them in one drawing, where they are drawn so. */
  readonly figure: Figure | null;
  readonly cuts: readonly CutSheet[];
  readonly shortfalls: readonly Notice[];
}

export interface StepsPage extends PageBase {
  readonly kind: "steps";
  readonly steps: readonly StepText[];
}

export interface FinishPage extends PageBase {
  readonly kind: "finish";
  readonly fit: Table | null;
  readonly facts: readonly Fact[];
  readonly care: readonly string[];
  readonly remedies: Table | null;
}

export interface WordsPage extends PageBase {
  readonly kind: "words";
  readonly parts: readonly WordsPart[];
}

export interface RecordPage extends PageBase {
  readonly kind: "record";
  readonly notes: string | null;
  readonly photo: string | null;
  readonly sizes: Table | null;
  readonly facts: readonly Fact[];
}

// ---- What pages are made of --------------------------------------------------------------

/** A short label and its value. */
export interface Fact {
  readonly label: string;
  readonly value: string;
}

export interface ContentsLine {
  readonly title: string;
  readonly target: string;
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
  readonly words: string;
  /** Where the leg ends, measured from the start: across, then up. */
  readonly across: string;
  readonly up: string;
}

export interface StepText {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly uses: readonly string[];
  readonly makes: readonly string[];
  readonly cautions: readonly Notice[];
  readonly actions: readonly string[];
  readonly notes: readonly string[];
  readonly figure: Figure | null;
  /** A narrow figure stands beside the words, a wide one below them. */
  readonly arrangement: "beside" | "below" | "bare";
  readonly check: string | null;
  readonly remedy: string | null;
}

export type WordsPart =
  | { readonly kind: "prose" | "caution" | "tip"; readonly markdown: string }
  | { readonly kind: "figure"; readonly figure: Figure; readonly caption: string };
