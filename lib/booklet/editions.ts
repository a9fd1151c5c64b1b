import type { Mm, Ratio } from "../plane/types.ts";
import { foldedPaper } from "./paper.ts";
import type { Paper } from "./paper.ts";

export type EditionName = "booklet" | "large-print" | "handout" | "answers" | "folded";

/** One way to print the same plan. */
export interface Edition {
  readonly name: EditionName;
  /** As it stands on a page and beside a link. */
  readonly label: string;
  /** The page it is laid out on, where the printer holds this paper. */
  readonly page: (paper: Paper) => Paper;
  readonly margins: Margins;
  /** How much larger its figures are printed than the booklet's. */
  readonly magnify: Ratio;
  /** Points that no letter may be smaller than; null where nobody asked. */
  readonly leastType: number | null;
}

export interface Margins {
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly left: Mm;
}

/** Labels of figures are 4 mm high: this many points. */
const labelPoints = (4 / 25.4) * 72;

const asIs = (paper: Paper): Paper => paper;
/** Room to punch and bind at the left. */
const bound: Margins = { top: 17, right: 20, bottom: 16, left: 25 };
/** The same, with a line for name and date over every page. */
const named: Margins = { ...bound, top: 28 };

/**
 * @source large print: UKAAF and the American Council of the Blind, 18 pt at least, labels and page
 * numbers too. Handout: UKAAF clear print and the British Dyslexia Association, 12 pt at least.
 */
export const editions: Readonly<Record<EditionName, Edition>> = {
  booklet: {
    name: "booklet",
    label: "Booklet",
    page: asIs,
    margins: bound,
    magnify: 1,
    leastType: null,
  },
  "large-print": {
    name: "large-print",
    label: "Large print",
    page: asIs,
    margins: { top: 26, right: 20, bottom: 24, left: 25 },
    magnify: 18.1 / labelPoints,
    leastType: 18,
  },
  handout: {
    name: "handout",
    label: "Handout",
    page: asIs,
    margins: named,
    magnify: 12.1 / labelPoints,
    leastType: 12,
  },
  answers: {
    name: "answers",
    label: "Handout with answers",
    page: asIs,
    margins: named,
    magnify: 12.1 / labelPoints,
    leastType: 12,
  },
  folded: {
    name: "folded",
    label: "Booklet to fold",
    page: foldedPaper,
    margins: { top: 16, right: 14, bottom: 15, left: 14 },
    magnify: 1,
    leastType: 8,
  },
};

export const editionNames = Object.keys(editions) as readonly EditionName[];

/** Room between the margins of a page. */
export const textWidth = ({ width }: Paper, { left, right }: Margins): Mm => width - left - right;
