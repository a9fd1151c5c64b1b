import type { Count, Degrees, Mm, Mm2, Point, Polygon } from "../plane/types.ts";

/** One way a piece may lie: its outline already turned and flipped, lowest-left bound at the origin. */
export interface StripForm {
  readonly polygon: Polygon;
  /** The outline split into convex parts. */
  readonly parts: readonly Polygon[];
  readonly width: Mm;
  readonly height: Mm;
  readonly turn: Degrees;
  readonly isFlipped: boolean;
  /** What it was turned and flipped from, and where the origin of that lies now. */
  readonly outline: Polygon;
  readonly origin: Point;
}

/** One piece to lay. `forms` are places in the job's list of forms. */
export interface StripItem {
  readonly forms: readonly Count[];
  readonly area: Mm2;
  /** Where the piece may start: multiples of these across and along, 0 for anywhere. */
  readonly stepX: Mm;
  readonly stepY: Mm;
  /** How far past a multiple it starts, across and along, where the print has to meet; 0 if left out. */
  readonly startX?: Mm;
  readonly startY?: Mm;
}

/** Lay items on a strip of one width, x from 0 to `width`, y from 0 up, as short as possible. */
export interface StripJob {
  readonly width: Mm;
  readonly forms: readonly StripForm[];
  readonly items: readonly StripItem[];
  /** Heights that no piece may lie across, such as the end of the length on hand. */
  readonly walls: readonly Mm[];
}

/** Where one item lies: its form, and the lowest-left corner of the form's bounds. */
export interface StripPlace {
  readonly form: Count;
  readonly x: Mm;
  readonly y: Mm;
}

/** A finished strip: one place for each item of the job, in the same order. */
export interface Strip {
  readonly places: readonly StripPlace[];
  readonly length: Mm;
}
