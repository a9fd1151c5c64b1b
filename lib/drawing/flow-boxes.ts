import type { Mm, Point } from "../plane/types.ts";
import type { Box } from "./types.ts";

/** Set boxes in rows like words in a paragraph; returns how far each must move. Tops of a row agree. */
export function flowBoxes(boxes: readonly Box[], width: Mm, gap: Mm): Point[] {
  let [x, y, rowHeight] = [0, 0, 0];
  return boxes.map((box) => {
    const [wide, high] = [box.right - box.left, box.bottom - box.top];
    if (x > 0 && x + wide > width) {
      x = 0;
      y += rowHeight + gap;
      rowHeight = 0;
    }
    const shift: Point = [x - box.left, y - box.top];
    x += wide + gap;
    rowHeight = Math.max(rowHeight, high);
    return shift;
  });
}
