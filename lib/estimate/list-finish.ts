import type { Mm2 } from "../plane/types.ts";
import type { BoardStock, PieceSpec, Project, SheetStock } from "../project/types.ts";
import { countOf } from "./count-of.ts";
import { spreadFor } from "./spread-for.ts";
import { finishArea } from "./finish-area.ts";
import type { Material, Work } from "./types.ts";

/** Area of wood to oil or paint, all faces and edges of all parts. How much that is in tins the tin says. */
export function listFinish(work: Work): Material[] {
  const { project, format } = work;
  const wooden = woodenParts(project);
  const perCopy = wooden.reduce((sum, { piece, stock }) => sum + areaOf(piece, stock), 0);
  if (perCopy <= 0) return [];
  const count = wooden.reduce((sum, { piece }) => sum + piece.cut, 0);
  return [
    {
      id: "finish",
      item: "oil, varnish or paint, area to finish",
      quantity: perCopy * project.copies,
      perCopy,
      unit: "mm2",
      unitWord: null,
      have: 0,
      buy: 0,
      basis:
        `Both faces and all edges of ${countOf(count, "part")}${project.copies > 1 ? " a copy" : ""}, one coat: ${format.area(perCopy)}. ` +
        spreadFor("finish", project, "tin"),
      price: null,
      group: "other",
    },
  ];
}

/** Area of all wood of one copy. */
export function woodArea(project: Project): Mm2 {
  return woodenParts(project).reduce((sum, { piece, stock }) => sum + areaOf(piece, stock), 0);
}

type WoodStock = SheetStock | BoardStock;

function woodenParts({ pieces, stock }: Project): { piece: PieceSpec; stock: WoodStock }[] {
  return pieces.flatMap((piece) => {
    const own = stock.find(({ id }) => id === piece.stock);
    return own?.kind === "sheet" || own?.kind === "board" ? [{ piece, stock: own }] : [];
  });
}

function areaOf({ size, cut }: PieceSpec, stock: WoodStock): Mm2 {
  const thickness = stock.kind === "sheet" ? stock.thickness : Math.min(...stock.section);
  return cut * finishArea(size, thickness);
}
