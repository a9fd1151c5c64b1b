import type { Count, Degrees, Mm, Point } from "../plane/types.ts";

/** A strip to fill, as the open benchmark files give it: `stripWidth` across, length to be found. */
export interface LaySet {
  readonly name: string;
  readonly stripWidth: Mm;
  readonly items: readonly {
    readonly quantity: Count;
    readonly rotations: readonly Degrees[];
    readonly points: readonly Point[];
  }[];
  /** Best density known, in per cent, where the file gives it. */
  readonly bestKnown?: number;
}

/** A sheet to cut right across for most value; no demand means any number. */
export interface SheetSet {
  readonly name: string;
  readonly sheet: readonly [Mm, Mm];
  readonly items: readonly {
    readonly size: readonly [Mm, Mm];
    readonly value: number;
    readonly demand?: Count;
  }[];
  readonly optimum?: number;
}

/** Lengths to cut from boards of one length. */
export interface BoardSet {
  readonly name: string;
  readonly capacity: number;
  readonly sizes: readonly number[];
  readonly demand: readonly Count[];
  readonly lowerBound?: Count;
  readonly bestFound?: Count;
  readonly proven?: boolean;
}
