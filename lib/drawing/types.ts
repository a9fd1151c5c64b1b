import type { Mm, Point } from "../plane/types.ts";

/** Takes real millimetres (y up) to millimetres on the paper (y down). */
export type ToPaper = (point: Point) => Point;

/** One thing on the paper. A mark knows shapes, never projects or pages. */
export type Mark = (toPaper: ToPaper) => string;

/** What a line tells the maker. CSS gives each role its look. */
export type LineRole = "stock" | "cut" | "seam" | "fold" | "measure" | "motion" | "ghost";

/** A finished drawing. */
export interface Figure {
  /** As the author names it: `solid/pad`, `panel/P1`, `lay/leaf-print`, `slab/seat-foam/1`. */
  readonly id: string;
  readonly title: string;
  /** A whole `<svg>` with width, height, viewBox in mm, role, title and desc. */
  readonly svg: string;
  /** The same facts in words. */
  readonly alt: string;
  /** "Scale 1 : 10", or "Not to scale". */
  readonly scale: string;
  readonly width: Mm;
  readonly height: Mm;
  /** Labels that could not be placed clear of others or of the figure's edge; empty when all is well. */
  readonly collisions: readonly string[];
}
