import type { Figure } from "../drawing/types.ts";
import type { Booklet, Fact } from "./pages.ts";
import { openHyphens } from "./open-hyphens.ts";
import type { Plan } from "./types.ts";

/** What the front page shows of one booklet. */
export interface Card {
  readonly slug: string;
  readonly title: string;
  /** The variant, where the title does not say it already. */
  readonly variant: string | null;
  readonly summary: string | null;
  readonly figure: Figure | null;
  readonly sizes: readonly Fact[];
  /** What it is made of, each once. */
  readonly materials: readonly string[];
  readonly work: readonly Work[];
}

export type Work = "foam" | "sewing" | "sheet" | "board";

/** Picture, sizes and materials of a booklet, for the list of all. */
export function buildCard({ project, materials, ...plan }: Plan, booklet: Booklet): Card {
  const cover = booklet.pages.find((page) => page.kind === "cover");
  const variant = project.variant === null ? null : openHyphens(project.variant);
  const isSaid = variant !== null && project.title.toLowerCase().includes(variant.toLowerCase());
  return {
    slug: project.slug,
    title: project.title,
    variant: isSaid ? null : variant,
    summary: project.summary,
    figure: cover?.figure ?? null,
    sizes: cover?.sizes ?? [],
    materials: [...new Set(materials.map(({ item }) => item))],
    work: [
      ...(plan.slabs.length > 0 ? (["foam"] as const) : []),
      ...(plan.lays.length > 0 ? (["sewing"] as const) : []),
      ...(plan.sheets.length > 0 ? (["sheet"] as const) : []),
      ...(plan.boards.length > 0 ? (["board"] as const) : []),
    ],
  };
}

/** Work the booklets of a shelf are sorted by, in words. */
export const workWords: Readonly<Record<Work, string>> = {
  foam: "Foam",
  sewing: "Cloth",
  sheet: "Sheet",
  board: "Boards",
};
