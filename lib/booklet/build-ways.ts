import type { ComparedWay, Cover } from "../seams/types.ts";
import type { Figure } from "../drawing/types.ts";
import { wayWords } from "../drawing/way-words.ts";
import { drawClear, firstFigure } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { Count } from "../plane/types.ts";
import type { Format } from "../units/make-format.ts";
import { slugOf } from "./make-notice.ts";
import { openHyphens } from "./open-hyphens.ts";
import type { WaysPage } from "./pages.ts";
import { figures as numbers, tableOrNull, words } from "./table.ts";

/** The map and the words share a page. */
const mapRooms: readonly FigureRoom[] = [
  { width: 165, height: 85 },
  { width: 165, height: 95 },
  { width: 165, height: 110 },
  { width: 165, height: 130 },
];
/** Where there is no map, two views do. */
const viewRoom: FigureRoom = { width: 165, height: 80 };
/** Room for the picture of one way: three side by side while the panels are few, else two, or one. */
const wayRoom = (panels: Count): FigureRoom =>
  panels <= 5
    ? { width: 50, height: 38 }
    : panels <= 10
      ? { width: 78, height: 56 }
      : { width: 160, height: 56 };

/** How one cover could be cut, which way was chosen, and the map of its panels. */
export function buildWays(
  cover: Cover,
  figures: FigureSource,
  { format, isOnly }: { readonly format: Format; readonly isOnly: boolean },
): WaysPage {
  const { solid, ways, panels, refolds } = cover;
  const chosen = ways.find((way) => way.isChosen);
  const views = [`solid/${solid}`, `solid/${solid}/behind`];
  const map = mapOf(solid, figures);
  // The map has the chosen way laid flat already.
  const pictured = ways.length < 2 ? [] : ways.filter((way) => map === null || !way.isChosen);
  const room = wayRoom(Math.max(0, ...pictured.map((way) => way.panels.length)));
  const drawings = map === null ? views.map((id) => firstFigure(figures, [id], viewRoom)) : [map];
  return {
    kind: "ways",
    id: `ways-${slugOf(solid)}`,
    title: isOnly ? "The cover and its panels" : `The cover of the ${openHyphens(solid)}`,
    intro: `The cover is cut as ${panels.length} ${panels.length === 1 ? "panel" : "panels"}.`,
    table: ways.length < 2 ? null : compare(ways, `ways-${slugOf(solid)}-table`, format),
    reasons: chosen?.reasons ?? [],
    figures: drawings.filter((figure) => figure !== null),
    ways: pictured
      .map(({ id }) => firstFigure(figures, [`ways/${solid}/${id}`], room))
      .filter((figure) => figure !== null),
    proof: refolds.ok
      ? "Folded back up by calculation, the panels give the outside of the foam exactly, edge for edge."
      : `Folded back up by calculation, the panels miss by up to ${format.length(refolds.worst)}.`,
  };
}

/** In the least room in which its labels keep clear. */
function mapOf(solid: string, figures: FigureSource): Figure | null {
  const id = `map/${solid}`;
  if (!figures.ids.includes(id)) return null;
  return drawClear(figures, id, mapRooms) ?? figures.draw(id, mapRooms.at(-1));
}

const compare = (ways: readonly ComparedWay[], id: string, format: Format) =>
  tableOrNull(id, "Ways to cut the cover, compared", {
    columns: [
      words("Way"),
      numbers("Panels"),
      numbers("Seams"),
      numbers("Cloth"),
      numbers("Print turned"),
      numbers("Inward folds"),
      words("Chosen"),
    ],
    rows: ways.map((way) => [
      wayWords(way),
      `${way.panels.length}`,
      format.length(way.seamLength),
      way.clothLength === null ? "–" : format.length(way.clothLength),
      way.turnedFaces.length === 0
        ? "none"
        : `${way.turnedFaces.length} ${way.turnedFaces.length === 1 ? "face" : "faces"}`,
      `${way.inwardFolds}`,
      way.isChosen ? "this one" : "",
    ]),
  });
