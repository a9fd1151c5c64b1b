import { clothPieces } from "../drawing/cloth-pieces.ts";
import { sectionWords } from "../drawing/section-words.ts";
import { shortName } from "../drawing/short-name.ts";
import { evenRuns } from "../packing/even-runs.ts";
import { sectionAt } from "../packing/section-at.ts";
import type { Lay, LayPlace } from "../packing/types.ts";
import type { Format } from "../units/make-format.ts";
import { openHyphens } from "./open-hyphens.ts";
import type { Table } from "./pages.ts";
import { figures, makeTable, setInPairs, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** Longer lists stand two places to a row. @source our choice: half a page of rows */
const manyPlaces = 24;

/** So many places at even steps up the cloth share a row. @source our choice */
const fewestEven = 3;

/** Places that one row tells of. */
type Run = readonly [LayPlace, ...LayPlace[]];

interface Context {
  readonly plan: Plan;
  readonly format: Format;
}

/** Where each piece of a lay goes, by coordinates a person can chalk. */
export function buildPlaces(lay: Lay, id: string, { plan, format }: Context): Table {
  const runs: readonly Run[] =
    lay.copies > 1 || lay.places.length > manyPlaces
      ? listRuns(lay)
      : lay.places.map((place) => [place]);
  const isLong = runs.length > manyPlaces;
  const ways = new Set(lay.places.map((place) => liesWords(place, format)));
  // One word that holds for all stands once, over the table.
  const [way = null] = isLong && ways.size === 1 ? ways : [];
  const columns = [
    words("Piece"),
    ...(lay.sections === undefined ? [] : [words("On")]),
    figures(isLong ? "From the left" : "From the left edge"),
    figures(isLong ? "From the start" : "From the start of the cloth"),
    ...(way === null ? [words("Lies")] : []),
  ];
  const rows = runs.map(([place, next, ...more]) => {
    const { section, up } = sectionAt(lay, place);
    const name = pieceName(place, plan);
    const steps = next === undefined ? "" : `, then every ${format.length(next.y - place.y)}`;
    return [
      next === undefined ? copyName(place, name, { lay, plan }) : `${2 + more.length} of ${name}`,
      ...(section === null ? [] : [sectionWords(section, plan.project)]),
      format.length(place.x),
      `${format.length(up)}${steps}`,
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

/**
 * The places of many copies: like pieces above one another at even steps together, as blocks of sets
 * repeat. Which copy lies where does not matter to whoever chalks it.
 */
function listRuns(lay: Lay): readonly Run[] {
  const columnOf = (place: LayPlace): string => {
    const { piece, x, turn, flipped } = place;
    return [piece, Math.round(x * 1e3), turn, flipped, sectionAt(lay, place).section?.start].join();
  };
  const columns = [...new Set(lay.places.map(columnOf))];
  const runs = columns.flatMap((column) =>
    evenRuns(
      lay.places.filter((place) => columnOf(place) === column).toSorted((a, b) => a.y - b.y),
      { kind: columnOf, at: ({ y }) => y, fewest: fewestEven },
    ),
  );
  return runs.toSorted(([a], [b]) => a.y - b.y || a.x - b.x);
}

/** As the drawing of the lay has it: the panel or the words of the piece. */
function pieceName({ piece: id }: LayPlace, plan: Plan): string {
  const piece = clothPieces(plan).find((each) => each.piece.id === id)?.piece;
  return openHyphens(piece === undefined ? partWords(id) : shortName(piece));
}

/** With which copy it is, where there are several. */
function copyName(
  { piece: id, copy }: LayPlace,
  name: string,
  { lay, plan }: { readonly lay: Lay; readonly plan: Plan },
): string {
  const cut = clothPieces(plan).find((each) => each.piece.id === id)?.piece.cut ?? 1;
  return cut * lay.copies > 1 ? `${name}\u00a0(${copy})` : name;
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
