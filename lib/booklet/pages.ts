import type { Figure } from "../drawing/types.ts";
import type { Unit } from "../project/types.ts";
import type { EditionName } from "./editions.ts";
import type {
  ContentsLine,
  CutSheet,
  Fact,
  LessonStep,
  Notice,
  ServePart,
  Source,
  StepText,
  Table,
  Task,
  WalkText,
  WordsPart,
} from "./page-parts.ts";
import type { Paper } from "./paper.ts";

export type * from "./page-parts.ts";

/** A finished booklet: pages as plain data. Every number in it is already text. */
export interface Booklet {
  readonly slug: string;
  readonly edition: EditionName;
  readonly title: string;
  readonly summary: string | null;
  readonly author: string | null;
  readonly licence: string | null;
  readonly language: string;
  readonly units: Unit;
  readonly paper: Paper;
  readonly pages: readonly PlacedPage[];
}

/** A page in its place: whether it begins on a fresh sheet or runs on below the page before it. */
export type PlacedPage = BookletPage & { readonly startsSheet: boolean };

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
  | ServePage
  | RiskPage
  | WordsPage
  | RecordPage
  | SourcesPage
  | BriefPage
  | WorksheetPage
  | LessonPage;

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
  /** The booklet's page on the web, and an `<svg>` of its code; null where no address is set. */
  readonly link: { readonly address: string; readonly code: string } | null;
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
  /** Null without a cut plan. */
  readonly use: Table | null;
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
  /** Null where the walk names every edge already. */
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
  /** Every panel and block by itself. */
  readonly sizes: Table | null;
  readonly facts: readonly Fact[];
  readonly care: readonly string[];
  readonly remedies: Table | null;
}

/** Size for the sitter and balance: the figures that the findings rest on. */
export interface ServePage extends PageBase {
  readonly kind: "serve";
  readonly parts: readonly ServePart[];
}

/** A risk assessment to be completed for a room: rows from the steps, the rest left blank. */
export interface RiskPage extends PageBase {
  readonly kind: "risk";
  readonly facts: readonly Fact[];
  readonly table: Table;
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

/** Where the findings and cautions come from, in full, by the numbers that stand beside them. */
export interface SourcesPage extends PageBase {
  readonly kind: "sources";
  readonly sources: readonly Source[];
}

/** First page of a handout: what is made, and from what. */
export interface BriefPage extends PageBase {
  readonly kind: "brief";
  readonly summary: string | null;
  readonly figure: Figure | null;
  readonly sizes: readonly Fact[];
  readonly table: Table | null;
  readonly tools: readonly string[];
  readonly notices: readonly Notice[];
}

/** Sizes for pupils to work out. */
export interface WorksheetPage extends PageBase {
  readonly kind: "worksheet";
  readonly tasks: readonly Task[];
}

/** The steps of one part of the work, with boxes to tick. */
export interface LessonPage extends PageBase {
  readonly kind: "lesson";
  readonly steps: readonly LessonStep[];
}
