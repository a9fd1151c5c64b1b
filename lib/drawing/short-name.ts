import type { Piece } from "../seams/types.ts";

/** What a piece is called where there is little room: its panel, or its own words. */
export function shortName({ id, panel, label }: Piece): string {
  return panel === null ? label : id;
}
