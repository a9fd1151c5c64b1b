import { clothPieces } from "../drawing/cloth-pieces.ts";
import { sectionWords } from "../drawing/section-words.ts";
import { shortName } from "../drawing/short-name.ts";
import { sectionAt } from "../packing/section-at.ts";
import type { Lay, LayPlace } from "../packing/types.ts";
import type { Count } from "../plane/types.ts";
import type { Format } from "../units/make-format.ts";
import { groupPlaces } from "./group-places.ts";
import { openHyphens } from "./open-hyphens.ts";
import type { Table } from "./pages.ts";
import { figures, makeTable, setInPairs, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** Longer lists stand two places to a row. @source our choice: half a page of rows */
const manyPlaces = 24;

/** Runs at even steps are told together where that leaves so small a share of the rows. @source our choice */
const worthwhile = 0.6;

/** Where each piece of a lay goes, by coordinates a person can chalk. */
export function buildPlaces(
  lay: Lay,
  id: string,
  { plan, format }: { readonly plan: Plan; readonly format: Format },
): Table {
  const { sections, places } = lay;
  const runs = lay.copies > 1 || places.length > manyPlaces ? groupPlaces(lay) : [];
  const isRun = runs.length > 0 && runs.length < worthwhile * places.length;
  const told = isRun ? runs : places.map((place) => [place] as const);
  const isLong = !isRun && places.length > manyPlaces;
  const ways = new Set(places.map((place) => liesWords(place, format)));
  // One word that holds for all stands once, over the table.
  const [way = null] = isLong && ways.size === 1 ? ways : [];
  const columns = [
    words("Piece"),
    ...(sections === undefined ? [] : [words("On")]),
    figures(isLong ? "From the left" : "From the left edge"),
    figures(isLong ? "From the start" : "From the start of the cloth"),
    ...(way === null ? [words("Lies")] : []),
  ];
  const rows = told.map(([place, next, ...more]) => {
    const { section, up } = sectionAt(lay, place);
    const { name, cut } = pieceOf(place, plan);
    return [
      next !== undefined
        ? `${more.length + 2} of ${name}`
        : cut * lay.copies > 1
          ? `${name}\u00a0(${place.copy})`
          : name,
      ...(section === null ? [] : [sectionWords(section, plan.project)]),
      format.length(place.x),
      next === undefined
        ? format.length(up)
        : `${format.length(up)}, then every ${format.length(next.y - place.y)}`,
      ...(way === null ? [liesWords(place, format)] : []),
    ];
  });
  const caption = "Where the lowest left corner of each piece goes";
  return makeTable(
    id,
    way === null ? caption : `${caption}. All lie ${way}.`,
    isLong ? setInPairs({ columns, rows }) : { columns, rows },
  );
}

/** The piece as the drawing of the lay names it, and how many are cut for one set. */
function pieceOf({ piece: id }: LayPlace, plan: Plan): { name: string; cut: Count } {
  const piece = clothPieces(plan).find((each) => each.piece.id === id)?.piece;
  if (piece === undefined) return { name: openHyphens(partWords(id)), cut: 1 };
  return { name: openHyphens(shortName(piece)), cut: piece.cut };
}

/** "P1/2" in words. */
const partWords = (piece: string): string => piece.replace(/\/(\d+)$/, ", part $1");

function liesWords({ turn, flipped }: LayPlace, format: Format): string {
  const left = ((turn % 360) + 360) % 360;
  const turned =
    left === 0
      ? "upright"
      : left === 180
        ? "upside down"
        : left < 180
          ? `turned ${format.degrees(left)}\u00a0left`
          : `turned ${format.degrees(360 - left)}\u00a0right`;
  return flipped ? `${turned}, turned over` : turned;
}
