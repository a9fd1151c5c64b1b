import type { Project } from "../project/types.ts";
import { drawArrow } from "./mark-arrow.ts";
import type { Box, Ink } from "./types.ts";

/** Arrow beside a sheet that shows the way its grain runs; nothing where it has none. */
export function drawGrain(project: Project, stock: string, box: Box): Ink[] {
  const sheet = project.stock.find(({ id }) => id === stock);
  if (sheet?.kind !== "sheet" || sheet.grain === "none") return [];
  const y = box.top - 5;
  const x = box.right + 6;
  if (sheet.grain === "along")
    return [
      ...drawArrow([box.left + 12, y], [box.left + 30, y], "stock"),
      ...drawArrow([box.left + 30, y], [box.left + 12, y], "stock"),
      {
        kind: "text",
        style: "label",
        text: "grain",
        at: [box.left + 33, y],
        anchor: "start",
        isUpright: false,
      },
    ];
  const middle = (box.top + box.bottom) / 2;
  return [
    ...drawArrow([x, middle + 9], [x, middle - 9], "stock"),
    ...drawArrow([x, middle - 9], [x, middle + 9], "stock"),
    {
      kind: "text",
      style: "label",
      text: "grain",
      at: [x + 3, middle],
      anchor: "start",
      isUpright: false,
    },
  ];
}
